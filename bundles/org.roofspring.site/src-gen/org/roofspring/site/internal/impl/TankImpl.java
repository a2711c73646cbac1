/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.LevelVolumePoint;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Receiver;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Siting;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankKind;
import org.roofspring.site.TankMaterial;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Tank</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getCapacity <em>Capacity</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getDeadVolume <em>Dead Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getReserveVolume <em>Reserve Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getBaseLevel <em>Base Level</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getOutletHeight <em>Outlet Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getReserveOutletHeight <em>Reserve Outlet Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getOverflowHeight <em>Overflow Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getInletHeight <em>Inlet Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getLevelVolume <em>Level Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getStartHeight <em>Start Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getStopHeight <em>Stop Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getCurrentHeight <em>Current Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getCurrentDate <em>Current Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getPlaceInGround <em>Place In Ground</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getCover <em>Cover</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getOpenArea <em>Open Area</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getEvaporationFactor <em>Evaporation Factor</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getLeakage <em>Leakage</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getOverflowDiameter <em>Overflow Diameter</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getOverflowsTo <em>Overflows To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getVentArea <em>Vent Area</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getScreenMesh <em>Screen Mesh</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#isFloatingIntake <em>Floating Intake</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#isCalmedInlet <em>Calmed Inlet</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#isLockedHatch <em>Locked Hatch</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getLastCleaned <em>Last Cleaned</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankImpl#getSiting <em>Siting</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TankImpl extends ReceiverImpl implements Tank
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TankImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return SitePackage.Literals.TANK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TankKind getKind()
	{
		return (TankKind)eGet(SitePackage.Literals.TANK__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(TankKind newKind)
	{
		eSet(SitePackage.Literals.TANK__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCapacity()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__CAPACITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapacity(Quantity newCapacity)
	{
		eSet(SitePackage.Literals.TANK__CAPACITY, newCapacity);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDeadVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__DEAD_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDeadVolume(Quantity newDeadVolume)
	{
		eSet(SitePackage.Literals.TANK__DEAD_VOLUME, newDeadVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReserveVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__RESERVE_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReserveVolume(Quantity newReserveVolume)
	{
		eSet(SitePackage.Literals.TANK__RESERVE_VOLUME, newReserveVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBaseLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__BASE_LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseLevel(Quantity newBaseLevel)
	{
		eSet(SitePackage.Literals.TANK__BASE_LEVEL, newBaseLevel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Quantity newHeight)
	{
		eSet(SitePackage.Literals.TANK__HEIGHT, newHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOutletHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__OUTLET_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutletHeight(Quantity newOutletHeight)
	{
		eSet(SitePackage.Literals.TANK__OUTLET_HEIGHT, newOutletHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReserveOutletHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__RESERVE_OUTLET_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReserveOutletHeight(Quantity newReserveOutletHeight)
	{
		eSet(SitePackage.Literals.TANK__RESERVE_OUTLET_HEIGHT, newReserveOutletHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOverflowHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__OVERFLOW_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverflowHeight(Quantity newOverflowHeight)
	{
		eSet(SitePackage.Literals.TANK__OVERFLOW_HEIGHT, newOverflowHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInletHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__INLET_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInletHeight(Quantity newInletHeight)
	{
		eSet(SitePackage.Literals.TANK__INLET_HEIGHT, newInletHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<LevelVolumePoint> getLevelVolume()
	{
		return (EList<LevelVolumePoint>)eGet(SitePackage.Literals.TANK__LEVEL_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStartHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__START_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStartHeight(Quantity newStartHeight)
	{
		eSet(SitePackage.Literals.TANK__START_HEIGHT, newStartHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStopHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__STOP_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStopHeight(Quantity newStopHeight)
	{
		eSet(SitePackage.Literals.TANK__STOP_HEIGHT, newStopHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCurrentHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__CURRENT_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrentHeight(Quantity newCurrentHeight)
	{
		eSet(SitePackage.Literals.TANK__CURRENT_HEIGHT, newCurrentHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getCurrentDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.TANK__CURRENT_DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCurrentDate(LocalDate newCurrentDate)
	{
		eSet(SitePackage.Literals.TANK__CURRENT_DATE, newCurrentDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PlaceInGround getPlaceInGround()
	{
		return (PlaceInGround)eGet(SitePackage.Literals.TANK__PLACE_IN_GROUND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlaceInGround(PlaceInGround newPlaceInGround)
	{
		eSet(SitePackage.Literals.TANK__PLACE_IN_GROUND, newPlaceInGround);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TankCover getCover()
	{
		return (TankCover)eGet(SitePackage.Literals.TANK__COVER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCover(TankCover newCover)
	{
		eSet(SitePackage.Literals.TANK__COVER, newCover);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TankMaterial getMaterial()
	{
		return (TankMaterial)eGet(SitePackage.Literals.TANK__MATERIAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(TankMaterial newMaterial)
	{
		eSet(SitePackage.Literals.TANK__MATERIAL, newMaterial);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDiameter()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__DIAMETER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiameter(Quantity newDiameter)
	{
		eSet(SitePackage.Literals.TANK__DIAMETER, newDiameter);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLength()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__LENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Quantity newLength)
	{
		eSet(SitePackage.Literals.TANK__LENGTH, newLength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWidth()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__WIDTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Quantity newWidth)
	{
		eSet(SitePackage.Literals.TANK__WIDTH, newWidth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOpenArea()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__OPEN_AREA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenArea(Quantity newOpenArea)
	{
		eSet(SitePackage.Literals.TANK__OPEN_AREA, newOpenArea);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEvaporationFactor()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__EVAPORATION_FACTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEvaporationFactor(Quantity newEvaporationFactor)
	{
		eSet(SitePackage.Literals.TANK__EVAPORATION_FACTOR, newEvaporationFactor);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLeakage()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__LEAKAGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeakage(Quantity newLeakage)
	{
		eSet(SitePackage.Literals.TANK__LEAKAGE, newLeakage);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOverflowDiameter()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__OVERFLOW_DIAMETER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverflowDiameter(Quantity newOverflowDiameter)
	{
		eSet(SitePackage.Literals.TANK__OVERFLOW_DIAMETER, newOverflowDiameter);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Receiver getOverflowsTo()
	{
		return (Receiver)eGet(SitePackage.Literals.TANK__OVERFLOWS_TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOverflowsTo(Receiver newOverflowsTo)
	{
		eSet(SitePackage.Literals.TANK__OVERFLOWS_TO, newOverflowsTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getVentArea()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__VENT_AREA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentArea(Quantity newVentArea)
	{
		eSet(SitePackage.Literals.TANK__VENT_AREA, newVentArea);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getScreenMesh()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK__SCREEN_MESH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setScreenMesh(Quantity newScreenMesh)
	{
		eSet(SitePackage.Literals.TANK__SCREEN_MESH, newScreenMesh);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isFloatingIntake()
	{
		return (Boolean)eGet(SitePackage.Literals.TANK__FLOATING_INTAKE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFloatingIntake(boolean newFloatingIntake)
	{
		eSet(SitePackage.Literals.TANK__FLOATING_INTAKE, newFloatingIntake);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isCalmedInlet()
	{
		return (Boolean)eGet(SitePackage.Literals.TANK__CALMED_INLET, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalmedInlet(boolean newCalmedInlet)
	{
		eSet(SitePackage.Literals.TANK__CALMED_INLET, newCalmedInlet);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLockedHatch()
	{
		return (Boolean)eGet(SitePackage.Literals.TANK__LOCKED_HATCH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLockedHatch(boolean newLockedHatch)
	{
		eSet(SitePackage.Literals.TANK__LOCKED_HATCH, newLockedHatch);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastCleaned()
	{
		return (LocalDate)eGet(SitePackage.Literals.TANK__LAST_CLEANED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastCleaned(LocalDate newLastCleaned)
	{
		eSet(SitePackage.Literals.TANK__LAST_CLEANED, newLastCleaned);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Siting getSiting()
	{
		return (Siting)eGet(SitePackage.Literals.TANK__SITING, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSiting(Siting newSiting)
	{
		eSet(SitePackage.Literals.TANK__SITING, newSiting);
	}

} //TankImpl

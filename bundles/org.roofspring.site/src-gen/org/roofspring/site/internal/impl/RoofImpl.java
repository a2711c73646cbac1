/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Hazard;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Roof</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getPlanArea <em>Plan Area</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getPitch <em>Pitch</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getEavesLength <em>Eaves Length</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getSlopeHeight <em>Slope Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getEavesLevel <em>Eaves Level</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getRunoffCoefficient <em>Runoff Coefficient</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getRunoffBasis <em>Runoff Basis</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getInitialLoss <em>Initial Loss</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getCollectionEfficiency <em>Collection Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getPeakRunoff <em>Peak Runoff</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getHazards <em>Hazards</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getAge <em>Age</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofImpl#getDrains <em>Drains</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RoofImpl extends ComponentImpl implements Roof
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RoofImpl()
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
		return SitePackage.Literals.ROOF;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPlanArea()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__PLAN_AREA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlanArea(Quantity newPlanArea)
	{
		eSet(SitePackage.Literals.ROOF__PLAN_AREA, newPlanArea);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPitch()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__PITCH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPitch(Quantity newPitch)
	{
		eSet(SitePackage.Literals.ROOF__PITCH, newPitch);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEavesLength()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__EAVES_LENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEavesLength(Quantity newEavesLength)
	{
		eSet(SitePackage.Literals.ROOF__EAVES_LENGTH, newEavesLength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSlopeHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__SLOPE_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlopeHeight(Quantity newSlopeHeight)
	{
		eSet(SitePackage.Literals.ROOF__SLOPE_HEIGHT, newSlopeHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEavesLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__EAVES_LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEavesLevel(Quantity newEavesLevel)
	{
		eSet(SitePackage.Literals.ROOF__EAVES_LEVEL, newEavesLevel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RoofMaterial getMaterial()
	{
		return (RoofMaterial)eGet(SitePackage.Literals.ROOF__MATERIAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(RoofMaterial newMaterial)
	{
		eSet(SitePackage.Literals.ROOF__MATERIAL, newMaterial);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRunoffCoefficient()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRunoffCoefficient(Quantity newRunoffCoefficient)
	{
		eSet(SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT, newRunoffCoefficient);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RunoffBasis getRunoffBasis()
	{
		return (RunoffBasis)eGet(SitePackage.Literals.ROOF__RUNOFF_BASIS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRunoffBasis(RunoffBasis newRunoffBasis)
	{
		eSet(SitePackage.Literals.ROOF__RUNOFF_BASIS, newRunoffBasis);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInitialLoss()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__INITIAL_LOSS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInitialLoss(Quantity newInitialLoss)
	{
		eSet(SitePackage.Literals.ROOF__INITIAL_LOSS, newInitialLoss);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCollectionEfficiency()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__COLLECTION_EFFICIENCY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCollectionEfficiency(Quantity newCollectionEfficiency)
	{
		eSet(SitePackage.Literals.ROOF__COLLECTION_EFFICIENCY, newCollectionEfficiency);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPeakRunoff()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__PEAK_RUNOFF, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPeakRunoff(Quantity newPeakRunoff)
	{
		eSet(SitePackage.Literals.ROOF__PEAK_RUNOFF, newPeakRunoff);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Hazard> getHazards()
	{
		return (EList<Hazard>)eGet(SitePackage.Literals.ROOF__HAZARDS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAge()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF__AGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAge(Quantity newAge)
	{
		eSet(SitePackage.Literals.ROOF__AGE, newAge);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<RoofDrain> getDrains()
	{
		return (EList<RoofDrain>)eGet(SitePackage.Literals.ROOF__DRAINS, true);
	}

} //RoofImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.Siting;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Siting</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getLatrineDistance <em>Latrine Distance</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#isLatrineUphill <em>Latrine Uphill</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getRefuseDistance <em>Refuse Distance</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getGroundwaterDepth <em>Groundwater Depth</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getBurialDepth <em>Burial Depth</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getBaseArea <em>Base Area</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getEmptyMass <em>Empty Mass</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getSoilCover <em>Soil Cover</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getAllowedBearing <em>Allowed Bearing</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getStandHeight <em>Stand Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getFoundationDistance <em>Foundation Distance</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#isSoakaway <em>Soakaway</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getSoakawayLength <em>Soakaway Length</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getSoakawayWidth <em>Soakaway Width</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getSoakawayDepth <em>Soakaway Depth</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getSoakawayVoids <em>Soakaway Voids</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getInfiltration <em>Infiltration</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SitingImpl#getTapDrain <em>Tap Drain</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SitingImpl extends ElementImpl implements Siting
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SitingImpl()
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
		return SitePackage.Literals.SITING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLatrineDistance()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__LATRINE_DISTANCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLatrineDistance(Quantity newLatrineDistance)
	{
		eSet(SitePackage.Literals.SITING__LATRINE_DISTANCE, newLatrineDistance);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLatrineUphill()
	{
		return (Boolean)eGet(SitePackage.Literals.SITING__LATRINE_UPHILL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLatrineUphill(boolean newLatrineUphill)
	{
		eSet(SitePackage.Literals.SITING__LATRINE_UPHILL, newLatrineUphill);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRefuseDistance()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__REFUSE_DISTANCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRefuseDistance(Quantity newRefuseDistance)
	{
		eSet(SitePackage.Literals.SITING__REFUSE_DISTANCE, newRefuseDistance);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getGroundwaterDepth()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__GROUNDWATER_DEPTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroundwaterDepth(Quantity newGroundwaterDepth)
	{
		eSet(SitePackage.Literals.SITING__GROUNDWATER_DEPTH, newGroundwaterDepth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBurialDepth()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__BURIAL_DEPTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBurialDepth(Quantity newBurialDepth)
	{
		eSet(SitePackage.Literals.SITING__BURIAL_DEPTH, newBurialDepth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBaseArea()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__BASE_AREA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseArea(Quantity newBaseArea)
	{
		eSet(SitePackage.Literals.SITING__BASE_AREA, newBaseArea);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEmptyMass()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__EMPTY_MASS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEmptyMass(Quantity newEmptyMass)
	{
		eSet(SitePackage.Literals.SITING__EMPTY_MASS, newEmptyMass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSoilCover()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__SOIL_COVER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoilCover(Quantity newSoilCover)
	{
		eSet(SitePackage.Literals.SITING__SOIL_COVER, newSoilCover);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAllowedBearing()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__ALLOWED_BEARING, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAllowedBearing(Quantity newAllowedBearing)
	{
		eSet(SitePackage.Literals.SITING__ALLOWED_BEARING, newAllowedBearing);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStandHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__STAND_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStandHeight(Quantity newStandHeight)
	{
		eSet(SitePackage.Literals.SITING__STAND_HEIGHT, newStandHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFoundationDistance()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__FOUNDATION_DISTANCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFoundationDistance(Quantity newFoundationDistance)
	{
		eSet(SitePackage.Literals.SITING__FOUNDATION_DISTANCE, newFoundationDistance);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSoakaway()
	{
		return (Boolean)eGet(SitePackage.Literals.SITING__SOAKAWAY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoakaway(boolean newSoakaway)
	{
		eSet(SitePackage.Literals.SITING__SOAKAWAY, newSoakaway);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSoakawayLength()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__SOAKAWAY_LENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoakawayLength(Quantity newSoakawayLength)
	{
		eSet(SitePackage.Literals.SITING__SOAKAWAY_LENGTH, newSoakawayLength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSoakawayWidth()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__SOAKAWAY_WIDTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoakawayWidth(Quantity newSoakawayWidth)
	{
		eSet(SitePackage.Literals.SITING__SOAKAWAY_WIDTH, newSoakawayWidth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSoakawayDepth()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__SOAKAWAY_DEPTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoakawayDepth(Quantity newSoakawayDepth)
	{
		eSet(SitePackage.Literals.SITING__SOAKAWAY_DEPTH, newSoakawayDepth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSoakawayVoids()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__SOAKAWAY_VOIDS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoakawayVoids(Quantity newSoakawayVoids)
	{
		eSet(SitePackage.Literals.SITING__SOAKAWAY_VOIDS, newSoakawayVoids);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInfiltration()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__INFILTRATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInfiltration(Quantity newInfiltration)
	{
		eSet(SitePackage.Literals.SITING__INFILTRATION, newInfiltration);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getTapDrain()
	{
		return (Quantity)eGet(SitePackage.Literals.SITING__TAP_DRAIN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTapDrain(Quantity newTapDrain)
	{
		eSet(SitePackage.Literals.SITING__TAP_DRAIN, newTapDrain);
	}

} //SitingImpl

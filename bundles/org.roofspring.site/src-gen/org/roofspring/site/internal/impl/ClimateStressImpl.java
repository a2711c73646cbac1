/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.ClimateStress;
import org.roofspring.site.SeasonFactor;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Climate Stress</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ClimateStressImpl#getDepthFactor <em>Depth Factor</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ClimateStressImpl#getDrySeasonLonger <em>Dry Season Longer</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ClimateStressImpl#getSeasons <em>Seasons</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ClimateStressImpl extends ElementImpl implements ClimateStress
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ClimateStressImpl()
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
		return SitePackage.Literals.CLIMATE_STRESS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDepthFactor()
	{
		return (Quantity)eGet(SitePackage.Literals.CLIMATE_STRESS__DEPTH_FACTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepthFactor(Quantity newDepthFactor)
	{
		eSet(SitePackage.Literals.CLIMATE_STRESS__DEPTH_FACTOR, newDepthFactor);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDrySeasonLonger()
	{
		return (Quantity)eGet(SitePackage.Literals.CLIMATE_STRESS__DRY_SEASON_LONGER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrySeasonLonger(Quantity newDrySeasonLonger)
	{
		eSet(SitePackage.Literals.CLIMATE_STRESS__DRY_SEASON_LONGER, newDrySeasonLonger);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<SeasonFactor> getSeasons()
	{
		return (EList<SeasonFactor>)eGet(SitePackage.Literals.CLIMATE_STRESS__SEASONS, true);
	}

} //ClimateStressImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.PathogenLevel;
import org.roofspring.site.RawWater;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Raw Water</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#isTested <em>Tested</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#getTurbidity <em>Turbidity</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#getPh <em>Ph</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#getAlkalinity <em>Alkalinity</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#getChlorineDemand <em>Chlorine Demand</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RawWaterImpl#getPathogens <em>Pathogens</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RawWaterImpl extends ElementImpl implements RawWater
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RawWaterImpl()
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
		return SitePackage.Literals.RAW_WATER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isTested()
	{
		return (Boolean)eGet(SitePackage.Literals.RAW_WATER__TESTED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTested(boolean newTested)
	{
		eSet(SitePackage.Literals.RAW_WATER__TESTED, newTested);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getTurbidity()
	{
		return (Quantity)eGet(SitePackage.Literals.RAW_WATER__TURBIDITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurbidity(Quantity newTurbidity)
	{
		eSet(SitePackage.Literals.RAW_WATER__TURBIDITY, newTurbidity);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPh()
	{
		return (Quantity)eGet(SitePackage.Literals.RAW_WATER__PH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPh(Quantity newPh)
	{
		eSet(SitePackage.Literals.RAW_WATER__PH, newPh);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAlkalinity()
	{
		return (Quantity)eGet(SitePackage.Literals.RAW_WATER__ALKALINITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAlkalinity(Quantity newAlkalinity)
	{
		eSet(SitePackage.Literals.RAW_WATER__ALKALINITY, newAlkalinity);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getChlorineDemand()
	{
		return (Quantity)eGet(SitePackage.Literals.RAW_WATER__CHLORINE_DEMAND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChlorineDemand(Quantity newChlorineDemand)
	{
		eSet(SitePackage.Literals.RAW_WATER__CHLORINE_DEMAND, newChlorineDemand);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource()
	{
		return (String)eGet(SitePackage.Literals.RAW_WATER__SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource)
	{
		eSet(SitePackage.Literals.RAW_WATER__SOURCE, newSource);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<PathogenLevel> getPathogens()
	{
		return (EList<PathogenLevel>)eGet(SitePackage.Literals.RAW_WATER__PATHOGENS, true);
	}

} //RawWaterImpl

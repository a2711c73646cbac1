/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Economy;
import org.roofspring.site.PriceBasis;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Economy</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getBasis <em>Basis</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getDiscountRate <em>Discount Rate</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getInflation <em>Inflation</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getHorizon <em>Horizon</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getBaseYear <em>Base Year</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getEnergyPrice <em>Energy Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getLabourPrice <em>Labour Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getTariff <em>Tariff</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.EconomyImpl#getPeople <em>People</em>}</li>
 * </ul>
 *
 * @generated
 */
public class EconomyImpl extends ElementImpl implements Economy
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected EconomyImpl()
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
		return SitePackage.Literals.ECONOMY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PriceBasis getBasis()
	{
		return (PriceBasis)eGet(SitePackage.Literals.ECONOMY__BASIS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBasis(PriceBasis newBasis)
	{
		eSet(SitePackage.Literals.ECONOMY__BASIS, newBasis);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDiscountRate()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__DISCOUNT_RATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiscountRate(Quantity newDiscountRate)
	{
		eSet(SitePackage.Literals.ECONOMY__DISCOUNT_RATE, newDiscountRate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInflation()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__INFLATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInflation(Quantity newInflation)
	{
		eSet(SitePackage.Literals.ECONOMY__INFLATION, newInflation);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHorizon()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__HORIZON, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHorizon(Quantity newHorizon)
	{
		eSet(SitePackage.Literals.ECONOMY__HORIZON, newHorizon);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getBaseYear()
	{
		return (Integer)eGet(SitePackage.Literals.ECONOMY__BASE_YEAR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaseYear(int newBaseYear)
	{
		eSet(SitePackage.Literals.ECONOMY__BASE_YEAR, newBaseYear);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEnergyPrice()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__ENERGY_PRICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnergyPrice(Quantity newEnergyPrice)
	{
		eSet(SitePackage.Literals.ECONOMY__ENERGY_PRICE, newEnergyPrice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLabourPrice()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__LABOUR_PRICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabourPrice(Quantity newLabourPrice)
	{
		eSet(SitePackage.Literals.ECONOMY__LABOUR_PRICE, newLabourPrice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getTariff()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__TARIFF, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTariff(Quantity newTariff)
	{
		eSet(SitePackage.Literals.ECONOMY__TARIFF, newTariff);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPeople()
	{
		return (Quantity)eGet(SitePackage.Literals.ECONOMY__PEOPLE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPeople(Quantity newPeople)
	{
		eSet(SitePackage.Literals.ECONOMY__PEOPLE, newPeople);
	}

} //EconomyImpl

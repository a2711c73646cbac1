/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.AlternativeSupply;
import org.roofspring.site.SitePackage;
import org.roofspring.site.SupplyKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Alternative Supply</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getCapital <em>Capital</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getCapitalLife <em>Capital Life</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getYearlyCost <em>Yearly Cost</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getEnergy <em>Energy</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getReliability <em>Reliability</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.AlternativeSupplyImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AlternativeSupplyImpl extends NamedElementImpl implements AlternativeSupply
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AlternativeSupplyImpl()
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
		return SitePackage.Literals.ALTERNATIVE_SUPPLY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SupplyKind getKind()
	{
		return (SupplyKind)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(SupplyKind newKind)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPrice()
	{
		return (Quantity)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__PRICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrice(Quantity newPrice)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__PRICE, newPrice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCapital()
	{
		return (Quantity)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__CAPITAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapital(Quantity newCapital)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__CAPITAL, newCapital);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCapitalLife()
	{
		return (Quantity)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__CAPITAL_LIFE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapitalLife(Quantity newCapitalLife)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__CAPITAL_LIFE, newCapitalLife);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getYearlyCost()
	{
		return (Quantity)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__YEARLY_COST, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYearlyCost(Quantity newYearlyCost)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__YEARLY_COST, newYearlyCost);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEnergy()
	{
		return (Quantity)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__ENERGY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnergy(Quantity newEnergy)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__ENERGY, newEnergy);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReliability()
	{
		return (Quantity)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__RELIABILITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReliability(Quantity newReliability)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__RELIABILITY, newReliability);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource()
	{
		return (String)eGet(SitePackage.Literals.ALTERNATIVE_SUPPLY__SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource)
	{
		eSet(SitePackage.Literals.ALTERNATIVE_SUPPLY__SOURCE, newSource);
	}

} //AlternativeSupplyImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.CashEntry;
import org.roofspring.site.SharedScheme;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Shared Scheme</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getFamilies <em>Families</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getPeoplePerFamily <em>People Per Family</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getKeyHolder <em>Key Holder</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getRation <em>Ration</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getMonthlyFee <em>Monthly Fee</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getNightLoss <em>Night Loss</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SharedSchemeImpl#getCashBook <em>Cash Book</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SharedSchemeImpl extends ElementImpl implements SharedScheme
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SharedSchemeImpl()
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
		return SitePackage.Literals.SHARED_SCHEME;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFamilies()
	{
		return (Integer)eGet(SitePackage.Literals.SHARED_SCHEME__FAMILIES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFamilies(int newFamilies)
	{
		eSet(SitePackage.Literals.SHARED_SCHEME__FAMILIES, newFamilies);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPeoplePerFamily()
	{
		return (Quantity)eGet(SitePackage.Literals.SHARED_SCHEME__PEOPLE_PER_FAMILY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPeoplePerFamily(Quantity newPeoplePerFamily)
	{
		eSet(SitePackage.Literals.SHARED_SCHEME__PEOPLE_PER_FAMILY, newPeoplePerFamily);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKeyHolder()
	{
		return (String)eGet(SitePackage.Literals.SHARED_SCHEME__KEY_HOLDER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKeyHolder(String newKeyHolder)
	{
		eSet(SitePackage.Literals.SHARED_SCHEME__KEY_HOLDER, newKeyHolder);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRation()
	{
		return (Quantity)eGet(SitePackage.Literals.SHARED_SCHEME__RATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRation(Quantity newRation)
	{
		eSet(SitePackage.Literals.SHARED_SCHEME__RATION, newRation);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMonthlyFee()
	{
		return (Quantity)eGet(SitePackage.Literals.SHARED_SCHEME__MONTHLY_FEE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMonthlyFee(Quantity newMonthlyFee)
	{
		eSet(SitePackage.Literals.SHARED_SCHEME__MONTHLY_FEE, newMonthlyFee);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getNightLoss()
	{
		return (Quantity)eGet(SitePackage.Literals.SHARED_SCHEME__NIGHT_LOSS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNightLoss(Quantity newNightLoss)
	{
		eSet(SitePackage.Literals.SHARED_SCHEME__NIGHT_LOSS, newNightLoss);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<CashEntry> getCashBook()
	{
		return (EList<CashEntry>)eGet(SitePackage.Literals.SHARED_SCHEME__CASH_BOOK, true);
	}

} //SharedSchemeImpl

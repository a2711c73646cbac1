/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.CashEntry;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cash Entry</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.CashEntryImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CashEntryImpl#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CashEntryImpl#getWhat <em>What</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CashEntryImpl#getWho <em>Who</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CashEntryImpl extends RowImpl implements CashEntry
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CashEntryImpl()
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
		return SitePackage.Literals.CASH_ENTRY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.CASH_ENTRY__DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate)
	{
		eSet(SitePackage.Literals.CASH_ENTRY__DATE, newDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAmount()
	{
		return (Quantity)eGet(SitePackage.Literals.CASH_ENTRY__AMOUNT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmount(Quantity newAmount)
	{
		eSet(SitePackage.Literals.CASH_ENTRY__AMOUNT, newAmount);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWhat()
	{
		return (String)eGet(SitePackage.Literals.CASH_ENTRY__WHAT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWhat(String newWhat)
	{
		eSet(SitePackage.Literals.CASH_ENTRY__WHAT, newWhat);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho()
	{
		return (String)eGet(SitePackage.Literals.CASH_ENTRY__WHO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho)
	{
		eSet(SitePackage.Literals.CASH_ENTRY__WHO, newWho);
	}

} //CashEntryImpl

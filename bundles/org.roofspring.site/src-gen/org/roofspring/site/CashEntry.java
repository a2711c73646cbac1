/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cash Entry</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Money taken or spent.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.CashEntry#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.CashEntry#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.roofspring.site.CashEntry#getWhat <em>What</em>}</li>
 *   <li>{@link org.roofspring.site.CashEntry#getWho <em>Who</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getCashEntry()
 * @model
 * @generated
 */
public interface CashEntry extends Row
{
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see org.roofspring.site.SitePackage#getCashEntry_Date()
	 * @model dataType="org.roofspring.site.Date" required="true"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CashEntry#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Amount; negative where spent. Usual unit cur.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Amount</em>' attribute.
	 * @see #setAmount(Quantity)
	 * @see org.roofspring.site.SitePackage#getCashEntry_Amount()
	 * @model dataType="org.roofspring.site.Money" required="true"
	 * @generated
	 */
	Quantity getAmount();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CashEntry#getAmount <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount</em>' attribute.
	 * @see #getAmount()
	 * @generated
	 */
	void setAmount(Quantity value);

	/**
	 * Returns the value of the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>What</em>' attribute.
	 * @see #setWhat(String)
	 * @see org.roofspring.site.SitePackage#getCashEntry_What()
	 * @model
	 * @generated
	 */
	String getWhat();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CashEntry#getWhat <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>What</em>' attribute.
	 * @see #getWhat()
	 * @generated
	 */
	void setWhat(String value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who paid or was paid.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.roofspring.site.SitePackage#getCashEntry_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CashEntry#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

} // CashEntry

/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stage</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A dated step in which the system is built up; its changes come on top of those of the stages before it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Stage#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.Stage#getBudget <em>Budget</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getStage()
 * @model
 * @generated
 */
public interface Stage extends Option
{
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day from which it holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see org.roofspring.site.SitePackage#getStage_Date()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Stage#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Budget</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Money there is for it. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Budget</em>' attribute.
	 * @see #setBudget(Quantity)
	 * @see org.roofspring.site.SitePackage#getStage_Budget()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getBudget();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Stage#getBudget <em>Budget</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Budget</em>' attribute.
	 * @see #getBudget()
	 * @generated
	 */
	void setBudget(Quantity value);

} // Stage

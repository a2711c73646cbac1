/**
 */
package org.roofspring.site;

import java.time.LocalTime;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Supply Time</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A span of the day in which there is power or sun.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.SupplyTime#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.SupplyTime#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.SupplyTime#getWeekdays <em>Weekdays</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getSupplyTime()
 * @model
 * @generated
 */
public interface SupplyTime extends Row
{
	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Start.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(LocalTime)
	 * @see org.roofspring.site.SitePackage#getSupplyTime_From()
	 * @model dataType="org.roofspring.site.TimeOfDay" required="true"
	 * @generated
	 */
	LocalTime getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SupplyTime#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(LocalTime value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * End; before the start it runs over midnight.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(LocalTime)
	 * @see org.roofspring.site.SitePackage#getSupplyTime_To()
	 * @model dataType="org.roofspring.site.TimeOfDay" required="true"
	 * @generated
	 */
	LocalTime getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SupplyTime#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(LocalTime value);

	/**
	 * Returns the value of the '<em><b>Weekdays</b></em>' attribute list.
	 * The list contents are of type {@link org.roofspring.site.Weekday}.
	 * The literals are from the enumeration {@link org.roofspring.site.Weekday}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days on which it holds; none means every day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weekdays</em>' attribute list.
	 * @see org.roofspring.site.Weekday
	 * @see org.roofspring.site.SitePackage#getSupplyTime_Weekdays()
	 * @model
	 * @generated
	 */
	EList<Weekday> getWeekdays();

} // SupplyTime

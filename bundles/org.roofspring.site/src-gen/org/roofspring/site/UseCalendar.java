/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Use Calendar</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * When in the year a use takes place.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.UseCalendar#getPeriods <em>Periods</em>}</li>
 *   <li>{@link org.roofspring.site.UseCalendar#getWeekdays <em>Weekdays</em>}</li>
 *   <li>{@link org.roofspring.site.UseCalendar#getHolidays <em>Holidays</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getUseCalendar()
 * @model
 * @generated
 */
public interface UseCalendar extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Periods</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.UsePeriod}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts of the year in which it takes place, with a factor; none means the whole year.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Periods</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getUseCalendar_Periods()
	 * @model containment="true"
	 * @generated
	 */
	EList<UsePeriod> getPeriods();

	/**
	 * Returns the value of the '<em><b>Weekdays</b></em>' attribute list.
	 * The list contents are of type {@link org.roofspring.site.Weekday}.
	 * The literals are from the enumeration {@link org.roofspring.site.Weekday}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days of the week on which it takes place; none means every day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Weekdays</em>' attribute list.
	 * @see org.roofspring.site.Weekday
	 * @see org.roofspring.site.SitePackage#getUseCalendar_Weekdays()
	 * @model
	 * @generated
	 */
	EList<Weekday> getWeekdays();

	/**
	 * Returns the value of the '<em><b>Holidays</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Holiday}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days on which it does not.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Holidays</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getUseCalendar_Holidays()
	 * @model containment="true"
	 * @generated
	 */
	EList<Holiday> getHolidays();

} // UseCalendar

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Monthly Normal</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Normal rain of one month.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.MonthlyNormal#getMonth <em>Month</em>}</li>
 *   <li>{@link org.roofspring.site.MonthlyNormal#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.roofspring.site.MonthlyNormal#getWetDays <em>Wet Days</em>}</li>
 *   <li>{@link org.roofspring.site.MonthlyNormal#getEvaporation <em>Evaporation</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getMonthlyNormal()
 * @model
 * @generated
 */
public interface MonthlyNormal extends Row
{
	/**
	 * Returns the value of the '<em><b>Month</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Month of the year, 1 for January. Range from 1 to 12.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Month</em>' attribute.
	 * @see #setMonth(int)
	 * @see org.roofspring.site.SitePackage#getMonthlyNormal_Month()
	 * @model required="true"
	 *        annotation="http://www.roofspring.org/value min='1' max='12'"
	 * @generated
	 */
	int getMonth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.MonthlyNormal#getMonth <em>Month</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Month</em>' attribute.
	 * @see #getMonth()
	 * @generated
	 */
	void setMonth(int value);

	/**
	 * Returns the value of the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mean depth of the month. Usual unit mm. Range from 0 mm to 5000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth</em>' attribute.
	 * @see #setDepth(Quantity)
	 * @see org.roofspring.site.SitePackage#getMonthlyNormal_Depth()
	 * @model dataType="org.roofspring.site.RainDepth"
	 *        annotation="http://www.roofspring.org/value min='0' max='5'"
	 * @generated
	 */
	Quantity getDepth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.MonthlyNormal#getDepth <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth</em>' attribute.
	 * @see #getDepth()
	 * @generated
	 */
	void setDepth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Wet Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mean number of days with at least 1 mm. Range from 0 to 31.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wet Days</em>' attribute.
	 * @see #setWetDays(Quantity)
	 * @see org.roofspring.site.SitePackage#getMonthlyNormal_WetDays()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='31'"
	 * @generated
	 */
	Quantity getWetDays();

	/**
	 * Sets the value of the '{@link org.roofspring.site.MonthlyNormal#getWetDays <em>Wet Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wet Days</em>' attribute.
	 * @see #getWetDays()
	 * @generated
	 */
	void setWetDays(Quantity value);

	/**
	 * Returns the value of the '<em><b>Evaporation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mean reference evaporation of the month. Usual unit mm. Range from 0 mm to 1000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Evaporation</em>' attribute.
	 * @see #setEvaporation(Quantity)
	 * @see org.roofspring.site.SitePackage#getMonthlyNormal_Evaporation()
	 * @model dataType="org.roofspring.site.RainDepth"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getEvaporation();

	/**
	 * Sets the value of the '{@link org.roofspring.site.MonthlyNormal#getEvaporation <em>Evaporation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Evaporation</em>' attribute.
	 * @see #getEvaporation()
	 * @generated
	 */
	void setEvaporation(Quantity value);

} // MonthlyNormal

/**
 */
package org.roofspring.site;

import java.time.MonthDay;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Season Factor</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A factor on the rain of a part of the year.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.SeasonFactor#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.SeasonFactor#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.SeasonFactor#getFactor <em>Factor</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getSeasonFactor()
 * @model
 * @generated
 */
public interface SeasonFactor extends Row
{
	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(MonthDay)
	 * @see org.roofspring.site.SitePackage#getSeasonFactor_From()
	 * @model dataType="org.roofspring.site.DayOfYear" required="true"
	 * @generated
	 */
	MonthDay getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SeasonFactor#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(MonthDay value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Last day; before the first day it runs over the new year.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(MonthDay)
	 * @see org.roofspring.site.SitePackage#getSeasonFactor_To()
	 * @model dataType="org.roofspring.site.DayOfYear" required="true"
	 * @generated
	 */
	MonthDay getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SeasonFactor#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(MonthDay value);

	/**
	 * Returns the value of the '<em><b>Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Factor on the depth. Range from 0 to 5.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Factor</em>' attribute.
	 * @see #setFactor(Quantity)
	 * @see org.roofspring.site.SitePackage#getSeasonFactor_Factor()
	 * @model dataType="org.roofspring.site.Coefficient" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='5'"
	 * @generated
	 */
	Quantity getFactor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SeasonFactor#getFactor <em>Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Factor</em>' attribute.
	 * @see #getFactor()
	 * @generated
	 */
	void setFactor(Quantity value);

} // SeasonFactor

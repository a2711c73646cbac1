/**
 */
package org.roofspring.site;

import java.time.MonthDay;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Use Period</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part of the year, such as a school term or a growing season.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.UsePeriod#getName <em>Name</em>}</li>
 *   <li>{@link org.roofspring.site.UsePeriod#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.UsePeriod#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.UsePeriod#getFactor <em>Factor</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getUsePeriod()
 * @model
 * @generated
 */
public interface UsePeriod extends Row
{
	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Name.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.roofspring.site.SitePackage#getUsePeriod_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeriod#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(MonthDay)
	 * @see org.roofspring.site.SitePackage#getUsePeriod_From()
	 * @model dataType="org.roofspring.site.DayOfYear" required="true"
	 * @generated
	 */
	MonthDay getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeriod#getFrom <em>From</em>}' attribute.
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
	 * @see org.roofspring.site.SitePackage#getUsePeriod_To()
	 * @model dataType="org.roofspring.site.DayOfYear" required="true"
	 * @generated
	 */
	MonthDay getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeriod#getTo <em>To</em>}' attribute.
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
	 * Factor on the amount used. Range from 0 to 100. Default 1 (the full amount).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Factor</em>' attribute.
	 * @see #setFactor(Quantity)
	 * @see org.roofspring.site.SitePackage#getUsePeriod_Factor()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='100' default='1' defaultSource='the full amount'"
	 * @generated
	 */
	Quantity getFactor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeriod#getFactor <em>Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Factor</em>' attribute.
	 * @see #getFactor()
	 * @generated
	 */
	void setFactor(Quantity value);

} // UsePeriod

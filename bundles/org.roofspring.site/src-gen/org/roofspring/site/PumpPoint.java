/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pump Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A point of a pump's curve.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.PumpPoint#getFlow <em>Flow</em>}</li>
 *   <li>{@link org.roofspring.site.PumpPoint#getHead <em>Head</em>}</li>
 *   <li>{@link org.roofspring.site.PumpPoint#getEfficiency <em>Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.PumpPoint#getNpshRequired <em>Npsh Required</em>}</li>
 *   <li>{@link org.roofspring.site.PumpPoint#getInputPower <em>Input Power</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPumpPoint()
 * @model
 * @generated
 */
public interface PumpPoint extends Row
{
	/**
	 * Returns the value of the '<em><b>Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flow. Usual unit L/s. Range from 0 L/s to 10000 L/s.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Flow</em>' attribute.
	 * @see #setFlow(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpPoint_Flow()
	 * @model dataType="org.roofspring.site.Flow" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='10'"
	 * @generated
	 */
	Quantity getFlow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpPoint#getFlow <em>Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Flow</em>' attribute.
	 * @see #getFlow()
	 * @generated
	 */
	void setFlow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Head added. Usual unit m. Range from 0 m to 10000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head</em>' attribute.
	 * @see #setHead(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpPoint_Head()
	 * @model dataType="org.roofspring.site.Head" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getHead();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpPoint#getHead <em>Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head</em>' attribute.
	 * @see #getHead()
	 * @generated
	 */
	void setHead(Quantity value);

	/**
	 * Returns the value of the '<em><b>Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Efficiency of the pump without motor. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Efficiency</em>' attribute.
	 * @see #setEfficiency(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpPoint_Efficiency()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getEfficiency();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpPoint#getEfficiency <em>Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Efficiency</em>' attribute.
	 * @see #getEfficiency()
	 * @generated
	 */
	void setEfficiency(Quantity value);

	/**
	 * Returns the value of the '<em><b>Npsh Required</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Net positive suction head required. Usual unit m. Range from 0 m to 1000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Npsh Required</em>' attribute.
	 * @see #setNpshRequired(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpPoint_NpshRequired()
	 * @model dataType="org.roofspring.site.Head"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000'"
	 * @generated
	 */
	Quantity getNpshRequired();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpPoint#getNpshRequired <em>Npsh Required</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Npsh Required</em>' attribute.
	 * @see #getNpshRequired()
	 * @generated
	 */
	void setNpshRequired(Quantity value);

	/**
	 * Returns the value of the '<em><b>Input Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Power taken by the motor. Usual unit W. Range from 0 W to 10 MW.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Input Power</em>' attribute.
	 * @see #setInputPower(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpPoint_InputPower()
	 * @model dataType="org.roofspring.site.Power"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000000'"
	 * @generated
	 */
	Quantity getInputPower();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpPoint#getInputPower <em>Input Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Input Power</em>' attribute.
	 * @see #getInputPower()
	 * @generated
	 */
	void setInputPower(Quantity value);

} // PumpPoint

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pump Data</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Measured or published data of a pump.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.PumpData#getPoints <em>Points</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getMotorEfficiency <em>Motor Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getRatedSpeed <em>Rated Speed</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getRatedPower <em>Rated Power</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getDischargeBore <em>Discharge Bore</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getMinSubmergence <em>Min Submergence</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getMaxStarts <em>Max Starts</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.PumpData#getDataSource <em>Data Source</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPumpData()
 * @model abstract="true"
 * @generated
 */
public interface PumpData extends EObject
{
	/**
	 * Returns the value of the '<em><b>Points</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.PumpPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Points of the curve, by rising flow; at least three to compute with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Points</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getPumpData_Points()
	 * @model containment="true"
	 * @generated
	 */
	EList<PumpPoint> getPoints();

	/**
	 * Returns the value of the '<em><b>Motor Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Efficiency of the motor; needed for energy when input power is not measured. Usual unit %. Range above 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Motor Efficiency</em>' attribute.
	 * @see #setMotorEfficiency(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_MotorEfficiency()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getMotorEfficiency();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getMotorEfficiency <em>Motor Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Motor Efficiency</em>' attribute.
	 * @see #getMotorEfficiency()
	 * @generated
	 */
	void setMotorEfficiency(Quantity value);

	/**
	 * Returns the value of the '<em><b>Rated Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Speed at which the points were measured. Usual unit rpm. Range above 0 rpm to 60000 rpm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rated Speed</em>' attribute.
	 * @see #setRatedSpeed(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_RatedSpeed()
	 * @model dataType="org.roofspring.site.RotationalSpeed"
	 *        annotation="http://www.roofspring.org/value above='0' max='60000'"
	 * @generated
	 */
	Quantity getRatedSpeed();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getRatedSpeed <em>Rated Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Speed</em>' attribute.
	 * @see #getRatedSpeed()
	 * @generated
	 */
	void setRatedSpeed(Quantity value);

	/**
	 * Returns the value of the '<em><b>Rated Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Power on the motor's plate. Usual unit W. Range above 0 W to 10 MW.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rated Power</em>' attribute.
	 * @see #setRatedPower(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_RatedPower()
	 * @model dataType="org.roofspring.site.Power"
	 *        annotation="http://www.roofspring.org/value above='0' max='10000000'"
	 * @generated
	 */
	Quantity getRatedPower();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getRatedPower <em>Rated Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rated Power</em>' attribute.
	 * @see #getRatedPower()
	 * @generated
	 */
	void setRatedPower(Quantity value);

	/**
	 * Returns the value of the '<em><b>Discharge Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Diameter of the outlet. Usual unit mm. Range above 0 mm to 3000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Discharge Bore</em>' attribute.
	 * @see #setDischargeBore(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_DischargeBore()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='3'"
	 * @generated
	 */
	Quantity getDischargeBore();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getDischargeBore <em>Discharge Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Discharge Bore</em>' attribute.
	 * @see #getDischargeBore()
	 * @generated
	 */
	void setDischargeBore(Quantity value);

	/**
	 * Returns the value of the '<em><b>Min Submergence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least depth of water over the inlet. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Min Submergence</em>' attribute.
	 * @see #setMinSubmergence(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_MinSubmergence()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getMinSubmergence();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getMinSubmergence <em>Min Submergence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Min Submergence</em>' attribute.
	 * @see #getMinSubmergence()
	 * @generated
	 */
	void setMinSubmergence(Quantity value);

	/**
	 * Returns the value of the '<em><b>Max Starts</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Most starts that the motor bears in an hour. Usual unit 1/yr. Range from 0 to 3600 1/h.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Max Starts</em>' attribute.
	 * @see #setMaxStarts(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_MaxStarts()
	 * @model dataType="org.roofspring.site.Rate"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getMaxStarts();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getMaxStarts <em>Max Starts</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Starts</em>' attribute.
	 * @see #getMaxStarts()
	 * @generated
	 */
	void setMaxStarts(Quantity value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Price. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Quantity)
	 * @see org.roofspring.site.SitePackage#getPumpData_Price()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getPrice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Data Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the data come from, and whether they are measured, published or invented.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Data Source</em>' attribute.
	 * @see #setDataSource(String)
	 * @see org.roofspring.site.SitePackage#getPumpData_DataSource()
	 * @model
	 * @generated
	 */
	String getDataSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpData#getDataSource <em>Data Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Data Source</em>' attribute.
	 * @see #getDataSource()
	 * @generated
	 */
	void setDataSource(String value);

} // PumpData

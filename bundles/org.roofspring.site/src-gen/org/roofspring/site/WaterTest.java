/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Water Test</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A result of a test of the water.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.WaterTest#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getParameter <em>Parameter</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getValue <em>Value</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#isBelowDetection <em>Below Detection</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getLimit <em>Limit</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getLimitSource <em>Limit Source</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getLaboratory <em>Laboratory</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.WaterTest#getAction <em>Action</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getWaterTest()
 * @model
 * @generated
 */
public interface WaterTest extends Element
{
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day of the sample.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Date()
	 * @model dataType="org.roofspring.site.Date" required="true"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Parameter</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.WaterParameter}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was looked for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Parameter</em>' attribute.
	 * @see org.roofspring.site.WaterParameter
	 * @see #setParameter(WaterParameter)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Parameter()
	 * @model
	 * @generated
	 */
	WaterParameter getParameter();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getParameter <em>Parameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Parameter</em>' attribute.
	 * @see org.roofspring.site.WaterParameter
	 * @see #getParameter()
	 * @generated
	 */
	void setParameter(WaterParameter value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Result as a number; not given means none found. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Quantity)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Value()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getValue();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Quantity value);

	/**
	 * Returns the value of the '<em><b>Below Detection</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the number is a limit of detection and the true value lies below it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Below Detection</em>' attribute.
	 * @see #setBelowDetection(boolean)
	 * @see org.roofspring.site.SitePackage#getWaterTest_BelowDetection()
	 * @model
	 * @generated
	 */
	boolean isBelowDetection();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#isBelowDetection <em>Below Detection</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Below Detection</em>' attribute.
	 * @see #isBelowDetection()
	 * @generated
	 */
	void setBelowDetection(boolean value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unit as the laboratory writes it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Limit in the same unit that the result is held against. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Limit</em>' attribute.
	 * @see #setLimit(Quantity)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Limit()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getLimit();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getLimit <em>Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limit</em>' attribute.
	 * @see #getLimit()
	 * @generated
	 */
	void setLimit(Quantity value);

	/**
	 * Returns the value of the '<em><b>Limit Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the limit comes from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Limit Source</em>' attribute.
	 * @see #setLimitSource(String)
	 * @see org.roofspring.site.SitePackage#getWaterTest_LimitSource()
	 * @model
	 * @generated
	 */
	String getLimitSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getLimitSource <em>Limit Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limit Source</em>' attribute.
	 * @see #getLimitSource()
	 * @generated
	 */
	void setLimitSource(String value);

	/**
	 * Returns the value of the '<em><b>Laboratory</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who tested.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Laboratory</em>' attribute.
	 * @see #setLaboratory(String)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Laboratory()
	 * @model
	 * @generated
	 */
	String getLaboratory();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getLaboratory <em>Laboratory</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Laboratory</em>' attribute.
	 * @see #getLaboratory()
	 * @generated
	 */
	void setLaboratory(String value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the sample was taken.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

	/**
	 * Returns the value of the '<em><b>Action</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was done about it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Action</em>' attribute.
	 * @see #setAction(String)
	 * @see org.roofspring.site.SitePackage#getWaterTest_Action()
	 * @model
	 * @generated
	 */
	String getAction();

	/**
	 * Sets the value of the '{@link org.roofspring.site.WaterTest#getAction <em>Action</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Action</em>' attribute.
	 * @see #getAction()
	 * @generated
	 */
	void setAction(String value);

} // WaterTest

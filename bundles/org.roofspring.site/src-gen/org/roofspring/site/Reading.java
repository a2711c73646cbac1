/**
 */
package org.roofspring.site;

import java.time.LocalDate;
import java.time.LocalTime;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A value that was read on the site.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Reading#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.Reading#getTime <em>Time</em>}</li>
 *   <li>{@link org.roofspring.site.Reading#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Reading#getValue <em>Value</em>}</li>
 *   <li>{@link org.roofspring.site.Reading#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.Reading#getReader <em>Reader</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getReading()
 * @model
 * @generated
 */
public interface Reading extends Element
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
	 * @see org.roofspring.site.SitePackage#getReading_Date()
	 * @model dataType="org.roofspring.site.Date" required="true"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Reading#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time; not given means not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Time</em>' attribute.
	 * @see #setTime(LocalTime)
	 * @see org.roofspring.site.SitePackage#getReading_Time()
	 * @model dataType="org.roofspring.site.TimeOfDay"
	 * @generated
	 */
	LocalTime getTime();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Reading#getTime <em>Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time</em>' attribute.
	 * @see #getTime()
	 * @generated
	 */
	void setTime(LocalTime value);

	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.ReadingKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.ReadingKind
	 * @see #setKind(ReadingKind)
	 * @see org.roofspring.site.SitePackage#getReading_Kind()
	 * @model
	 * @generated
	 */
	ReadingKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Reading#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.ReadingKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(ReadingKind value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Value with its unit; a pure number for pH.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(Quantity)
	 * @see org.roofspring.site.SitePackage#getReading_Value()
	 * @model dataType="org.roofspring.site.Measurement" required="true"
	 * @generated
	 */
	Quantity getValue();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Reading#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(Quantity value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getReading_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Reading#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

	/**
	 * Returns the value of the '<em><b>Reader</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who read it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reader</em>' attribute.
	 * @see #setReader(String)
	 * @see org.roofspring.site.SitePackage#getReading_Reader()
	 * @model
	 * @generated
	 */
	String getReader();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Reading#getReader <em>Reader</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reader</em>' attribute.
	 * @see #getReader()
	 * @generated
	 */
	void setReader(String value);

} // Reading

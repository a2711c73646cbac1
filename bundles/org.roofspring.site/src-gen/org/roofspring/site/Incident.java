/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Incident</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Something that went wrong.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Incident#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Incident#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.Incident#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.Incident#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.Incident#getVolumeLost <em>Volume Lost</em>}</li>
 *   <li>{@link org.roofspring.site.Incident#getAction <em>Action</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getIncident()
 * @model
 * @generated
 */
public interface Incident extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.IncidentKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it was.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.IncidentKind
	 * @see #setKind(IncidentKind)
	 * @see org.roofspring.site.SitePackage#getIncident_Kind()
	 * @model
	 * @generated
	 */
	IncidentKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Incident#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.IncidentKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(IncidentKind value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it began.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(LocalDate)
	 * @see org.roofspring.site.SitePackage#getIncident_From()
	 * @model dataType="org.roofspring.site.Date" required="true"
	 * @generated
	 */
	LocalDate getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Incident#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(LocalDate value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it ended; not given means not over or one day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(LocalDate)
	 * @see org.roofspring.site.SitePackage#getIncident_To()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Incident#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getIncident_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Incident#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

	/**
	 * Returns the value of the '<em><b>Volume Lost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water lost. Usual unit m3. Range from 0 m3 to 1000000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Volume Lost</em>' attribute.
	 * @see #setVolumeLost(Quantity)
	 * @see org.roofspring.site.SitePackage#getIncident_VolumeLost()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000'"
	 * @generated
	 */
	Quantity getVolumeLost();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Incident#getVolumeLost <em>Volume Lost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Volume Lost</em>' attribute.
	 * @see #getVolumeLost()
	 * @generated
	 */
	void setVolumeLost(Quantity value);

	/**
	 * Returns the value of the '<em><b>Action</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Action</em>' attribute.
	 * @see #setAction(String)
	 * @see org.roofspring.site.SitePackage#getIncident_Action()
	 * @model
	 * @generated
	 */
	String getAction();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Incident#getAction <em>Action</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Action</em>' attribute.
	 * @see #getAction()
	 * @generated
	 */
	void setAction(String value);

} // Incident

/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Inspection</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A sanitary inspection.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Inspection#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.Inspection#getInspector <em>Inspector</em>}</li>
 *   <li>{@link org.roofspring.site.Inspection#getAnswers <em>Answers</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getInspection()
 * @model
 * @generated
 */
public interface Inspection extends NamedElement
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
	 * @see org.roofspring.site.SitePackage#getInspection_Date()
	 * @model dataType="org.roofspring.site.Date" required="true"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Inspection#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Inspector</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who made it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inspector</em>' attribute.
	 * @see #setInspector(String)
	 * @see org.roofspring.site.SitePackage#getInspection_Inspector()
	 * @model
	 * @generated
	 */
	String getInspector();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Inspection#getInspector <em>Inspector</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inspector</em>' attribute.
	 * @see #getInspector()
	 * @generated
	 */
	void setInspector(String value);

	/**
	 * Returns the value of the '<em><b>Answers</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.InspectionAnswer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Answers.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Answers</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getInspection_Answers()
	 * @model containment="true"
	 * @generated
	 */
	EList<InspectionAnswer> getAnswers();

} // Inspection

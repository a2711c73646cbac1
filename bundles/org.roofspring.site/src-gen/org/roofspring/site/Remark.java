/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Remark</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What a reviewer says about an element, and sign-offs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Remark#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getAuthor <em>Author</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getRole <em>Role</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getText <em>Text</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getFingerprint <em>Fingerprint</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getRestsOn <em>Rests On</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#isSettled <em>Settled</em>}</li>
 *   <li>{@link org.roofspring.site.Remark#getReplies <em>Replies</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getRemark()
 * @model
 * @generated
 */
public interface Remark extends Element
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.RemarkKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.RemarkKind
	 * @see #setKind(RemarkKind)
	 * @see org.roofspring.site.SitePackage#getRemark_Kind()
	 * @model
	 * @generated
	 */
	RemarkKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.RemarkKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(RemarkKind value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is about; not given means the whole site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getRemark_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

	/**
	 * Returns the value of the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who says it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Author</em>' attribute.
	 * @see #setAuthor(String)
	 * @see org.roofspring.site.SitePackage#getRemark_Author()
	 * @model required="true"
	 * @generated
	 */
	String getAuthor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getAuthor <em>Author</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Author</em>' attribute.
	 * @see #getAuthor()
	 * @generated
	 */
	void setAuthor(String value);

	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In what capacity, such as design engineer, and licence number where it matters.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see #setRole(String)
	 * @see org.roofspring.site.SitePackage#getRemark_Role()
	 * @model
	 * @generated
	 */
	String getRole();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see #getRole()
	 * @generated
	 */
	void setRole(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see org.roofspring.site.SitePackage#getRemark_Date()
	 * @model dataType="org.roofspring.site.Date" required="true"
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is said.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Text</em>' attribute.
	 * @see #setText(String)
	 * @see org.roofspring.site.SitePackage#getRemark_Text()
	 * @model required="true"
	 * @generated
	 */
	String getText();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getText <em>Text</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Text</em>' attribute.
	 * @see #getText()
	 * @generated
	 */
	void setText(String value);

	/**
	 * Returns the value of the '<em><b>Fingerprint</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fingerprint of what the author saw; a sign-off is out of date when it no longer matches.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fingerprint</em>' attribute.
	 * @see #setFingerprint(String)
	 * @see org.roofspring.site.SitePackage#getRemark_Fingerprint()
	 * @model
	 * @generated
	 */
	String getFingerprint();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#getFingerprint <em>Fingerprint</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fingerprint</em>' attribute.
	 * @see #getFingerprint()
	 * @generated
	 */
	void setFingerprint(String value);

	/**
	 * Returns the value of the '<em><b>Rests On</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Features and findings that the fingerprint covers, by name.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rests On</em>' attribute list.
	 * @see org.roofspring.site.SitePackage#getRemark_RestsOn()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getRestsOn();

	/**
	 * Returns the value of the '<em><b>Settled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether nothing is left to be done about it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Settled</em>' attribute.
	 * @see #setSettled(boolean)
	 * @see org.roofspring.site.SitePackage#getRemark_Settled()
	 * @model
	 * @generated
	 */
	boolean isSettled();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Remark#isSettled <em>Settled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Settled</em>' attribute.
	 * @see #isSettled()
	 * @generated
	 */
	void setSettled(boolean value);

	/**
	 * Returns the value of the '<em><b>Replies</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Remark}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Answers to it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Replies</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getRemark_Replies()
	 * @model containment="true"
	 * @generated
	 */
	EList<Remark> getReplies();

} // Remark

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Downpipe</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A pipe that brings water down from a gutter.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Downpipe#getBore <em>Bore</em>}</li>
 *   <li>{@link org.roofspring.site.Downpipe#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.Downpipe#getFillShare <em>Fill Share</em>}</li>
 *   <li>{@link org.roofspring.site.Downpipe#isWet <em>Wet</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getDownpipe()
 * @model
 * @generated
 */
public interface Downpipe extends Conduit
{
	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside diameter. Usual unit mm. Range above 0 mm to 1000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Quantity)
	 * @see org.roofspring.site.SitePackage#getDownpipe_Bore()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getBore();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Downpipe#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Quantity value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length. Usual unit m. Range from 0 m to 200 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Quantity)
	 * @see org.roofspring.site.SitePackage#getDownpipe_Length()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='200'"
	 * @generated
	 */
	Quantity getLength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Downpipe#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Fill Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of its section that may run full. Usual unit %. Range above 0 to 1. Default 33 % (from memory, verify against EN 12056-3:2000, filling degree of downpipes).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fill Share</em>' attribute.
	 * @see #setFillShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getDownpipe_FillShare()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value above='0' max='1' default='33 %' defaultSource='from memory, verify against EN 12056-3:2000, filling degree of downpipes'"
	 * @generated
	 */
	Quantity getFillShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Downpipe#getFillShare <em>Fill Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Fill Share</em>' attribute.
	 * @see #getFillShare()
	 * @generated
	 */
	void setFillShare(Quantity value);

	/**
	 * Returns the value of the '<em><b>Wet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it runs under ground and stays full between storms.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wet</em>' attribute.
	 * @see #setWet(boolean)
	 * @see org.roofspring.site.SitePackage#getDownpipe_Wet()
	 * @model
	 * @generated
	 */
	boolean isWet();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Downpipe#isWet <em>Wet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wet</em>' attribute.
	 * @see #isWet()
	 * @generated
	 */
	void setWet(boolean value);

} // Downpipe

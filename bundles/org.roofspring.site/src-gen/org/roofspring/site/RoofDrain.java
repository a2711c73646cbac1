/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Roof Drain</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A share of a roof's water and where it goes.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.RoofDrain#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.RoofDrain#getShare <em>Share</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getRoofDrain()
 * @model
 * @generated
 */
public interface RoofDrain extends Row
{
	/**
	 * Returns the value of the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gutter, downpipe, screen, diverter or tank that takes the water.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' reference.
	 * @see #setTo(Receiver)
	 * @see org.roofspring.site.SitePackage#getRoofDrain_To()
	 * @model resolveProxies="false" required="true"
	 * @generated
	 */
	Receiver getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RoofDrain#getTo <em>To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' reference.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Receiver value);

	/**
	 * Returns the value of the '<em><b>Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the roof; not given means equal parts of what the others leave. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Share</em>' attribute.
	 * @see #setShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoofDrain_Share()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RoofDrain#getShare <em>Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Share</em>' attribute.
	 * @see #getShare()
	 * @generated
	 */
	void setShare(Quantity value);

} // RoofDrain

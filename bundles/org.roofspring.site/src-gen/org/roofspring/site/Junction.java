/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Junction</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A place where runs of pipe meet.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Junction#getLevel <em>Level</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getJunction()
 * @model
 * @generated
 */
public interface Junction extends PipeNode
{
	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getJunction_Level()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Junction#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

} // Junction

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Profile Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Height of a pipe at a place along it.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.ProfilePoint#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.roofspring.site.ProfilePoint#getLevel <em>Level</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getProfilePoint()
 * @model
 * @generated
 */
public interface ProfilePoint extends Row
{
	/**
	 * Returns the value of the '<em><b>Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance from the start of the run. Usual unit m. Range from 0 m to 100 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Distance</em>' attribute.
	 * @see #setDistance(Quantity)
	 * @see org.roofspring.site.SitePackage#getProfilePoint_Distance()
	 * @model dataType="org.roofspring.site.Length" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='100000'"
	 * @generated
	 */
	Quantity getDistance();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ProfilePoint#getDistance <em>Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Distance</em>' attribute.
	 * @see #getDistance()
	 * @generated
	 */
	void setDistance(Quantity value);

	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getProfilePoint_Level()
	 * @model dataType="org.roofspring.site.Level" required="true"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ProfilePoint#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

} // ProfilePoint

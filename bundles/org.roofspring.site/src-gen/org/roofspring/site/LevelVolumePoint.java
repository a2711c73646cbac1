/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Level Volume Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A point of the curve of volume against height of water.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.LevelVolumePoint#getHeight <em>Height</em>}</li>
 *   <li>{@link org.roofspring.site.LevelVolumePoint#getVolume <em>Volume</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getLevelVolumePoint()
 * @model
 * @generated
 */
public interface LevelVolumePoint extends Row
{
	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of water above the floor. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getLevelVolumePoint_Height()
	 * @model dataType="org.roofspring.site.Length" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.LevelVolumePoint#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume up to that height. Usual unit m3. Range from 0 m3 to 1000000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Volume</em>' attribute.
	 * @see #setVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getLevelVolumePoint_Volume()
	 * @model dataType="org.roofspring.site.Volume" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000'"
	 * @generated
	 */
	Quantity getVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.LevelVolumePoint#getVolume <em>Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Volume</em>' attribute.
	 * @see #getVolume()
	 * @generated
	 */
	void setVolume(Quantity value);

} // LevelVolumePoint

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pressure Vessel</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A vessel that keeps a pressure branch under pressure while the pump rests.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.PressureVessel#getVolume <em>Volume</em>}</li>
 *   <li>{@link org.roofspring.site.PressureVessel#getPrecharge <em>Precharge</em>}</li>
 *   <li>{@link org.roofspring.site.PressureVessel#getCutIn <em>Cut In</em>}</li>
 *   <li>{@link org.roofspring.site.PressureVessel#getCutOut <em>Cut Out</em>}</li>
 *   <li>{@link org.roofspring.site.PressureVessel#getLevel <em>Level</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPressureVessel()
 * @model
 * @generated
 */
public interface PressureVessel extends PipeNode
{
	/**
	 * Returns the value of the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whole volume. Usual unit L. Range above 0 L to 100 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Volume</em>' attribute.
	 * @see #setVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getPressureVessel_Volume()
	 * @model dataType="org.roofspring.site.SmallVolume"
	 *        annotation="http://www.roofspring.org/value above='0' max='100'"
	 * @generated
	 */
	Quantity getVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PressureVessel#getVolume <em>Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Volume</em>' attribute.
	 * @see #getVolume()
	 * @generated
	 */
	void setVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Precharge</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure of the air when empty of water. Usual unit kPa. Range from 0 kPa to 10000 kPa.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Precharge</em>' attribute.
	 * @see #setPrecharge(Quantity)
	 * @see org.roofspring.site.SitePackage#getPressureVessel_Precharge()
	 * @model dataType="org.roofspring.site.Pressure"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000000'"
	 * @generated
	 */
	Quantity getPrecharge();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PressureVessel#getPrecharge <em>Precharge</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Precharge</em>' attribute.
	 * @see #getPrecharge()
	 * @generated
	 */
	void setPrecharge(Quantity value);

	/**
	 * Returns the value of the '<em><b>Cut In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure at which the pump starts. Usual unit kPa. Range from 0 kPa to 10000 kPa.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cut In</em>' attribute.
	 * @see #setCutIn(Quantity)
	 * @see org.roofspring.site.SitePackage#getPressureVessel_CutIn()
	 * @model dataType="org.roofspring.site.Pressure"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000000'"
	 * @generated
	 */
	Quantity getCutIn();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PressureVessel#getCutIn <em>Cut In</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cut In</em>' attribute.
	 * @see #getCutIn()
	 * @generated
	 */
	void setCutIn(Quantity value);

	/**
	 * Returns the value of the '<em><b>Cut Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure at which the pump stops. Usual unit kPa. Range from 0 kPa to 10000 kPa.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cut Out</em>' attribute.
	 * @see #setCutOut(Quantity)
	 * @see org.roofspring.site.SitePackage#getPressureVessel_CutOut()
	 * @model dataType="org.roofspring.site.Pressure"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000000'"
	 * @generated
	 */
	Quantity getCutOut();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PressureVessel#getCutOut <em>Cut Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cut Out</em>' attribute.
	 * @see #getCutOut()
	 * @generated
	 */
	void setCutOut(Quantity value);

	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getPressureVessel_Level()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PressureVessel#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

} // PressureVessel

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>First Flush Diverter</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A device that keeps the first and dirtiest rain of a storm out of the tank.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.FirstFlushDiverter#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.roofspring.site.FirstFlushDiverter#getVolume <em>Volume</em>}</li>
 *   <li>{@link org.roofspring.site.FirstFlushDiverter#getResetDryDays <em>Reset Dry Days</em>}</li>
 *   <li>{@link org.roofspring.site.FirstFlushDiverter#getDrainTime <em>Drain Time</em>}</li>
 *   <li>{@link org.roofspring.site.FirstFlushDiverter#getDrainOrifice <em>Drain Orifice</em>}</li>
 *   <li>{@link org.roofspring.site.FirstFlushDiverter#getHeight <em>Height</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter()
 * @model
 * @generated
 */
public interface FirstFlushDiverter extends Conduit
{
	/**
	 * Returns the value of the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of rain on the roof that is thrown away; used when no volume is given. Usual unit mm. Range from 0 mm to 20 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth</em>' attribute.
	 * @see #setDepth(Quantity)
	 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter_Depth()
	 * @model dataType="org.roofspring.site.RainDepth"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.02'"
	 * @generated
	 */
	Quantity getDepth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.FirstFlushDiverter#getDepth <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth</em>' attribute.
	 * @see #getDepth()
	 * @generated
	 */
	void setDepth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume that is thrown away. Usual unit L. Range from 0 L to 20 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Volume</em>' attribute.
	 * @see #setVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter_Volume()
	 * @model dataType="org.roofspring.site.SmallVolume"
	 *        annotation="http://www.roofspring.org/value min='0' max='20'"
	 * @generated
	 */
	Quantity getVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.FirstFlushDiverter#getVolume <em>Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Volume</em>' attribute.
	 * @see #getVolume()
	 * @generated
	 */
	void setVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Reset Dry Days</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Dry days after which it acts anew. Usual unit d. Range from 0 d to 365 d. Default 3 d (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reset Dry Days</em>' attribute.
	 * @see #setResetDryDays(Quantity)
	 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter_ResetDryDays()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='31536000' default='3 d' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getResetDryDays();

	/**
	 * Sets the value of the '{@link org.roofspring.site.FirstFlushDiverter#getResetDryDays <em>Reset Dry Days</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reset Dry Days</em>' attribute.
	 * @see #getResetDryDays()
	 * @generated
	 */
	void setResetDryDays(Quantity value);

	/**
	 * Returns the value of the '<em><b>Drain Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time in which it drains by itself; not given means it is emptied by hand. Usual unit h. Range from 0 h to 720 h.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Drain Time</em>' attribute.
	 * @see #setDrainTime(Quantity)
	 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter_DrainTime()
	 * @model dataType="org.roofspring.site.Hours"
	 *        annotation="http://www.roofspring.org/value min='0' max='2592000'"
	 * @generated
	 */
	Quantity getDrainTime();

	/**
	 * Sets the value of the '{@link org.roofspring.site.FirstFlushDiverter#getDrainTime <em>Drain Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drain Time</em>' attribute.
	 * @see #getDrainTime()
	 * @generated
	 */
	void setDrainTime(Quantity value);

	/**
	 * Returns the value of the '<em><b>Drain Orifice</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Diameter of its drain hole. Usual unit mm. Range from 0 mm to 100 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Drain Orifice</em>' attribute.
	 * @see #setDrainOrifice(Quantity)
	 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter_DrainOrifice()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.1'"
	 * @generated
	 */
	Quantity getDrainOrifice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.FirstFlushDiverter#getDrainOrifice <em>Drain Orifice</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drain Orifice</em>' attribute.
	 * @see #getDrainOrifice()
	 * @generated
	 */
	void setDrainOrifice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of its chamber. Usual unit m. Range above 0 m to 20 m. Default 1 m (assumed; replace with its height).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getFirstFlushDiverter_Height()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='20' default='1 m' defaultSource='assumed; replace with its height'"
	 * @generated
	 */
	Quantity getHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.FirstFlushDiverter#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Quantity value);

} // FirstFlushDiverter

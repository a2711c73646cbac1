/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Intensity Point</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Design intensity of a duration and return period.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.IntensityPoint#getDuration <em>Duration</em>}</li>
 *   <li>{@link org.roofspring.site.IntensityPoint#getReturnPeriod <em>Return Period</em>}</li>
 *   <li>{@link org.roofspring.site.IntensityPoint#getIntensity <em>Intensity</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getIntensityPoint()
 * @model
 * @generated
 */
public interface IntensityPoint extends Row
{
	/**
	 * Returns the value of the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Duration of the storm. Usual unit min. Range from 1 min to 4320 min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Duration</em>' attribute.
	 * @see #setDuration(Quantity)
	 * @see org.roofspring.site.SitePackage#getIntensityPoint_Duration()
	 * @model dataType="org.roofspring.site.Minutes" required="true"
	 *        annotation="http://www.roofspring.org/value min='60' max='259200'"
	 * @generated
	 */
	Quantity getDuration();

	/**
	 * Sets the value of the '{@link org.roofspring.site.IntensityPoint#getDuration <em>Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Duration</em>' attribute.
	 * @see #getDuration()
	 * @generated
	 */
	void setDuration(Quantity value);

	/**
	 * Returns the value of the '<em><b>Return Period</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Return period. Usual unit yr. Range from 1 yr to 1000 yr.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Return Period</em>' attribute.
	 * @see #setReturnPeriod(Quantity)
	 * @see org.roofspring.site.SitePackage#getIntensityPoint_ReturnPeriod()
	 * @model dataType="org.roofspring.site.Years" required="true"
	 *        annotation="http://www.roofspring.org/value min='31556952' max='31556952000'"
	 * @generated
	 */
	Quantity getReturnPeriod();

	/**
	 * Sets the value of the '{@link org.roofspring.site.IntensityPoint#getReturnPeriod <em>Return Period</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Return Period</em>' attribute.
	 * @see #getReturnPeriod()
	 * @generated
	 */
	void setReturnPeriod(Quantity value);

	/**
	 * Returns the value of the '<em><b>Intensity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mean intensity over the duration. Usual unit mm/h. Range from 0 mm/h to 2000 mm/h.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Intensity</em>' attribute.
	 * @see #setIntensity(Quantity)
	 * @see org.roofspring.site.SitePackage#getIntensityPoint_Intensity()
	 * @model dataType="org.roofspring.site.Intensity" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='2000'"
	 * @generated
	 */
	Quantity getIntensity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.IntensityPoint#getIntensity <em>Intensity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Intensity</em>' attribute.
	 * @see #getIntensity()
	 * @generated
	 */
	void setIntensity(Quantity value);

} // IntensityPoint

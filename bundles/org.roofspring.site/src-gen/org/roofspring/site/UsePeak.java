/**
 */
package org.roofspring.site;

import java.time.LocalTime;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Use Peak</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part of the day with a share of a day's use.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.UsePeak#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.UsePeak#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.UsePeak#getShare <em>Share</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getUsePeak()
 * @model
 * @generated
 */
public interface UsePeak extends Row
{
	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Start.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(LocalTime)
	 * @see org.roofspring.site.SitePackage#getUsePeak_From()
	 * @model dataType="org.roofspring.site.TimeOfDay" required="true"
	 * @generated
	 */
	LocalTime getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeak#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(LocalTime value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * End.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(LocalTime)
	 * @see org.roofspring.site.SitePackage#getUsePeak_To()
	 * @model dataType="org.roofspring.site.TimeOfDay" required="true"
	 * @generated
	 */
	LocalTime getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeak#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(LocalTime value);

	/**
	 * Returns the value of the '<em><b>Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the day's use. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Share</em>' attribute.
	 * @see #setShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getUsePeak_Share()
	 * @model dataType="org.roofspring.site.Share" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UsePeak#getShare <em>Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Share</em>' attribute.
	 * @see #getShare()
	 * @generated
	 */
	void setShare(Quantity value);

} // UsePeak

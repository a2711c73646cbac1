/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Fitting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Fittings of one kind in a run.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Fitting#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Fitting#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.Fitting#getLossCoefficient <em>Loss Coefficient</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getFitting()
 * @model
 * @generated
 */
public interface Fitting extends Row
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.FittingKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.FittingKind
	 * @see #setKind(FittingKind)
	 * @see org.roofspring.site.SitePackage#getFitting_Kind()
	 * @model
	 * @generated
	 */
	FittingKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Fitting#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.FittingKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(FittingKind value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many. Range from 0 to 10000. Default 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @see org.roofspring.site.SitePackage#getFitting_Count()
	 * @model default="1"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Fitting#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>Loss Coefficient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Loss coefficient K of one, in velocity heads; not given means that of the kind. Range from 0 to 100000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Loss Coefficient</em>' attribute.
	 * @see #setLossCoefficient(Quantity)
	 * @see org.roofspring.site.SitePackage#getFitting_LossCoefficient()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='100000'"
	 * @generated
	 */
	Quantity getLossCoefficient();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Fitting#getLossCoefficient <em>Loss Coefficient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Loss Coefficient</em>' attribute.
	 * @see #getLossCoefficient()
	 * @generated
	 */
	void setLossCoefficient(Quantity value);

} // Fitting

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Top Up</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Water that can be brought from outside.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.TopUp#getSource <em>Source</em>}</li>
 *   <li>{@link org.roofspring.site.TopUp#getTank <em>Tank</em>}</li>
 *   <li>{@link org.roofspring.site.TopUp#getLoad <em>Load</em>}</li>
 *   <li>{@link org.roofspring.site.TopUp#getOrderBelow <em>Order Below</em>}</li>
 *   <li>{@link org.roofspring.site.TopUp#getDelay <em>Delay</em>}</li>
 *   <li>{@link org.roofspring.site.TopUp#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.TopUp#getMostPerYear <em>Most Per Year</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTopUp()
 * @model
 * @generated
 */
public interface TopUp extends Component
{
	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.TopUpSource}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where it comes from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see org.roofspring.site.TopUpSource
	 * @see #setSource(TopUpSource)
	 * @see org.roofspring.site.SitePackage#getTopUp_Source()
	 * @model
	 * @generated
	 */
	TopUpSource getSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see org.roofspring.site.TopUpSource
	 * @see #getSource()
	 * @generated
	 */
	void setSource(TopUpSource value);

	/**
	 * Returns the value of the '<em><b>Tank</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tank it is filled into.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tank</em>' reference.
	 * @see #setTank(Tank)
	 * @see org.roofspring.site.SitePackage#getTopUp_Tank()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Tank getTank();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getTank <em>Tank</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank</em>' reference.
	 * @see #getTank()
	 * @generated
	 */
	void setTank(Tank value);

	/**
	 * Returns the value of the '<em><b>Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of one load. Usual unit m3. Range above 0 m3 to 1000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Load</em>' attribute.
	 * @see #setLoad(Quantity)
	 * @see org.roofspring.site.SitePackage#getTopUp_Load()
	 * @model dataType="org.roofspring.site.Volume" required="true"
	 *        annotation="http://www.roofspring.org/value above='0' max='1000'"
	 * @generated
	 */
	Quantity getLoad();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getLoad <em>Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Load</em>' attribute.
	 * @see #getLoad()
	 * @generated
	 */
	void setLoad(Quantity value);

	/**
	 * Returns the value of the '<em><b>Order Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the usable volume below which a load is ordered. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Order Below</em>' attribute.
	 * @see #setOrderBelow(Quantity)
	 * @see org.roofspring.site.SitePackage#getTopUp_OrderBelow()
	 * @model dataType="org.roofspring.site.Share" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getOrderBelow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getOrderBelow <em>Order Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Order Below</em>' attribute.
	 * @see #getOrderBelow()
	 * @generated
	 */
	void setOrderBelow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Delay</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days from order to arrival. Usual unit d. Range from 0 d to 365 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Delay</em>' attribute.
	 * @see #setDelay(Quantity)
	 * @see org.roofspring.site.SitePackage#getTopUp_Delay()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='31536000'"
	 * @generated
	 */
	Quantity getDelay();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getDelay <em>Delay</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Delay</em>' attribute.
	 * @see #getDelay()
	 * @generated
	 */
	void setDelay(Quantity value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Price of one load. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Quantity)
	 * @see org.roofspring.site.SitePackage#getTopUp_Price()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getPrice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Most Per Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Most loads that can be had in a year; not given means no limit. Range from 0 to 1000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Most Per Year</em>' attribute.
	 * @see #setMostPerYear(int)
	 * @see org.roofspring.site.SitePackage#getTopUp_MostPerYear()
	 * @model annotation="http://www.roofspring.org/value min='0' max='1000'"
	 * @generated
	 */
	int getMostPerYear();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TopUp#getMostPerYear <em>Most Per Year</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Most Per Year</em>' attribute.
	 * @see #getMostPerYear()
	 * @generated
	 */
	void setMostPerYear(int value);

} // TopUp

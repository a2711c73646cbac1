/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Economy</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Money matters that hold for the whole site.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Economy#getBasis <em>Basis</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getDiscountRate <em>Discount Rate</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getInflation <em>Inflation</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getHorizon <em>Horizon</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getBaseYear <em>Base Year</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getEnergyPrice <em>Energy Price</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getLabourPrice <em>Labour Price</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getTariff <em>Tariff</em>}</li>
 *   <li>{@link org.roofspring.site.Economy#getPeople <em>People</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getEconomy()
 * @model
 * @generated
 */
public interface Economy extends Element
{
	/**
	 * Returns the value of the '<em><b>Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.PriceBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether prices hold inflation.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Basis</em>' attribute.
	 * @see org.roofspring.site.PriceBasis
	 * @see #setBasis(PriceBasis)
	 * @see org.roofspring.site.SitePackage#getEconomy_Basis()
	 * @model
	 * @generated
	 */
	PriceBasis getBasis();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getBasis <em>Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Basis</em>' attribute.
	 * @see org.roofspring.site.PriceBasis
	 * @see #getBasis()
	 * @generated
	 */
	void setBasis(PriceBasis value);

	/**
	 * Returns the value of the '<em><b>Discount Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rate at which later money counts for less. Usual unit %. Range from 0 to 0.5. Default 4 % (a choice of this program; use the rate of the one who pays).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Discount Rate</em>' attribute.
	 * @see #setDiscountRate(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_DiscountRate()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.5' default='4 %' defaultSource='a choice of this program; use the rate of the one who pays'"
	 * @generated
	 */
	Quantity getDiscountRate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getDiscountRate <em>Discount Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Discount Rate</em>' attribute.
	 * @see #getDiscountRate()
	 * @generated
	 */
	void setDiscountRate(Quantity value);

	/**
	 * Returns the value of the '<em><b>Inflation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * General inflation, where prices are nominal. Usual unit %. Range from -0.1 to 0.5.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inflation</em>' attribute.
	 * @see #setInflation(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_Inflation()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='-0.1' max='0.5'"
	 * @generated
	 */
	Quantity getInflation();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getInflation <em>Inflation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inflation</em>' attribute.
	 * @see #getInflation()
	 * @generated
	 */
	void setInflation(Quantity value);

	/**
	 * Returns the value of the '<em><b>Horizon</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Years that are looked at. Usual unit yr. Range from 1 yr to 200 yr. Default 20 yr (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Horizon</em>' attribute.
	 * @see #setHorizon(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_Horizon()
	 * @model dataType="org.roofspring.site.Years"
	 *        annotation="http://www.roofspring.org/value min='31556952' max='6311390400' default='20 yr' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getHorizon();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getHorizon <em>Horizon</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Horizon</em>' attribute.
	 * @see #getHorizon()
	 * @generated
	 */
	void setHorizon(Quantity value);

	/**
	 * Returns the value of the '<em><b>Base Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Year of the prices. Range from 1900 to 2300.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base Year</em>' attribute.
	 * @see #setBaseYear(int)
	 * @see org.roofspring.site.SitePackage#getEconomy_BaseYear()
	 * @model annotation="http://www.roofspring.org/value min='1900' max='2300'"
	 * @generated
	 */
	int getBaseYear();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getBaseYear <em>Base Year</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base Year</em>' attribute.
	 * @see #getBaseYear()
	 * @generated
	 */
	void setBaseYear(int value);

	/**
	 * Returns the value of the '<em><b>Energy Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Price of energy. Usual unit cur/kWh. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Energy Price</em>' attribute.
	 * @see #setEnergyPrice(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_EnergyPrice()
	 * @model dataType="org.roofspring.site.EnergyCost"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getEnergyPrice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getEnergyPrice <em>Energy Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Energy Price</em>' attribute.
	 * @see #getEnergyPrice()
	 * @generated
	 */
	void setEnergyPrice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Labour Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cost of an hour's work. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Labour Price</em>' attribute.
	 * @see #setLabourPrice(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_LabourPrice()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getLabourPrice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getLabourPrice <em>Labour Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Labour Price</em>' attribute.
	 * @see #getLabourPrice()
	 * @generated
	 */
	void setLabourPrice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Tariff</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What users pay for the water. Usual unit cur/m3. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tariff</em>' attribute.
	 * @see #setTariff(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_Tariff()
	 * @model dataType="org.roofspring.site.UnitCost"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getTariff();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getTariff <em>Tariff</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tariff</em>' attribute.
	 * @see #getTariff()
	 * @generated
	 */
	void setTariff(Quantity value);

	/**
	 * Returns the value of the '<em><b>People</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People who live on the water, for costs by person; not given means counted from the uses. Range from 0 to 1000000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>People</em>' attribute.
	 * @see #setPeople(Quantity)
	 * @see org.roofspring.site.SitePackage#getEconomy_People()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000'"
	 * @generated
	 */
	Quantity getPeople();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Economy#getPeople <em>People</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>People</em>' attribute.
	 * @see #getPeople()
	 * @generated
	 */
	void setPeople(Quantity value);

} // Economy

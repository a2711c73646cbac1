/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Alternative Supply</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Another way to get the same water, for comparison.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getCapital <em>Capital</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getCapitalLife <em>Capital Life</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getYearlyCost <em>Yearly Cost</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getEnergy <em>Energy</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getReliability <em>Reliability</em>}</li>
 *   <li>{@link org.roofspring.site.AlternativeSupply#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getAlternativeSupply()
 * @model
 * @generated
 */
public interface AlternativeSupply extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.SupplyKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.SupplyKind
	 * @see #setKind(SupplyKind)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_Kind()
	 * @model
	 * @generated
	 */
	SupplyKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.SupplyKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(SupplyKind value);

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Price of the water. Usual unit cur/m3. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(Quantity)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_Price()
	 * @model dataType="org.roofspring.site.UnitCost"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getPrice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Capital</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cost to begin with. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Capital</em>' attribute.
	 * @see #setCapital(Quantity)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_Capital()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getCapital();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getCapital <em>Capital</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capital</em>' attribute.
	 * @see #getCapital()
	 * @generated
	 */
	void setCapital(Quantity value);

	/**
	 * Returns the value of the '<em><b>Capital Life</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Life of what was bought to begin with. Usual unit yr. Range above 0 yr to 200 yr.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Capital Life</em>' attribute.
	 * @see #setCapitalLife(Quantity)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_CapitalLife()
	 * @model dataType="org.roofspring.site.Years"
	 *        annotation="http://www.roofspring.org/value above='0' max='6311390400'"
	 * @generated
	 */
	Quantity getCapitalLife();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getCapitalLife <em>Capital Life</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capital Life</em>' attribute.
	 * @see #getCapitalLife()
	 * @generated
	 */
	void setCapitalLife(Quantity value);

	/**
	 * Returns the value of the '<em><b>Yearly Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fixed cost each year. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yearly Cost</em>' attribute.
	 * @see #setYearlyCost(Quantity)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_YearlyCost()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getYearlyCost();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getYearlyCost <em>Yearly Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yearly Cost</em>' attribute.
	 * @see #getYearlyCost()
	 * @generated
	 */
	void setYearlyCost(Quantity value);

	/**
	 * Returns the value of the '<em><b>Energy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Energy for each volume. Usual unit kWh/m3. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Energy</em>' attribute.
	 * @see #setEnergy(Quantity)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_Energy()
	 * @model dataType="org.roofspring.site.SpecificEnergy"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getEnergy();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getEnergy <em>Energy</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Energy</em>' attribute.
	 * @see #getEnergy()
	 * @generated
	 */
	void setEnergy(Quantity value);

	/**
	 * Returns the value of the '<em><b>Reliability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the days on which it can be had. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reliability</em>' attribute.
	 * @see #setReliability(Quantity)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_Reliability()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getReliability();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getReliability <em>Reliability</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reliability</em>' attribute.
	 * @see #getReliability()
	 * @generated
	 */
	void setReliability(Quantity value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the prices come from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.roofspring.site.SitePackage#getAlternativeSupply_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.AlternativeSupply#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // AlternativeSupply

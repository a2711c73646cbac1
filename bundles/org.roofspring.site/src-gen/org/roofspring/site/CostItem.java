/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Cost Item</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A cost.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.CostItem#getCategory <em>Category</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getFirstYear <em>First Year</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getInterval <em>Interval</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getLife <em>Life</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getYearlyChange <em>Yearly Change</em>}</li>
 *   <li>{@link org.roofspring.site.CostItem#getPerson <em>Person</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getCostItem()
 * @model
 * @generated
 */
public interface CostItem extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Category</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.CostCategory}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Category over the life of the service.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Category</em>' attribute.
	 * @see org.roofspring.site.CostCategory
	 * @see #setCategory(CostCategory)
	 * @see org.roofspring.site.SitePackage#getCostItem_Category()
	 * @model
	 * @generated
	 */
	CostCategory getCategory();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getCategory <em>Category</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Category</em>' attribute.
	 * @see org.roofspring.site.CostCategory
	 * @see #getCategory()
	 * @generated
	 */
	void setCategory(CostCategory value);

	/**
	 * Returns the value of the '<em><b>Amount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Amount for one unit. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Amount</em>' attribute.
	 * @see #setAmount(Quantity)
	 * @see org.roofspring.site.SitePackage#getCostItem_Amount()
	 * @model dataType="org.roofspring.site.Money" required="true"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getAmount();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getAmount <em>Amount</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount</em>' attribute.
	 * @see #getAmount()
	 * @generated
	 */
	void setAmount(Quantity value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of units. Range from 0 to 1000000000. Default 1 (one unit).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(Quantity)
	 * @see org.roofspring.site.SitePackage#getCostItem_Quantity()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000000' default='1' defaultSource='one unit'"
	 * @generated
	 */
	Quantity getQuantity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What one unit is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Unit</em>' attribute.
	 * @see #setUnit(String)
	 * @see org.roofspring.site.SitePackage#getCostItem_Unit()
	 * @model
	 * @generated
	 */
	String getUnit();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getUnit <em>Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Unit</em>' attribute.
	 * @see #getUnit()
	 * @generated
	 */
	void setUnit(String value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part of the system it belongs to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getCostItem_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

	/**
	 * Returns the value of the '<em><b>First Year</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Year in which it first falls due, 0 being the year of building. Range from 0 to 200.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>First Year</em>' attribute.
	 * @see #setFirstYear(int)
	 * @see org.roofspring.site.SitePackage#getCostItem_FirstYear()
	 * @model annotation="http://www.roofspring.org/value min='0' max='200'"
	 * @generated
	 */
	int getFirstYear();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getFirstYear <em>First Year</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>First Year</em>' attribute.
	 * @see #getFirstYear()
	 * @generated
	 */
	void setFirstYear(int value);

	/**
	 * Returns the value of the '<em><b>Interval</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time after which it falls due again; not given means once. Usual unit yr. Range above 0 yr to 200 yr.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Interval</em>' attribute.
	 * @see #setInterval(Quantity)
	 * @see org.roofspring.site.SitePackage#getCostItem_Interval()
	 * @model dataType="org.roofspring.site.Years"
	 *        annotation="http://www.roofspring.org/value above='0' max='6311390400'"
	 * @generated
	 */
	Quantity getInterval();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getInterval <em>Interval</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Interval</em>' attribute.
	 * @see #getInterval()
	 * @generated
	 */
	void setInterval(Quantity value);

	/**
	 * Returns the value of the '<em><b>Life</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Life; a residual value is left of what is not used up. Usual unit yr. Range above 0 yr to 200 yr.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Life</em>' attribute.
	 * @see #setLife(Quantity)
	 * @see org.roofspring.site.SitePackage#getCostItem_Life()
	 * @model dataType="org.roofspring.site.Years"
	 *        annotation="http://www.roofspring.org/value above='0' max='6311390400'"
	 * @generated
	 */
	Quantity getLife();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getLife <em>Life</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Life</em>' attribute.
	 * @see #getLife()
	 * @generated
	 */
	void setLife(Quantity value);

	/**
	 * Returns the value of the '<em><b>Yearly Change</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Change of the price each year above general inflation. Usual unit %. Range from -0.5 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Yearly Change</em>' attribute.
	 * @see #setYearlyChange(Quantity)
	 * @see org.roofspring.site.SitePackage#getCostItem_YearlyChange()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='-0.5' max='1'"
	 * @generated
	 */
	Quantity getYearlyChange();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getYearlyChange <em>Yearly Change</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Yearly Change</em>' attribute.
	 * @see #getYearlyChange()
	 * @generated
	 */
	void setYearlyChange(Quantity value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who pays or does the work.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see org.roofspring.site.SitePackage#getCostItem_Person()
	 * @model
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link org.roofspring.site.CostItem#getPerson <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' attribute.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(String value);

} // CostItem

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.CostCategory;
import org.roofspring.site.CostItem;
import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Cost Item</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getCategory <em>Category</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getAmount <em>Amount</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getFirstYear <em>First Year</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getInterval <em>Interval</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getLife <em>Life</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getYearlyChange <em>Yearly Change</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.CostItemImpl#getPerson <em>Person</em>}</li>
 * </ul>
 *
 * @generated
 */
public class CostItemImpl extends NamedElementImpl implements CostItem
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected CostItemImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return SitePackage.Literals.COST_ITEM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CostCategory getCategory()
	{
		return (CostCategory)eGet(SitePackage.Literals.COST_ITEM__CATEGORY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCategory(CostCategory newCategory)
	{
		eSet(SitePackage.Literals.COST_ITEM__CATEGORY, newCategory);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAmount()
	{
		return (Quantity)eGet(SitePackage.Literals.COST_ITEM__AMOUNT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmount(Quantity newAmount)
	{
		eSet(SitePackage.Literals.COST_ITEM__AMOUNT, newAmount);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getQuantity()
	{
		return (Quantity)eGet(SitePackage.Literals.COST_ITEM__QUANTITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(Quantity newQuantity)
	{
		eSet(SitePackage.Literals.COST_ITEM__QUANTITY, newQuantity);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit()
	{
		return (String)eGet(SitePackage.Literals.COST_ITEM__UNIT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit)
	{
		eSet(SitePackage.Literals.COST_ITEM__UNIT, newUnit);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.COST_ITEM__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.COST_ITEM__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getFirstYear()
	{
		return (Integer)eGet(SitePackage.Literals.COST_ITEM__FIRST_YEAR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFirstYear(int newFirstYear)
	{
		eSet(SitePackage.Literals.COST_ITEM__FIRST_YEAR, newFirstYear);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInterval()
	{
		return (Quantity)eGet(SitePackage.Literals.COST_ITEM__INTERVAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInterval(Quantity newInterval)
	{
		eSet(SitePackage.Literals.COST_ITEM__INTERVAL, newInterval);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLife()
	{
		return (Quantity)eGet(SitePackage.Literals.COST_ITEM__LIFE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLife(Quantity newLife)
	{
		eSet(SitePackage.Literals.COST_ITEM__LIFE, newLife);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getYearlyChange()
	{
		return (Quantity)eGet(SitePackage.Literals.COST_ITEM__YEARLY_CHANGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setYearlyChange(Quantity newYearlyChange)
	{
		eSet(SitePackage.Literals.COST_ITEM__YEARLY_CHANGE, newYearlyChange);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPerson()
	{
		return (String)eGet(SitePackage.Literals.COST_ITEM__PERSON, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerson(String newPerson)
	{
		eSet(SitePackage.Literals.COST_ITEM__PERSON, newPerson);
	}

} //CostItemImpl

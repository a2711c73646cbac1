/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TopUp;
import org.roofspring.site.TopUpSource;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Top Up</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getTank <em>Tank</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getLoad <em>Load</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getOrderBelow <em>Order Below</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getDelay <em>Delay</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TopUpImpl#getMostPerYear <em>Most Per Year</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TopUpImpl extends ComponentImpl implements TopUp
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TopUpImpl()
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
		return SitePackage.Literals.TOP_UP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TopUpSource getSource()
	{
		return (TopUpSource)eGet(SitePackage.Literals.TOP_UP__SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(TopUpSource newSource)
	{
		eSet(SitePackage.Literals.TOP_UP__SOURCE, newSource);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tank getTank()
	{
		return (Tank)eGet(SitePackage.Literals.TOP_UP__TANK, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTank(Tank newTank)
	{
		eSet(SitePackage.Literals.TOP_UP__TANK, newTank);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLoad()
	{
		return (Quantity)eGet(SitePackage.Literals.TOP_UP__LOAD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLoad(Quantity newLoad)
	{
		eSet(SitePackage.Literals.TOP_UP__LOAD, newLoad);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOrderBelow()
	{
		return (Quantity)eGet(SitePackage.Literals.TOP_UP__ORDER_BELOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrderBelow(Quantity newOrderBelow)
	{
		eSet(SitePackage.Literals.TOP_UP__ORDER_BELOW, newOrderBelow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDelay()
	{
		return (Quantity)eGet(SitePackage.Literals.TOP_UP__DELAY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDelay(Quantity newDelay)
	{
		eSet(SitePackage.Literals.TOP_UP__DELAY, newDelay);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPrice()
	{
		return (Quantity)eGet(SitePackage.Literals.TOP_UP__PRICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrice(Quantity newPrice)
	{
		eSet(SitePackage.Literals.TOP_UP__PRICE, newPrice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getMostPerYear()
	{
		return (Integer)eGet(SitePackage.Literals.TOP_UP__MOST_PER_YEAR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMostPerYear(int newMostPerYear)
	{
		eSet(SitePackage.Literals.TOP_UP__MOST_PER_YEAR, newMostPerYear);
	}

} //TopUpImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.MonthDay;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Holiday;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Holiday</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.HolidayImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.HolidayImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.HolidayImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.HolidayImpl#getFactor <em>Factor</em>}</li>
 * </ul>
 *
 * @generated
 */
public class HolidayImpl extends RowImpl implements Holiday
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected HolidayImpl()
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
		return SitePackage.Literals.HOLIDAY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
		return (String)eGet(SitePackage.Literals.HOLIDAY__NAME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName)
	{
		eSet(SitePackage.Literals.HOLIDAY__NAME, newName);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getFrom()
	{
		return (MonthDay)eGet(SitePackage.Literals.HOLIDAY__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(MonthDay newFrom)
	{
		eSet(SitePackage.Literals.HOLIDAY__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getTo()
	{
		return (MonthDay)eGet(SitePackage.Literals.HOLIDAY__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(MonthDay newTo)
	{
		eSet(SitePackage.Literals.HOLIDAY__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFactor()
	{
		return (Quantity)eGet(SitePackage.Literals.HOLIDAY__FACTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFactor(Quantity newFactor)
	{
		eSet(SitePackage.Literals.HOLIDAY__FACTOR, newFactor);
	}

} //HolidayImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.MonthDay;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.UsePeriod;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Use Period</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeriodImpl#getName <em>Name</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeriodImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeriodImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeriodImpl#getFactor <em>Factor</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UsePeriodImpl extends RowImpl implements UsePeriod
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UsePeriodImpl()
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
		return SitePackage.Literals.USE_PERIOD;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
		return (String)eGet(SitePackage.Literals.USE_PERIOD__NAME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName)
	{
		eSet(SitePackage.Literals.USE_PERIOD__NAME, newName);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getFrom()
	{
		return (MonthDay)eGet(SitePackage.Literals.USE_PERIOD__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(MonthDay newFrom)
	{
		eSet(SitePackage.Literals.USE_PERIOD__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getTo()
	{
		return (MonthDay)eGet(SitePackage.Literals.USE_PERIOD__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(MonthDay newTo)
	{
		eSet(SitePackage.Literals.USE_PERIOD__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFactor()
	{
		return (Quantity)eGet(SitePackage.Literals.USE_PERIOD__FACTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFactor(Quantity newFactor)
	{
		eSet(SitePackage.Literals.USE_PERIOD__FACTOR, newFactor);
	}

} //UsePeriodImpl

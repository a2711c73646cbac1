/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Monthly Normal</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.MonthlyNormalImpl#getMonth <em>Month</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.MonthlyNormalImpl#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.MonthlyNormalImpl#getWetDays <em>Wet Days</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.MonthlyNormalImpl#getEvaporation <em>Evaporation</em>}</li>
 * </ul>
 *
 * @generated
 */
public class MonthlyNormalImpl extends RowImpl implements MonthlyNormal
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected MonthlyNormalImpl()
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
		return SitePackage.Literals.MONTHLY_NORMAL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getMonth()
	{
		return (Integer)eGet(SitePackage.Literals.MONTHLY_NORMAL__MONTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMonth(int newMonth)
	{
		eSet(SitePackage.Literals.MONTHLY_NORMAL__MONTH, newMonth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDepth()
	{
		return (Quantity)eGet(SitePackage.Literals.MONTHLY_NORMAL__DEPTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepth(Quantity newDepth)
	{
		eSet(SitePackage.Literals.MONTHLY_NORMAL__DEPTH, newDepth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWetDays()
	{
		return (Quantity)eGet(SitePackage.Literals.MONTHLY_NORMAL__WET_DAYS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWetDays(Quantity newWetDays)
	{
		eSet(SitePackage.Literals.MONTHLY_NORMAL__WET_DAYS, newWetDays);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEvaporation()
	{
		return (Quantity)eGet(SitePackage.Literals.MONTHLY_NORMAL__EVAPORATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEvaporation(Quantity newEvaporation)
	{
		eSet(SitePackage.Literals.MONTHLY_NORMAL__EVAPORATION, newEvaporation);
	}

} //MonthlyNormalImpl

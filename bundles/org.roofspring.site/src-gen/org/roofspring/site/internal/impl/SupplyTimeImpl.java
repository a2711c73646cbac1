/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalTime;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.SitePackage;
import org.roofspring.site.SupplyTime;
import org.roofspring.site.Weekday;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Supply Time</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.SupplyTimeImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SupplyTimeImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SupplyTimeImpl#getWeekdays <em>Weekdays</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SupplyTimeImpl extends RowImpl implements SupplyTime
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SupplyTimeImpl()
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
		return SitePackage.Literals.SUPPLY_TIME;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getFrom()
	{
		return (LocalTime)eGet(SitePackage.Literals.SUPPLY_TIME__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(LocalTime newFrom)
	{
		eSet(SitePackage.Literals.SUPPLY_TIME__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getTo()
	{
		return (LocalTime)eGet(SitePackage.Literals.SUPPLY_TIME__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(LocalTime newTo)
	{
		eSet(SitePackage.Literals.SUPPLY_TIME__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Weekday> getWeekdays()
	{
		return (EList<Weekday>)eGet(SitePackage.Literals.SUPPLY_TIME__WEEKDAYS, true);
	}

} //SupplyTimeImpl

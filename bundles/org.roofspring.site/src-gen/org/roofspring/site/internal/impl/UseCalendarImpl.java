/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.Holiday;
import org.roofspring.site.SitePackage;
import org.roofspring.site.UseCalendar;
import org.roofspring.site.UsePeriod;
import org.roofspring.site.Weekday;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Use Calendar</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.UseCalendarImpl#getPeriods <em>Periods</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseCalendarImpl#getWeekdays <em>Weekdays</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseCalendarImpl#getHolidays <em>Holidays</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UseCalendarImpl extends NamedElementImpl implements UseCalendar
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UseCalendarImpl()
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
		return SitePackage.Literals.USE_CALENDAR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<UsePeriod> getPeriods()
	{
		return (EList<UsePeriod>)eGet(SitePackage.Literals.USE_CALENDAR__PERIODS, true);
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
		return (EList<Weekday>)eGet(SitePackage.Literals.USE_CALENDAR__WEEKDAYS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Holiday> getHolidays()
	{
		return (EList<Holiday>)eGet(SitePackage.Literals.USE_CALENDAR__HOLIDAYS, true);
	}

} //UseCalendarImpl

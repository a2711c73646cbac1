/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Purpose;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.site.UseCalendar;
import org.roofspring.site.UsePeak;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Use</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getPurpose <em>Purpose</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getConsumers <em>Consumers</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getAmountEach <em>Amount Each</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getPriority <em>Priority</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#isVulnerable <em>Vulnerable</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getCalendar <em>Calendar</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getTaps <em>Taps</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getTank <em>Tank</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getTrain <em>Train</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#getPeaks <em>Peaks</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UseImpl#isContainers <em>Containers</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UseImpl extends ComponentImpl implements Use
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UseImpl()
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
		return SitePackage.Literals.USE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Purpose getPurpose()
	{
		return (Purpose)eGet(SitePackage.Literals.USE__PURPOSE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPurpose(Purpose newPurpose)
	{
		eSet(SitePackage.Literals.USE__PURPOSE, newPurpose);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getConsumers()
	{
		return (String)eGet(SitePackage.Literals.USE__CONSUMERS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConsumers(String newConsumers)
	{
		eSet(SitePackage.Literals.USE__CONSUMERS, newConsumers);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCount()
	{
		return (Quantity)eGet(SitePackage.Literals.USE__COUNT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(Quantity newCount)
	{
		eSet(SitePackage.Literals.USE__COUNT, newCount);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAmountEach()
	{
		return (Quantity)eGet(SitePackage.Literals.USE__AMOUNT_EACH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAmountEach(Quantity newAmountEach)
	{
		eSet(SitePackage.Literals.USE__AMOUNT_EACH, newAmountEach);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getPriority()
	{
		return (Integer)eGet(SitePackage.Literals.USE__PRIORITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPriority(int newPriority)
	{
		eSet(SitePackage.Literals.USE__PRIORITY, newPriority);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isVulnerable()
	{
		return (Boolean)eGet(SitePackage.Literals.USE__VULNERABLE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVulnerable(boolean newVulnerable)
	{
		eSet(SitePackage.Literals.USE__VULNERABLE, newVulnerable);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public UseCalendar getCalendar()
	{
		return (UseCalendar)eGet(SitePackage.Literals.USE__CALENDAR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalendar(UseCalendar newCalendar)
	{
		eSet(SitePackage.Literals.USE__CALENDAR, newCalendar);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Tap> getTaps()
	{
		return (EList<Tap>)eGet(SitePackage.Literals.USE__TAPS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tank getTank()
	{
		return (Tank)eGet(SitePackage.Literals.USE__TANK, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTank(Tank newTank)
	{
		eSet(SitePackage.Literals.USE__TANK, newTank);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TreatmentTrain getTrain()
	{
		return (TreatmentTrain)eGet(SitePackage.Literals.USE__TRAIN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTrain(TreatmentTrain newTrain)
	{
		eSet(SitePackage.Literals.USE__TRAIN, newTrain);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<UsePeak> getPeaks()
	{
		return (EList<UsePeak>)eGet(SitePackage.Literals.USE__PEAKS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isContainers()
	{
		return (Boolean)eGet(SitePackage.Literals.USE__CONTAINERS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContainers(boolean newContainers)
	{
		eSet(SitePackage.Literals.USE__CONTAINERS, newContainers);
	}

} //UseImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;
import java.time.MonthDay;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;
import org.roofspring.site.UpkeepTask;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Upkeep Task</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getElements <em>Elements</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getInterval <em>Interval</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getDueOn <em>Due On</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getAfterVolume <em>After Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#isBeforeFirstRain <em>Before First Rain</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getLastDone <em>Last Done</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getEffort <em>Effort</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getCost <em>Cost</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getWho <em>Who</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getChecklist <em>Checklist</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getSpares <em>Spares</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getSource <em>Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UpkeepTaskImpl#getHazard <em>Hazard</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UpkeepTaskImpl extends NamedElementImpl implements UpkeepTask
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UpkeepTaskImpl()
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
		return SitePackage.Literals.UPKEEP_TASK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<NamedElement> getElements()
	{
		return (EList<NamedElement>)eGet(SitePackage.Literals.UPKEEP_TASK__ELEMENTS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInterval()
	{
		return (Quantity)eGet(SitePackage.Literals.UPKEEP_TASK__INTERVAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInterval(Quantity newInterval)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__INTERVAL, newInterval);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<MonthDay> getDueOn()
	{
		return (EList<MonthDay>)eGet(SitePackage.Literals.UPKEEP_TASK__DUE_ON, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAfterVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.UPKEEP_TASK__AFTER_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAfterVolume(Quantity newAfterVolume)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__AFTER_VOLUME, newAfterVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBeforeFirstRain()
	{
		return (Boolean)eGet(SitePackage.Literals.UPKEEP_TASK__BEFORE_FIRST_RAIN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBeforeFirstRain(boolean newBeforeFirstRain)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__BEFORE_FIRST_RAIN, newBeforeFirstRain);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastDone()
	{
		return (LocalDate)eGet(SitePackage.Literals.UPKEEP_TASK__LAST_DONE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastDone(LocalDate newLastDone)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__LAST_DONE, newLastDone);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEffort()
	{
		return (Quantity)eGet(SitePackage.Literals.UPKEEP_TASK__EFFORT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEffort(Quantity newEffort)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__EFFORT, newEffort);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCost()
	{
		return (Quantity)eGet(SitePackage.Literals.UPKEEP_TASK__COST, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCost(Quantity newCost)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__COST, newCost);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho()
	{
		return (String)eGet(SitePackage.Literals.UPKEEP_TASK__WHO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__WHO, newWho);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getChecklist()
	{
		return (String)eGet(SitePackage.Literals.UPKEEP_TASK__CHECKLIST, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChecklist(String newChecklist)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__CHECKLIST, newChecklist);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSpares()
	{
		return (String)eGet(SitePackage.Literals.UPKEEP_TASK__SPARES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpares(String newSpares)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__SPARES, newSpares);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource()
	{
		return (String)eGet(SitePackage.Literals.UPKEEP_TASK__SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__SOURCE, newSource);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getHazard()
	{
		return (String)eGet(SitePackage.Literals.UPKEEP_TASK__HAZARD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHazard(String newHazard)
	{
		eSet(SitePackage.Literals.UPKEEP_TASK__HAZARD, newHazard);
	}

} //UpkeepTaskImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.Target;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Target</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getTimeReliability <em>Time Reliability</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getVolumetricReliability <em>Volumetric Reliability</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getLongestShortage <em>Longest Shortage</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getReserve <em>Reserve</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getPumpOutage <em>Pump Outage</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getConfidence <em>Confidence</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getBudget <em>Budget</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getInfectionTarget <em>Infection Target</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TargetImpl#getBurdenTarget <em>Burden Target</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TargetImpl extends ElementImpl implements Target
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TargetImpl()
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
		return SitePackage.Literals.TARGET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getTimeReliability()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__TIME_RELIABILITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTimeReliability(Quantity newTimeReliability)
	{
		eSet(SitePackage.Literals.TARGET__TIME_RELIABILITY, newTimeReliability);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getVolumetricReliability()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__VOLUMETRIC_RELIABILITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVolumetricReliability(Quantity newVolumetricReliability)
	{
		eSet(SitePackage.Literals.TARGET__VOLUMETRIC_RELIABILITY, newVolumetricReliability);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLongestShortage()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__LONGEST_SHORTAGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLongestShortage(Quantity newLongestShortage)
	{
		eSet(SitePackage.Literals.TARGET__LONGEST_SHORTAGE, newLongestShortage);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReserve()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__RESERVE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReserve(Quantity newReserve)
	{
		eSet(SitePackage.Literals.TARGET__RESERVE, newReserve);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPumpOutage()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__PUMP_OUTAGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPumpOutage(Quantity newPumpOutage)
	{
		eSet(SitePackage.Literals.TARGET__PUMP_OUTAGE, newPumpOutage);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getConfidence()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__CONFIDENCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setConfidence(Quantity newConfidence)
	{
		eSet(SitePackage.Literals.TARGET__CONFIDENCE, newConfidence);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBudget()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__BUDGET, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBudget(Quantity newBudget)
	{
		eSet(SitePackage.Literals.TARGET__BUDGET, newBudget);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInfectionTarget()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__INFECTION_TARGET, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInfectionTarget(Quantity newInfectionTarget)
	{
		eSet(SitePackage.Literals.TARGET__INFECTION_TARGET, newInfectionTarget);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBurdenTarget()
	{
		return (Quantity)eGet(SitePackage.Literals.TARGET__BURDEN_TARGET, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBurdenTarget(Quantity newBurdenTarget)
	{
		eSet(SitePackage.Literals.TARGET__BURDEN_TARGET, newBurdenTarget);
	}

} //TargetImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.Tap;
import org.roofspring.site.TapKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Tap</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getMinimumHead <em>Minimum Head</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getDesignFlow <em>Design Flow</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getOrifice <em>Orifice</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getLossCoefficient <em>Loss Coefficient</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getOpenTogether <em>Open Together</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TapImpl#getWalkingDistance <em>Walking Distance</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TapImpl extends PipeNodeImpl implements Tap
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TapImpl()
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
		return SitePackage.Literals.TAP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TapKind getKind()
	{
		return (TapKind)eGet(SitePackage.Literals.TAP__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(TapKind newKind)
	{
		eSet(SitePackage.Literals.TAP__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.TAP__LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(Quantity newLevel)
	{
		eSet(SitePackage.Literals.TAP__LEVEL, newLevel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMinimumHead()
	{
		return (Quantity)eGet(SitePackage.Literals.TAP__MINIMUM_HEAD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinimumHead(Quantity newMinimumHead)
	{
		eSet(SitePackage.Literals.TAP__MINIMUM_HEAD, newMinimumHead);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDesignFlow()
	{
		return (Quantity)eGet(SitePackage.Literals.TAP__DESIGN_FLOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignFlow(Quantity newDesignFlow)
	{
		eSet(SitePackage.Literals.TAP__DESIGN_FLOW, newDesignFlow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOrifice()
	{
		return (Quantity)eGet(SitePackage.Literals.TAP__ORIFICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrifice(Quantity newOrifice)
	{
		eSet(SitePackage.Literals.TAP__ORIFICE, newOrifice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLossCoefficient()
	{
		return (Quantity)eGet(SitePackage.Literals.TAP__LOSS_COEFFICIENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLossCoefficient(Quantity newLossCoefficient)
	{
		eSet(SitePackage.Literals.TAP__LOSS_COEFFICIENT, newLossCoefficient);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount()
	{
		return (Integer)eGet(SitePackage.Literals.TAP__COUNT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount)
	{
		eSet(SitePackage.Literals.TAP__COUNT, newCount);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getOpenTogether()
	{
		return (Integer)eGet(SitePackage.Literals.TAP__OPEN_TOGETHER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenTogether(int newOpenTogether)
	{
		eSet(SitePackage.Literals.TAP__OPEN_TOGETHER, newOpenTogether);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWalkingDistance()
	{
		return (Quantity)eGet(SitePackage.Literals.TAP__WALKING_DISTANCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWalkingDistance(Quantity newWalkingDistance)
	{
		eSet(SitePackage.Literals.TAP__WALKING_DISTANCE, newWalkingDistance);
	}

} //TapImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.PumpPoint;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pump Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PumpPointImpl#getFlow <em>Flow</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpPointImpl#getHead <em>Head</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpPointImpl#getEfficiency <em>Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpPointImpl#getNpshRequired <em>Npsh Required</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpPointImpl#getInputPower <em>Input Power</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PumpPointImpl extends RowImpl implements PumpPoint
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PumpPointImpl()
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
		return SitePackage.Literals.PUMP_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFlow()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_POINT__FLOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFlow(Quantity newFlow)
	{
		eSet(SitePackage.Literals.PUMP_POINT__FLOW, newFlow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHead()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_POINT__HEAD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHead(Quantity newHead)
	{
		eSet(SitePackage.Literals.PUMP_POINT__HEAD, newHead);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getEfficiency()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_POINT__EFFICIENCY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEfficiency(Quantity newEfficiency)
	{
		eSet(SitePackage.Literals.PUMP_POINT__EFFICIENCY, newEfficiency);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getNpshRequired()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_POINT__NPSH_REQUIRED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setNpshRequired(Quantity newNpshRequired)
	{
		eSet(SitePackage.Literals.PUMP_POINT__NPSH_REQUIRED, newNpshRequired);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getInputPower()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_POINT__INPUT_POWER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInputPower(Quantity newInputPower)
	{
		eSet(SitePackage.Literals.PUMP_POINT__INPUT_POWER, newInputPower);
	}

} //PumpPointImpl

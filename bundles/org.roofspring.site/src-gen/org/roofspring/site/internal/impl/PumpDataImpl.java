/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.PumpData;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.SitePackage;

import org.roofspring.site.internal.FreezableObject;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pump Data</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getPoints <em>Points</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getMotorEfficiency <em>Motor Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getRatedSpeed <em>Rated Speed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getRatedPower <em>Rated Power</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getDischargeBore <em>Discharge Bore</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getMinSubmergence <em>Min Submergence</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getMaxStarts <em>Max Starts</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpDataImpl#getDataSource <em>Data Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class PumpDataImpl extends FreezableObject implements PumpData
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PumpDataImpl()
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
		return SitePackage.Literals.PUMP_DATA;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected int eStaticFeatureCount()
	{
		return 0;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<PumpPoint> getPoints()
	{
		return (EList<PumpPoint>)eGet(SitePackage.Literals.PUMP_DATA__POINTS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMotorEfficiency()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__MOTOR_EFFICIENCY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMotorEfficiency(Quantity newMotorEfficiency)
	{
		eSet(SitePackage.Literals.PUMP_DATA__MOTOR_EFFICIENCY, newMotorEfficiency);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRatedSpeed()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__RATED_SPEED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedSpeed(Quantity newRatedSpeed)
	{
		eSet(SitePackage.Literals.PUMP_DATA__RATED_SPEED, newRatedSpeed);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRatedPower()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__RATED_POWER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatedPower(Quantity newRatedPower)
	{
		eSet(SitePackage.Literals.PUMP_DATA__RATED_POWER, newRatedPower);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDischargeBore()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__DISCHARGE_BORE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDischargeBore(Quantity newDischargeBore)
	{
		eSet(SitePackage.Literals.PUMP_DATA__DISCHARGE_BORE, newDischargeBore);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMinSubmergence()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__MIN_SUBMERGENCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMinSubmergence(Quantity newMinSubmergence)
	{
		eSet(SitePackage.Literals.PUMP_DATA__MIN_SUBMERGENCE, newMinSubmergence);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMaxStarts()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__MAX_STARTS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxStarts(Quantity newMaxStarts)
	{
		eSet(SitePackage.Literals.PUMP_DATA__MAX_STARTS, newMaxStarts);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPrice()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP_DATA__PRICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrice(Quantity newPrice)
	{
		eSet(SitePackage.Literals.PUMP_DATA__PRICE, newPrice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDataSource()
	{
		return (String)eGet(SitePackage.Literals.PUMP_DATA__DATA_SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDataSource(String newDataSource)
	{
		eSet(SitePackage.Literals.PUMP_DATA__DATA_SOURCE, newDataSource);
	}

} //PumpDataImpl

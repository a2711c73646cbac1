/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.EnergySource;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpArrangement;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpKind;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.SitePackage;
import org.roofspring.site.SupplyTime;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pump</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getPoints <em>Points</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getMotorEfficiency <em>Motor Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getRatedSpeed <em>Rated Speed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getRatedPower <em>Rated Power</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getDischargeBore <em>Discharge Bore</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getMinSubmergence <em>Min Submergence</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getMaxStarts <em>Max Starts</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getDataSource <em>Data Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getArrangement <em>Arrangement</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getSpeedRatio <em>Speed Ratio</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getCutOutHeight <em>Cut Out Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#isFootValve <em>Foot Valve</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getEnergySource <em>Energy Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getSupplyTimes <em>Supply Times</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getOutageShare <em>Outage Share</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getStrokeVolume <em>Stroke Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getStrokesPerMinute <em>Strokes Per Minute</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpImpl#getCandidates <em>Candidates</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PumpImpl extends PipeNodeImpl implements Pump
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PumpImpl()
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
		return SitePackage.Literals.PUMP;
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

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PumpKind getKind()
	{
		return (PumpKind)eGet(SitePackage.Literals.PUMP__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(PumpKind newKind)
	{
		eSet(SitePackage.Literals.PUMP__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount()
	{
		return (Integer)eGet(SitePackage.Literals.PUMP__COUNT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount)
	{
		eSet(SitePackage.Literals.PUMP__COUNT, newCount);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PumpArrangement getArrangement()
	{
		return (PumpArrangement)eGet(SitePackage.Literals.PUMP__ARRANGEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArrangement(PumpArrangement newArrangement)
	{
		eSet(SitePackage.Literals.PUMP__ARRANGEMENT, newArrangement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP__LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(Quantity newLevel)
	{
		eSet(SitePackage.Literals.PUMP__LEVEL, newLevel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSpeedRatio()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP__SPEED_RATIO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSpeedRatio(Quantity newSpeedRatio)
	{
		eSet(SitePackage.Literals.PUMP__SPEED_RATIO, newSpeedRatio);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCutOutHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP__CUT_OUT_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCutOutHeight(Quantity newCutOutHeight)
	{
		eSet(SitePackage.Literals.PUMP__CUT_OUT_HEIGHT, newCutOutHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isFootValve()
	{
		return (Boolean)eGet(SitePackage.Literals.PUMP__FOOT_VALVE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFootValve(boolean newFootValve)
	{
		eSet(SitePackage.Literals.PUMP__FOOT_VALVE, newFootValve);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EnergySource getEnergySource()
	{
		return (EnergySource)eGet(SitePackage.Literals.PUMP__ENERGY_SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnergySource(EnergySource newEnergySource)
	{
		eSet(SitePackage.Literals.PUMP__ENERGY_SOURCE, newEnergySource);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<SupplyTime> getSupplyTimes()
	{
		return (EList<SupplyTime>)eGet(SitePackage.Literals.PUMP__SUPPLY_TIMES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOutageShare()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP__OUTAGE_SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOutageShare(Quantity newOutageShare)
	{
		eSet(SitePackage.Literals.PUMP__OUTAGE_SHARE, newOutageShare);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStrokeVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP__STROKE_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrokeVolume(Quantity newStrokeVolume)
	{
		eSet(SitePackage.Literals.PUMP__STROKE_VOLUME, newStrokeVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStrokesPerMinute()
	{
		return (Quantity)eGet(SitePackage.Literals.PUMP__STROKES_PER_MINUTE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrokesPerMinute(Quantity newStrokesPerMinute)
	{
		eSet(SitePackage.Literals.PUMP__STROKES_PER_MINUTE, newStrokesPerMinute);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<PumpCandidate> getCandidates()
	{
		return (EList<PumpCandidate>)eGet(SitePackage.Literals.PUMP__CANDIDATES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eBaseStructuralFeatureID(int derivedFeatureID, Class<?> baseClass)
	{
		if (baseClass == PumpData.class)
		{
			switch (derivedFeatureID)
			{
				case SitePackage.PUMP__POINTS: return SitePackage.PUMP_DATA__POINTS;
				case SitePackage.PUMP__MOTOR_EFFICIENCY: return SitePackage.PUMP_DATA__MOTOR_EFFICIENCY;
				case SitePackage.PUMP__RATED_SPEED: return SitePackage.PUMP_DATA__RATED_SPEED;
				case SitePackage.PUMP__RATED_POWER: return SitePackage.PUMP_DATA__RATED_POWER;
				case SitePackage.PUMP__DISCHARGE_BORE: return SitePackage.PUMP_DATA__DISCHARGE_BORE;
				case SitePackage.PUMP__MIN_SUBMERGENCE: return SitePackage.PUMP_DATA__MIN_SUBMERGENCE;
				case SitePackage.PUMP__MAX_STARTS: return SitePackage.PUMP_DATA__MAX_STARTS;
				case SitePackage.PUMP__PRICE: return SitePackage.PUMP_DATA__PRICE;
				case SitePackage.PUMP__DATA_SOURCE: return SitePackage.PUMP_DATA__DATA_SOURCE;
				default: return -1;
			}
		}
		return super.eBaseStructuralFeatureID(derivedFeatureID, baseClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int eDerivedStructuralFeatureID(int baseFeatureID, Class<?> baseClass)
	{
		if (baseClass == PumpData.class)
		{
			switch (baseFeatureID)
			{
				case SitePackage.PUMP_DATA__POINTS: return SitePackage.PUMP__POINTS;
				case SitePackage.PUMP_DATA__MOTOR_EFFICIENCY: return SitePackage.PUMP__MOTOR_EFFICIENCY;
				case SitePackage.PUMP_DATA__RATED_SPEED: return SitePackage.PUMP__RATED_SPEED;
				case SitePackage.PUMP_DATA__RATED_POWER: return SitePackage.PUMP__RATED_POWER;
				case SitePackage.PUMP_DATA__DISCHARGE_BORE: return SitePackage.PUMP__DISCHARGE_BORE;
				case SitePackage.PUMP_DATA__MIN_SUBMERGENCE: return SitePackage.PUMP__MIN_SUBMERGENCE;
				case SitePackage.PUMP_DATA__MAX_STARTS: return SitePackage.PUMP__MAX_STARTS;
				case SitePackage.PUMP_DATA__PRICE: return SitePackage.PUMP__PRICE;
				case SitePackage.PUMP_DATA__DATA_SOURCE: return SitePackage.PUMP__DATA_SOURCE;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
	}

} //PumpImpl

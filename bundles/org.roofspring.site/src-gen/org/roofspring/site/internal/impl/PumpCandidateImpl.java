/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.PumpCandidate;
import org.roofspring.site.PumpData;
import org.roofspring.site.PumpPoint;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pump Candidate</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getPoints <em>Points</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getMotorEfficiency <em>Motor Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getRatedSpeed <em>Rated Speed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getRatedPower <em>Rated Power</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getDischargeBore <em>Discharge Bore</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getMinSubmergence <em>Min Submergence</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getMaxStarts <em>Max Starts</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getPrice <em>Price</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getDataSource <em>Data Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#getModel <em>Model</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PumpCandidateImpl#isChosen <em>Chosen</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PumpCandidateImpl extends NamedElementImpl implements PumpCandidate
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PumpCandidateImpl()
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
		return SitePackage.Literals.PUMP_CANDIDATE;
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
	public String getModel()
	{
		return (String)eGet(SitePackage.Literals.PUMP_CANDIDATE__MODEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setModel(String newModel)
	{
		eSet(SitePackage.Literals.PUMP_CANDIDATE__MODEL, newModel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isChosen()
	{
		return (Boolean)eGet(SitePackage.Literals.PUMP_CANDIDATE__CHOSEN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChosen(boolean newChosen)
	{
		eSet(SitePackage.Literals.PUMP_CANDIDATE__CHOSEN, newChosen);
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
				case SitePackage.PUMP_CANDIDATE__POINTS: return SitePackage.PUMP_DATA__POINTS;
				case SitePackage.PUMP_CANDIDATE__MOTOR_EFFICIENCY: return SitePackage.PUMP_DATA__MOTOR_EFFICIENCY;
				case SitePackage.PUMP_CANDIDATE__RATED_SPEED: return SitePackage.PUMP_DATA__RATED_SPEED;
				case SitePackage.PUMP_CANDIDATE__RATED_POWER: return SitePackage.PUMP_DATA__RATED_POWER;
				case SitePackage.PUMP_CANDIDATE__DISCHARGE_BORE: return SitePackage.PUMP_DATA__DISCHARGE_BORE;
				case SitePackage.PUMP_CANDIDATE__MIN_SUBMERGENCE: return SitePackage.PUMP_DATA__MIN_SUBMERGENCE;
				case SitePackage.PUMP_CANDIDATE__MAX_STARTS: return SitePackage.PUMP_DATA__MAX_STARTS;
				case SitePackage.PUMP_CANDIDATE__PRICE: return SitePackage.PUMP_DATA__PRICE;
				case SitePackage.PUMP_CANDIDATE__DATA_SOURCE: return SitePackage.PUMP_DATA__DATA_SOURCE;
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
				case SitePackage.PUMP_DATA__POINTS: return SitePackage.PUMP_CANDIDATE__POINTS;
				case SitePackage.PUMP_DATA__MOTOR_EFFICIENCY: return SitePackage.PUMP_CANDIDATE__MOTOR_EFFICIENCY;
				case SitePackage.PUMP_DATA__RATED_SPEED: return SitePackage.PUMP_CANDIDATE__RATED_SPEED;
				case SitePackage.PUMP_DATA__RATED_POWER: return SitePackage.PUMP_CANDIDATE__RATED_POWER;
				case SitePackage.PUMP_DATA__DISCHARGE_BORE: return SitePackage.PUMP_CANDIDATE__DISCHARGE_BORE;
				case SitePackage.PUMP_DATA__MIN_SUBMERGENCE: return SitePackage.PUMP_CANDIDATE__MIN_SUBMERGENCE;
				case SitePackage.PUMP_DATA__MAX_STARTS: return SitePackage.PUMP_CANDIDATE__MAX_STARTS;
				case SitePackage.PUMP_DATA__PRICE: return SitePackage.PUMP_CANDIDATE__PRICE;
				case SitePackage.PUMP_DATA__DATA_SOURCE: return SitePackage.PUMP_CANDIDATE__DATA_SOURCE;
				default: return -1;
			}
		}
		return super.eDerivedStructuralFeatureID(baseFeatureID, baseClass);
	}

} //PumpCandidateImpl

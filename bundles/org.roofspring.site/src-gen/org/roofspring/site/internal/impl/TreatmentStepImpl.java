/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.DisinfectantProduct;
import org.roofspring.site.EnergySource;
import org.roofspring.site.LogReduction;
import org.roofspring.site.RatingBasis;
import org.roofspring.site.SitePackage;
import org.roofspring.site.StepKind;
import org.roofspring.site.StrengthBasis;
import org.roofspring.site.TreatmentStep;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Treatment Step</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#isActive <em>Active</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getRating <em>Rating</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getRatingBasis <em>Rating Basis</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getReductions <em>Reductions</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getAvailability <em>Availability</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getMaxFlow <em>Max Flow</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getHeadLossClean <em>Head Loss Clean</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getHeadLossFouled <em>Head Loss Fouled</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getReferenceFlow <em>Reference Flow</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getChangeInterval <em>Change Interval</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getChangeVolume <em>Change Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getChangeCost <em>Change Cost</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getLastChanged <em>Last Changed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getMaxTurbidity <em>Max Turbidity</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getEnergySource <em>Energy Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getPower <em>Power</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getUvDose <em>Uv Dose</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#isValidated <em>Validated</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getProduct <em>Product</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getStrength <em>Strength</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getStrengthBasis <em>Strength Basis</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getProductDensity <em>Product Density</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getProductAge <em>Product Age</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getDose <em>Dose</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getResidual <em>Residual</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getResidualDate <em>Residual Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getContactVolume <em>Contact Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getContactTime <em>Contact Time</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getBaffling <em>Baffling</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentStepImpl#getBatchVolume <em>Batch Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TreatmentStepImpl extends NamedElementImpl implements TreatmentStep
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TreatmentStepImpl()
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
		return SitePackage.Literals.TREATMENT_STEP;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StepKind getKind()
	{
		return (StepKind)eGet(SitePackage.Literals.TREATMENT_STEP__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(StepKind newKind)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isActive()
	{
		return (Boolean)eGet(SitePackage.Literals.TREATMENT_STEP__ACTIVE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActive(boolean newActive)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__ACTIVE, newActive);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRating()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__RATING, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRating(Quantity newRating)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__RATING, newRating);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RatingBasis getRatingBasis()
	{
		return (RatingBasis)eGet(SitePackage.Literals.TREATMENT_STEP__RATING_BASIS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRatingBasis(RatingBasis newRatingBasis)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__RATING_BASIS, newRatingBasis);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<LogReduction> getReductions()
	{
		return (EList<LogReduction>)eGet(SitePackage.Literals.TREATMENT_STEP__REDUCTIONS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAvailability()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__AVAILABILITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAvailability(Quantity newAvailability)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__AVAILABILITY, newAvailability);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMaxFlow()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__MAX_FLOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxFlow(Quantity newMaxFlow)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__MAX_FLOW, newMaxFlow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHeadLossClean()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__HEAD_LOSS_CLEAN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadLossClean(Quantity newHeadLossClean)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__HEAD_LOSS_CLEAN, newHeadLossClean);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHeadLossFouled()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__HEAD_LOSS_FOULED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeadLossFouled(Quantity newHeadLossFouled)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__HEAD_LOSS_FOULED, newHeadLossFouled);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReferenceFlow()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__REFERENCE_FLOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReferenceFlow(Quantity newReferenceFlow)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__REFERENCE_FLOW, newReferenceFlow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getChangeInterval()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__CHANGE_INTERVAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChangeInterval(Quantity newChangeInterval)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__CHANGE_INTERVAL, newChangeInterval);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getChangeVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__CHANGE_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChangeVolume(Quantity newChangeVolume)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__CHANGE_VOLUME, newChangeVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getChangeCost()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__CHANGE_COST, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setChangeCost(Quantity newChangeCost)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__CHANGE_COST, newChangeCost);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastChanged()
	{
		return (LocalDate)eGet(SitePackage.Literals.TREATMENT_STEP__LAST_CHANGED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastChanged(LocalDate newLastChanged)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__LAST_CHANGED, newLastChanged);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMaxTurbidity()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__MAX_TURBIDITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxTurbidity(Quantity newMaxTurbidity)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__MAX_TURBIDITY, newMaxTurbidity);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EnergySource getEnergySource()
	{
		return (EnergySource)eGet(SitePackage.Literals.TREATMENT_STEP__ENERGY_SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setEnergySource(EnergySource newEnergySource)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__ENERGY_SOURCE, newEnergySource);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPower()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__POWER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPower(Quantity newPower)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__POWER, newPower);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getUvDose()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__UV_DOSE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUvDose(Quantity newUvDose)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__UV_DOSE, newUvDose);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isValidated()
	{
		return (Boolean)eGet(SitePackage.Literals.TREATMENT_STEP__VALIDATED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValidated(boolean newValidated)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__VALIDATED, newValidated);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public DisinfectantProduct getProduct()
	{
		return (DisinfectantProduct)eGet(SitePackage.Literals.TREATMENT_STEP__PRODUCT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProduct(DisinfectantProduct newProduct)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__PRODUCT, newProduct);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getStrength()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__STRENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrength(Quantity newStrength)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__STRENGTH, newStrength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public StrengthBasis getStrengthBasis()
	{
		return (StrengthBasis)eGet(SitePackage.Literals.TREATMENT_STEP__STRENGTH_BASIS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrengthBasis(StrengthBasis newStrengthBasis)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__STRENGTH_BASIS, newStrengthBasis);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getProductDensity()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__PRODUCT_DENSITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProductDensity(Quantity newProductDensity)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__PRODUCT_DENSITY, newProductDensity);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getProductAge()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__PRODUCT_AGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProductAge(Quantity newProductAge)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__PRODUCT_AGE, newProductAge);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDose()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__DOSE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDose(Quantity newDose)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__DOSE, newDose);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getResidual()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__RESIDUAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidual(Quantity newResidual)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__RESIDUAL, newResidual);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getResidualDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.TREATMENT_STEP__RESIDUAL_DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResidualDate(LocalDate newResidualDate)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__RESIDUAL_DATE, newResidualDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getContactVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__CONTACT_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContactVolume(Quantity newContactVolume)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__CONTACT_VOLUME, newContactVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getContactTime()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__CONTACT_TIME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setContactTime(Quantity newContactTime)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__CONTACT_TIME, newContactTime);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBaffling()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__BAFFLING, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaffling(Quantity newBaffling)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__BAFFLING, newBaffling);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBatchVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_STEP__BATCH_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatchVolume(Quantity newBatchVolume)
	{
		eSet(SitePackage.Literals.TREATMENT_STEP__BATCH_VOLUME, newBatchVolume);
	}

} //TreatmentStepImpl

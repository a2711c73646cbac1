/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Treatment Step</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A step of a treatment train.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.TreatmentStep#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#isActive <em>Active</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getRating <em>Rating</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getRatingBasis <em>Rating Basis</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getReductions <em>Reductions</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getAvailability <em>Availability</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getMaxFlow <em>Max Flow</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getHeadLossClean <em>Head Loss Clean</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getHeadLossFouled <em>Head Loss Fouled</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getReferenceFlow <em>Reference Flow</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getChangeInterval <em>Change Interval</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getChangeVolume <em>Change Volume</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getChangeCost <em>Change Cost</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getLastChanged <em>Last Changed</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getMaxTurbidity <em>Max Turbidity</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getEnergySource <em>Energy Source</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getPower <em>Power</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getUvDose <em>Uv Dose</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#isValidated <em>Validated</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getProduct <em>Product</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getStrength <em>Strength</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getStrengthBasis <em>Strength Basis</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getProductDensity <em>Product Density</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getProductAge <em>Product Age</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getDose <em>Dose</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getResidual <em>Residual</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getResidualDate <em>Residual Date</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getContactVolume <em>Contact Volume</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getContactTime <em>Contact Time</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getBaffling <em>Baffling</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentStep#getBatchVolume <em>Batch Volume</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTreatmentStep()
 * @model
 * @generated
 */
public interface TreatmentStep extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.StepKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it does.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.StepKind
	 * @see #setKind(StepKind)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Kind()
	 * @model
	 * @generated
	 */
	StepKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.StepKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(StepKind value);

	/**
	 * Returns the value of the '<em><b>Active</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is in place. Default true.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Active</em>' attribute.
	 * @see #setActive(boolean)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Active()
	 * @model default="true"
	 * @generated
	 */
	boolean isActive();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#isActive <em>Active</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Active</em>' attribute.
	 * @see #isActive()
	 * @generated
	 */
	void setActive(boolean value);

	/**
	 * Returns the value of the '<em><b>Rating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Particle size it holds back. Usual unit um. Range above 0 um to 10 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rating</em>' attribute.
	 * @see #setRating(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Rating()
	 * @model dataType="org.roofspring.site.ParticleSize"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.01'"
	 * @generated
	 */
	Quantity getRating();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getRating <em>Rating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rating</em>' attribute.
	 * @see #getRating()
	 * @generated
	 */
	void setRating(Quantity value);

	/**
	 * Returns the value of the '<em><b>Rating Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.RatingBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the rating means.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rating Basis</em>' attribute.
	 * @see org.roofspring.site.RatingBasis
	 * @see #setRatingBasis(RatingBasis)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_RatingBasis()
	 * @model
	 * @generated
	 */
	RatingBasis getRatingBasis();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getRatingBasis <em>Rating Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rating Basis</em>' attribute.
	 * @see org.roofspring.site.RatingBasis
	 * @see #getRatingBasis()
	 * @generated
	 */
	void setRatingBasis(RatingBasis value);

	/**
	 * Returns the value of the '<em><b>Reductions</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.LogReduction}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it removes; without them the defaults of the kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reductions</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Reductions()
	 * @model containment="true"
	 * @generated
	 */
	EList<LogReduction> getReductions();

	/**
	 * Returns the value of the '<em><b>Availability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the time it works. Usual unit %. Range from 0 to 1. Default 100 % (taken as always working unless given).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Availability</em>' attribute.
	 * @see #setAvailability(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Availability()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='100 %' defaultSource='taken as always working unless given'"
	 * @generated
	 */
	Quantity getAvailability();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getAvailability <em>Availability</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Availability</em>' attribute.
	 * @see #getAvailability()
	 * @generated
	 */
	void setAvailability(Quantity value);

	/**
	 * Returns the value of the '<em><b>Max Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Highest flow at which it works. Usual unit L/min. Range above 0 L/min to 10000 L/min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Max Flow</em>' attribute.
	 * @see #setMaxFlow(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_MaxFlow()
	 * @model dataType="org.roofspring.site.TapFlow"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.166666666667'"
	 * @generated
	 */
	Quantity getMaxFlow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getMaxFlow <em>Max Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Flow</em>' attribute.
	 * @see #getMaxFlow()
	 * @generated
	 */
	void setMaxFlow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Head Loss Clean</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Loss of head when clean, at the reference flow. Usual unit m(head). Range from 0 m to 100 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head Loss Clean</em>' attribute.
	 * @see #setHeadLossClean(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_HeadLossClean()
	 * @model dataType="org.roofspring.site.PressureHead"
	 *        annotation="http://www.roofspring.org/value min='0' max='980665'"
	 * @generated
	 */
	Quantity getHeadLossClean();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getHeadLossClean <em>Head Loss Clean</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Loss Clean</em>' attribute.
	 * @see #getHeadLossClean()
	 * @generated
	 */
	void setHeadLossClean(Quantity value);

	/**
	 * Returns the value of the '<em><b>Head Loss Fouled</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Loss of head when due for a change, at the reference flow. Usual unit m(head). Range from 0 m to 100 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Head Loss Fouled</em>' attribute.
	 * @see #setHeadLossFouled(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_HeadLossFouled()
	 * @model dataType="org.roofspring.site.PressureHead"
	 *        annotation="http://www.roofspring.org/value min='0' max='980665'"
	 * @generated
	 */
	Quantity getHeadLossFouled();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getHeadLossFouled <em>Head Loss Fouled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Head Loss Fouled</em>' attribute.
	 * @see #getHeadLossFouled()
	 * @generated
	 */
	void setHeadLossFouled(Quantity value);

	/**
	 * Returns the value of the '<em><b>Reference Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flow at which the losses hold. Usual unit L/min. Range above 0 L/min to 10000 L/min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reference Flow</em>' attribute.
	 * @see #setReferenceFlow(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ReferenceFlow()
	 * @model dataType="org.roofspring.site.TapFlow"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.166666666667'"
	 * @generated
	 */
	Quantity getReferenceFlow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getReferenceFlow <em>Reference Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reference Flow</em>' attribute.
	 * @see #getReferenceFlow()
	 * @generated
	 */
	void setReferenceFlow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Change Interval</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time after which it is changed or cleaned. Usual unit d. Range above 0 d to 3660 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Change Interval</em>' attribute.
	 * @see #setChangeInterval(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ChangeInterval()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value above='0' max='316224000'"
	 * @generated
	 */
	Quantity getChangeInterval();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getChangeInterval <em>Change Interval</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Change Interval</em>' attribute.
	 * @see #getChangeInterval()
	 * @generated
	 */
	void setChangeInterval(Quantity value);

	/**
	 * Returns the value of the '<em><b>Change Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume after which it is changed or cleaned. Usual unit m3. Range above 0 m3 to 1000000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Change Volume</em>' attribute.
	 * @see #setChangeVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ChangeVolume()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value above='0' max='1000000'"
	 * @generated
	 */
	Quantity getChangeVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getChangeVolume <em>Change Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Change Volume</em>' attribute.
	 * @see #getChangeVolume()
	 * @generated
	 */
	void setChangeVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Change Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cost of one change. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Change Cost</em>' attribute.
	 * @see #setChangeCost(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ChangeCost()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getChangeCost();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getChangeCost <em>Change Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Change Cost</em>' attribute.
	 * @see #getChangeCost()
	 * @generated
	 */
	void setChangeCost(Quantity value);

	/**
	 * Returns the value of the '<em><b>Last Changed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it was last changed or cleaned.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Last Changed</em>' attribute.
	 * @see #setLastChanged(LocalDate)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_LastChanged()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getLastChanged();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getLastChanged <em>Last Changed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Changed</em>' attribute.
	 * @see #getLastChanged()
	 * @generated
	 */
	void setLastChanged(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Max Turbidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Highest turbidity at which it works; not given means that of the kind. Usual unit NTU. Range from 0 NTU to 1000 NTU.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Max Turbidity</em>' attribute.
	 * @see #setMaxTurbidity(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_MaxTurbidity()
	 * @model dataType="org.roofspring.site.Turbidity"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000'"
	 * @generated
	 */
	Quantity getMaxTurbidity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getMaxTurbidity <em>Max Turbidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Turbidity</em>' attribute.
	 * @see #getMaxTurbidity()
	 * @generated
	 */
	void setMaxTurbidity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Energy Source</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.EnergySource}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What drives it, if it needs power.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Energy Source</em>' attribute.
	 * @see org.roofspring.site.EnergySource
	 * @see #setEnergySource(EnergySource)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_EnergySource()
	 * @model
	 * @generated
	 */
	EnergySource getEnergySource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getEnergySource <em>Energy Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Energy Source</em>' attribute.
	 * @see org.roofspring.site.EnergySource
	 * @see #getEnergySource()
	 * @generated
	 */
	void setEnergySource(EnergySource value);

	/**
	 * Returns the value of the '<em><b>Power</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Power it takes. Usual unit W. Range from 0 W to 10 kW.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Power</em>' attribute.
	 * @see #setPower(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Power()
	 * @model dataType="org.roofspring.site.Power"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getPower();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getPower <em>Power</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Power</em>' attribute.
	 * @see #getPower()
	 * @generated
	 */
	void setPower(Quantity value);

	/**
	 * Returns the value of the '<em><b>Uv Dose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Dose of a UV lamp at its highest flow. Usual unit mJ/cm2. Range from 0 mJ/cm2 to 1000 mJ/cm2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Uv Dose</em>' attribute.
	 * @see #setUvDose(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_UvDose()
	 * @model dataType="org.roofspring.site.UvDose"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000'"
	 * @generated
	 */
	Quantity getUvDose();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getUvDose <em>Uv Dose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Uv Dose</em>' attribute.
	 * @see #getUvDose()
	 * @generated
	 */
	void setUvDose(Quantity value);

	/**
	 * Returns the value of the '<em><b>Validated</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the dose of the UV lamp or the claim of the filter is certified for this very model.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Validated</em>' attribute.
	 * @see #setValidated(boolean)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Validated()
	 * @model
	 * @generated
	 */
	boolean isValidated();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#isValidated <em>Validated</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Validated</em>' attribute.
	 * @see #isValidated()
	 * @generated
	 */
	void setValidated(boolean value);

	/**
	 * Returns the value of the '<em><b>Product</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.DisinfectantProduct}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * In which form chlorine is bought.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Product</em>' attribute.
	 * @see org.roofspring.site.DisinfectantProduct
	 * @see #setProduct(DisinfectantProduct)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Product()
	 * @model
	 * @generated
	 */
	DisinfectantProduct getProduct();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getProduct <em>Product</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Product</em>' attribute.
	 * @see org.roofspring.site.DisinfectantProduct
	 * @see #getProduct()
	 * @generated
	 */
	void setProduct(DisinfectantProduct value);

	/**
	 * Returns the value of the '<em><b>Strength</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Available chlorine in the product. Usual unit %. Range above 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Strength</em>' attribute.
	 * @see #setStrength(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Strength()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getStrength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getStrength <em>Strength</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strength</em>' attribute.
	 * @see #getStrength()
	 * @generated
	 */
	void setStrength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Strength Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.StrengthBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the strength refers to.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Strength Basis</em>' attribute.
	 * @see org.roofspring.site.StrengthBasis
	 * @see #setStrengthBasis(StrengthBasis)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_StrengthBasis()
	 * @model
	 * @generated
	 */
	StrengthBasis getStrengthBasis();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getStrengthBasis <em>Strength Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strength Basis</em>' attribute.
	 * @see org.roofspring.site.StrengthBasis
	 * @see #getStrengthBasis()
	 * @generated
	 */
	void setStrengthBasis(StrengthBasis value);

	/**
	 * Returns the value of the '<em><b>Product Density</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Density of a liquid product. Usual unit kg/L. Range above 0 kg/L to 5 kg/L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Product Density</em>' attribute.
	 * @see #setProductDensity(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ProductDensity()
	 * @model dataType="org.roofspring.site.Density"
	 *        annotation="http://www.roofspring.org/value above='0' max='5000'"
	 * @generated
	 */
	Quantity getProductDensity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getProductDensity <em>Product Density</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Product Density</em>' attribute.
	 * @see #getProductDensity()
	 * @generated
	 */
	void setProductDensity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Product Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Age of the product when used; bleach weakens. Usual unit d. Range from 0 d to 3660 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Product Age</em>' attribute.
	 * @see #setProductAge(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ProductAge()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='316224000'"
	 * @generated
	 */
	Quantity getProductAge();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getProductAge <em>Product Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Product Age</em>' attribute.
	 * @see #getProductAge()
	 * @generated
	 */
	void setProductAge(Quantity value);

	/**
	 * Returns the value of the '<em><b>Dose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Chlorine added to the water. Usual unit mg/L. Range from 0 mg/L to 200 mg/L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dose</em>' attribute.
	 * @see #setDose(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Dose()
	 * @model dataType="org.roofspring.site.Concentration"
	 *        annotation="http://www.roofspring.org/value min='0' max='200'"
	 * @generated
	 */
	Quantity getDose();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getDose <em>Dose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dose</em>' attribute.
	 * @see #getDose()
	 * @generated
	 */
	void setDose(Quantity value);

	/**
	 * Returns the value of the '<em><b>Residual</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Free chlorine measured after the contact time; without it no credit is given. Usual unit mg/L. Range from 0 mg/L to 50 mg/L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Residual</em>' attribute.
	 * @see #setResidual(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Residual()
	 * @model dataType="org.roofspring.site.Concentration"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getResidual();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getResidual <em>Residual</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residual</em>' attribute.
	 * @see #getResidual()
	 * @generated
	 */
	void setResidual(Quantity value);

	/**
	 * Returns the value of the '<em><b>Residual Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day the residual was measured.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Residual Date</em>' attribute.
	 * @see #setResidualDate(LocalDate)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ResidualDate()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getResidualDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getResidualDate <em>Residual Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Residual Date</em>' attribute.
	 * @see #getResidualDate()
	 * @generated
	 */
	void setResidualDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Contact Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume in which chlorine acts before the first tap. Usual unit m3. Range from 0 m3 to 10000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Contact Volume</em>' attribute.
	 * @see #setContactVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ContactVolume()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getContactVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getContactVolume <em>Contact Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact Volume</em>' attribute.
	 * @see #getContactVolume()
	 * @generated
	 */
	void setContactVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Contact Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time that chlorine, sun or heat acts on a batch. Usual unit min. Range from 0 min to 10080 min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Contact Time</em>' attribute.
	 * @see #setContactTime(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_ContactTime()
	 * @model dataType="org.roofspring.site.Minutes"
	 *        annotation="http://www.roofspring.org/value min='0' max='604800'"
	 * @generated
	 */
	Quantity getContactTime();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getContactTime <em>Contact Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Contact Time</em>' attribute.
	 * @see #getContactTime()
	 * @generated
	 */
	void setContactTime(Quantity value);

	/**
	 * Returns the value of the '<em><b>Baffling</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the mean residence time that the quickest water stays. Range above 0 to 1. Default 0.1 (from memory, verify against US EPA Surface Water Treatment Rule guidance manual 1991, unbaffled tank).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Baffling</em>' attribute.
	 * @see #setBaffling(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_Baffling()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value above='0' max='1' default='0.1' defaultSource='from memory, verify against US EPA Surface Water Treatment Rule guidance manual 1991, unbaffled tank'"
	 * @generated
	 */
	Quantity getBaffling();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getBaffling <em>Baffling</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Baffling</em>' attribute.
	 * @see #getBaffling()
	 * @generated
	 */
	void setBaffling(Quantity value);

	/**
	 * Returns the value of the '<em><b>Batch Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of a batch or bottle. Usual unit L. Range above 0 L to 10 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Batch Volume</em>' attribute.
	 * @see #setBatchVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentStep_BatchVolume()
	 * @model dataType="org.roofspring.site.SmallVolume"
	 *        annotation="http://www.roofspring.org/value above='0' max='10'"
	 * @generated
	 */
	Quantity getBatchVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentStep#getBatchVolume <em>Batch Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Batch Volume</em>' attribute.
	 * @see #getBatchVolume()
	 * @generated
	 */
	void setBatchVolume(Quantity value);

} // TreatmentStep

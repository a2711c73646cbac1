/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Target</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the system must achieve.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Target#getTimeReliability <em>Time Reliability</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getVolumetricReliability <em>Volumetric Reliability</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getLongestShortage <em>Longest Shortage</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getReserve <em>Reserve</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getPumpOutage <em>Pump Outage</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getConfidence <em>Confidence</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getBudget <em>Budget</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getInfectionTarget <em>Infection Target</em>}</li>
 *   <li>{@link org.roofspring.site.Target#getBurdenTarget <em>Burden Target</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTarget()
 * @model
 * @generated
 */
public interface Target extends Element
{
	/**
	 * Returns the value of the '<em><b>Time Reliability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the days with demand on which all of it is met. Usual unit %. Range from 0 to 1. Default 95 % (a choice of this program; agree it with the people who live on the water).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Time Reliability</em>' attribute.
	 * @see #setTimeReliability(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_TimeReliability()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='95 %' defaultSource='a choice of this program; agree it with the people who live on the water'"
	 * @generated
	 */
	Quantity getTimeReliability();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getTimeReliability <em>Time Reliability</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Time Reliability</em>' attribute.
	 * @see #getTimeReliability()
	 * @generated
	 */
	void setTimeReliability(Quantity value);

	/**
	 * Returns the value of the '<em><b>Volumetric Reliability</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the demanded volume that is supplied. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Volumetric Reliability</em>' attribute.
	 * @see #setVolumetricReliability(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_VolumetricReliability()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getVolumetricReliability();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getVolumetricReliability <em>Volumetric Reliability</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Volumetric Reliability</em>' attribute.
	 * @see #getVolumetricReliability()
	 * @generated
	 */
	void setVolumetricReliability(Quantity value);

	/**
	 * Returns the value of the '<em><b>Longest Shortage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Longest run of days with a shortage that is bearable. Usual unit d. Range from 0 d to 3660 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Longest Shortage</em>' attribute.
	 * @see #setLongestShortage(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_LongestShortage()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='316224000'"
	 * @generated
	 */
	Quantity getLongestShortage();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getLongestShortage <em>Longest Shortage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Longest Shortage</em>' attribute.
	 * @see #getLongestShortage()
	 * @generated
	 */
	void setLongestShortage(Quantity value);

	/**
	 * Returns the value of the '<em><b>Reserve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days of use that should always be left as a reserve. Usual unit d. Range from 0 d to 3660 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reserve</em>' attribute.
	 * @see #setReserve(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_Reserve()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='316224000'"
	 * @generated
	 */
	Quantity getReserve();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getReserve <em>Reserve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reserve</em>' attribute.
	 * @see #getReserve()
	 * @generated
	 */
	void setReserve(Quantity value);

	/**
	 * Returns the value of the '<em><b>Pump Outage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time without pump or power that the overhead tank must bridge. Usual unit d. Range from 0 d to 366 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pump Outage</em>' attribute.
	 * @see #setPumpOutage(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_PumpOutage()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='31622400'"
	 * @generated
	 */
	Quantity getPumpOutage();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getPumpOutage <em>Pump Outage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pump Outage</em>' attribute.
	 * @see #getPumpOutage()
	 * @generated
	 */
	void setPumpOutage(Quantity value);

	/**
	 * Returns the value of the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Confidence level of intervals. Usual unit %. Range from 0.5 to 0.999. Default 90 % (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Confidence</em>' attribute.
	 * @see #setConfidence(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_Confidence()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0.5' max='0.999' default='90 %' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getConfidence();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getConfidence <em>Confidence</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Confidence</em>' attribute.
	 * @see #getConfidence()
	 * @generated
	 */
	void setConfidence(Quantity value);

	/**
	 * Returns the value of the '<em><b>Budget</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Money there is for building. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Budget</em>' attribute.
	 * @see #setBudget(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_Budget()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getBudget();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getBudget <em>Budget</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Budget</em>' attribute.
	 * @see #getBudget()
	 * @generated
	 */
	void setBudget(Quantity value);

	/**
	 * Returns the value of the '<em><b>Infection Target</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Highest chance of infection for each person and year. Range from 0 to 1. Default 0.0001 (from memory, verify against Regli et al. 1991, Modeling the risk from Giardia and viruses in drinking water).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Infection Target</em>' attribute.
	 * @see #setInfectionTarget(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_InfectionTarget()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='0.0001' defaultSource='from memory, verify against Regli et al. 1991, Modeling the risk from Giardia and viruses in drinking water'"
	 * @generated
	 */
	Quantity getInfectionTarget();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getInfectionTarget <em>Infection Target</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Infection Target</em>' attribute.
	 * @see #getInfectionTarget()
	 * @generated
	 */
	void setInfectionTarget(Quantity value);

	/**
	 * Returns the value of the '<em><b>Burden Target</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Highest burden of disease, healthy years lost for each person and year (DALY). Range from 0 to 1. Default 0.000001 (WHO Guidelines for drinking-water quality, as quoted by Australian Drinking Water Guidelines A3.4).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Burden Target</em>' attribute.
	 * @see #setBurdenTarget(Quantity)
	 * @see org.roofspring.site.SitePackage#getTarget_BurdenTarget()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='0.000001' defaultSource='WHO Guidelines for drinking-water quality, as quoted by Australian Drinking Water Guidelines A3.4'"
	 * @generated
	 */
	Quantity getBurdenTarget();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Target#getBurdenTarget <em>Burden Target</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Burden Target</em>' attribute.
	 * @see #getBurdenTarget()
	 * @generated
	 */
	void setBurdenTarget(Quantity value);

} // Target

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Tap</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * An outlet, or several equal ones side by side.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Tap#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getMinimumHead <em>Minimum Head</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getDesignFlow <em>Design Flow</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getOrifice <em>Orifice</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getLossCoefficient <em>Loss Coefficient</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getOpenTogether <em>Open Together</em>}</li>
 *   <li>{@link org.roofspring.site.Tap#getWalkingDistance <em>Walking Distance</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTap()
 * @model
 * @generated
 */
public interface Tap extends PipeNode
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.TapKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What kind it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.TapKind
	 * @see #setKind(TapKind)
	 * @see org.roofspring.site.SitePackage#getTap_Kind()
	 * @model
	 * @generated
	 */
	TapKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.TapKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(TapKind value);

	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getTap_Level()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

	/**
	 * Returns the value of the '<em><b>Minimum Head</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least pressure at which it works as it should. Usual unit m(head). Range from 0 m to 100 m. Default 1 m(head) (common practice for plain taps, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Minimum Head</em>' attribute.
	 * @see #setMinimumHead(Quantity)
	 * @see org.roofspring.site.SitePackage#getTap_MinimumHead()
	 * @model dataType="org.roofspring.site.PressureHead"
	 *        annotation="http://www.roofspring.org/value min='0' max='980665' default='1 m(head)' defaultSource='common practice for plain taps, no source'"
	 * @generated
	 */
	Quantity getMinimumHead();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getMinimumHead <em>Minimum Head</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Minimum Head</em>' attribute.
	 * @see #getMinimumHead()
	 * @generated
	 */
	void setMinimumHead(Quantity value);

	/**
	 * Returns the value of the '<em><b>Design Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flow of one outlet that people expect. Usual unit L/min. Range above 0 L/min to 10000 L/min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Design Flow</em>' attribute.
	 * @see #setDesignFlow(Quantity)
	 * @see org.roofspring.site.SitePackage#getTap_DesignFlow()
	 * @model dataType="org.roofspring.site.TapFlow"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.166666666667'"
	 * @generated
	 */
	Quantity getDesignFlow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getDesignFlow <em>Design Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Flow</em>' attribute.
	 * @see #getDesignFlow()
	 * @generated
	 */
	void setDesignFlow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Orifice</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Diameter of its opening; with it the flow follows from the pressure. Usual unit mm. Range above 0 mm to 500 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Orifice</em>' attribute.
	 * @see #setOrifice(Quantity)
	 * @see org.roofspring.site.SitePackage#getTap_Orifice()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.5'"
	 * @generated
	 */
	Quantity getOrifice();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getOrifice <em>Orifice</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Orifice</em>' attribute.
	 * @see #getOrifice()
	 * @generated
	 */
	void setOrifice(Quantity value);

	/**
	 * Returns the value of the '<em><b>Loss Coefficient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Loss coefficient K of the opened tap, referred to the bore of the run that feeds it. Range above 0 to 100000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Loss Coefficient</em>' attribute.
	 * @see #setLossCoefficient(Quantity)
	 * @see org.roofspring.site.SitePackage#getTap_LossCoefficient()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value above='0' max='100000'"
	 * @generated
	 */
	Quantity getLossCoefficient();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getLossCoefficient <em>Loss Coefficient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Loss Coefficient</em>' attribute.
	 * @see #getLossCoefficient()
	 * @generated
	 */
	void setLossCoefficient(Quantity value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many. Range from 1 to 1000. Default 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @see org.roofspring.site.SitePackage#getTap_Count()
	 * @model default="1"
	 *        annotation="http://www.roofspring.org/value min='1' max='1000'"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>Open Together</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many run at the same time in a peak; not given means all. Range from 0 to 1000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Open Together</em>' attribute.
	 * @see #setOpenTogether(int)
	 * @see org.roofspring.site.SitePackage#getTap_OpenTogether()
	 * @model annotation="http://www.roofspring.org/value min='0' max='1000'"
	 * @generated
	 */
	int getOpenTogether();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getOpenTogether <em>Open Together</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Together</em>' attribute.
	 * @see #getOpenTogether()
	 * @generated
	 */
	void setOpenTogether(int value);

	/**
	 * Returns the value of the '<em><b>Walking Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Longest way that people walk to it. Usual unit m. Range from 0 m to 100 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Walking Distance</em>' attribute.
	 * @see #setWalkingDistance(Quantity)
	 * @see org.roofspring.site.SitePackage#getTap_WalkingDistance()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='100000'"
	 * @generated
	 */
	Quantity getWalkingDistance();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tap#getWalkingDistance <em>Walking Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Walking Distance</em>' attribute.
	 * @see #getWalkingDistance()
	 * @generated
	 */
	void setWalkingDistance(Quantity value);

} // Tap

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Roof</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A roof or other surface that gathers rain.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Roof#getPlanArea <em>Plan Area</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getPitch <em>Pitch</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getEavesLength <em>Eaves Length</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getSlopeHeight <em>Slope Height</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getEavesLevel <em>Eaves Level</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getRunoffCoefficient <em>Runoff Coefficient</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getRunoffBasis <em>Runoff Basis</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getInitialLoss <em>Initial Loss</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getCollectionEfficiency <em>Collection Efficiency</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getPeakRunoff <em>Peak Runoff</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getHazards <em>Hazards</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getAge <em>Age</em>}</li>
 *   <li>{@link org.roofspring.site.Roof#getDrains <em>Drains</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getRoof()
 * @model
 * @generated
 */
public interface Roof extends Component
{
	/**
	 * Returns the value of the '<em><b>Plan Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Area seen from above, not along the slope: rain falls on this. Usual unit m2. Range above 0 m2 to 100000 m2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plan Area</em>' attribute.
	 * @see #setPlanArea(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_PlanArea()
	 * @model dataType="org.roofspring.site.Area" required="true"
	 *        annotation="http://www.roofspring.org/value above='0' max='100000'"
	 * @generated
	 */
	Quantity getPlanArea();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getPlanArea <em>Plan Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plan Area</em>' attribute.
	 * @see #getPlanArea()
	 * @generated
	 */
	void setPlanArea(Quantity value);

	/**
	 * Returns the value of the '<em><b>Pitch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Slope against the horizontal. Usual unit deg. Range from 0 deg to 80 deg.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pitch</em>' attribute.
	 * @see #setPitch(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_Pitch()
	 * @model dataType="org.roofspring.site.Angle"
	 *        annotation="http://www.roofspring.org/value min='0' max='80'"
	 * @generated
	 */
	Quantity getPitch();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getPitch <em>Pitch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pitch</em>' attribute.
	 * @see #getPitch()
	 * @generated
	 */
	void setPitch(Quantity value);

	/**
	 * Returns the value of the '<em><b>Eaves Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length of the eaves that gutters run along. Usual unit m. Range from 0 m to 1000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Eaves Length</em>' attribute.
	 * @see #setEavesLength(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_EavesLength()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000'"
	 * @generated
	 */
	Quantity getEavesLength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getEavesLength <em>Eaves Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Eaves Length</em>' attribute.
	 * @see #getEavesLength()
	 * @generated
	 */
	void setEavesLength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Slope Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the ridge above the eaves; bears on wind-driven rain in storms. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Slope Height</em>' attribute.
	 * @see #setSlopeHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_SlopeHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getSlopeHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getSlopeHeight <em>Slope Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slope Height</em>' attribute.
	 * @see #getSlopeHeight()
	 * @generated
	 */
	void setSlopeHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Eaves Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the eaves above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Eaves Level</em>' attribute.
	 * @see #setEavesLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_EavesLevel()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getEavesLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getEavesLevel <em>Eaves Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Eaves Level</em>' attribute.
	 * @see #getEavesLevel()
	 * @generated
	 */
	void setEavesLevel(Quantity value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.RoofMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is covered with.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see org.roofspring.site.RoofMaterial
	 * @see #setMaterial(RoofMaterial)
	 * @see org.roofspring.site.SitePackage#getRoof_Material()
	 * @model
	 * @generated
	 */
	RoofMaterial getMaterial();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see org.roofspring.site.RoofMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(RoofMaterial value);

	/**
	 * Returns the value of the '<em><b>Runoff Coefficient</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the rain that runs off. Usual unit %. Range from 0 to 1. Default 80 % (common value for hard roofs; compare India Water Portal training table as quoted: metal 70 to 90 %, tile 80 to 90 %, concrete 60 to 80 %).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Runoff Coefficient</em>' attribute.
	 * @see #setRunoffCoefficient(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_RunoffCoefficient()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='80 %' defaultSource='common value for hard roofs; compare India Water Portal training table as quoted: metal 70 to 90 %, tile 80 to 90 %, concrete 60 to 80 %'"
	 * @generated
	 */
	Quantity getRunoffCoefficient();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getRunoffCoefficient <em>Runoff Coefficient</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Runoff Coefficient</em>' attribute.
	 * @see #getRunoffCoefficient()
	 * @generated
	 */
	void setRunoffCoefficient(Quantity value);

	/**
	 * Returns the value of the '<em><b>Runoff Basis</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.RunoffBasis}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What losses the coefficient already holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Runoff Basis</em>' attribute.
	 * @see org.roofspring.site.RunoffBasis
	 * @see #setRunoffBasis(RunoffBasis)
	 * @see org.roofspring.site.SitePackage#getRoof_RunoffBasis()
	 * @model
	 * @generated
	 */
	RunoffBasis getRunoffBasis();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getRunoffBasis <em>Runoff Basis</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Runoff Basis</em>' attribute.
	 * @see org.roofspring.site.RunoffBasis
	 * @see #getRunoffBasis()
	 * @generated
	 */
	void setRunoffBasis(RunoffBasis value);

	/**
	 * Returns the value of the '<em><b>Initial Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth that wets the roof and never runs off, each wet day. Usual unit mm. Range from 0 mm to 20 mm. Default 0 mm (none taken off unless given).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Initial Loss</em>' attribute.
	 * @see #setInitialLoss(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_InitialLoss()
	 * @model dataType="org.roofspring.site.RainDepth"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.02' default='0 mm' defaultSource='none taken off unless given'"
	 * @generated
	 */
	Quantity getInitialLoss();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getInitialLoss <em>Initial Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Initial Loss</em>' attribute.
	 * @see #getInitialLoss()
	 * @generated
	 */
	void setInitialLoss(Quantity value);

	/**
	 * Returns the value of the '<em><b>Collection Efficiency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the runoff that reaches the tank past gutters and screens; not given means computed from the gutters or taken as whole. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Collection Efficiency</em>' attribute.
	 * @see #setCollectionEfficiency(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_CollectionEfficiency()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getCollectionEfficiency();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getCollectionEfficiency <em>Collection Efficiency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Collection Efficiency</em>' attribute.
	 * @see #getCollectionEfficiency()
	 * @generated
	 */
	void setCollectionEfficiency(Quantity value);

	/**
	 * Returns the value of the '<em><b>Peak Runoff</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the rain that runs off in the design storm. Usual unit %. Range from 0 to 1. Default 100 % (common practice for storm flow of roofs, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Peak Runoff</em>' attribute.
	 * @see #setPeakRunoff(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_PeakRunoff()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='100 %' defaultSource='common practice for storm flow of roofs, no source'"
	 * @generated
	 */
	Quantity getPeakRunoff();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getPeakRunoff <em>Peak Runoff</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Peak Runoff</em>' attribute.
	 * @see #getPeakRunoff()
	 * @generated
	 */
	void setPeakRunoff(Quantity value);

	/**
	 * Returns the value of the '<em><b>Hazards</b></em>' attribute list.
	 * The list contents are of type {@link org.roofspring.site.Hazard}.
	 * The literals are from the enumeration {@link org.roofspring.site.Hazard}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is near or on it that spoils the water.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hazards</em>' attribute list.
	 * @see org.roofspring.site.Hazard
	 * @see org.roofspring.site.SitePackage#getRoof_Hazards()
	 * @model
	 * @generated
	 */
	EList<Hazard> getHazards();

	/**
	 * Returns the value of the '<em><b>Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Age of the covering. Usual unit yr. Range from 0 yr to 300 yr.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Age</em>' attribute.
	 * @see #setAge(Quantity)
	 * @see org.roofspring.site.SitePackage#getRoof_Age()
	 * @model dataType="org.roofspring.site.Years"
	 *        annotation="http://www.roofspring.org/value min='0' max='9467085600'"
	 * @generated
	 */
	Quantity getAge();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Roof#getAge <em>Age</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Age</em>' attribute.
	 * @see #getAge()
	 * @generated
	 */
	void setAge(Quantity value);

	/**
	 * Returns the value of the '<em><b>Drains</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.RoofDrain}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where its water goes; none means the water is lost.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Drains</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getRoof_Drains()
	 * @model containment="true"
	 * @generated
	 */
	EList<RoofDrain> getDrains();

} // Roof

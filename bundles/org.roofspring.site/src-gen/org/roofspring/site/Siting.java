/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Siting</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Ground and surroundings of a tank.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Siting#getLatrineDistance <em>Latrine Distance</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#isLatrineUphill <em>Latrine Uphill</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getRefuseDistance <em>Refuse Distance</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getGroundwaterDepth <em>Groundwater Depth</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getBurialDepth <em>Burial Depth</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getBaseArea <em>Base Area</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getEmptyMass <em>Empty Mass</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getSoilCover <em>Soil Cover</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getAllowedBearing <em>Allowed Bearing</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getStandHeight <em>Stand Height</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getFoundationDistance <em>Foundation Distance</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#isSoakaway <em>Soakaway</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getSoakawayLength <em>Soakaway Length</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getSoakawayWidth <em>Soakaway Width</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getSoakawayDepth <em>Soakaway Depth</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getSoakawayVoids <em>Soakaway Voids</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getInfiltration <em>Infiltration</em>}</li>
 *   <li>{@link org.roofspring.site.Siting#getTapDrain <em>Tap Drain</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getSiting()
 * @model
 * @generated
 */
public interface Siting extends Element
{
	/**
	 * Returns the value of the '<em><b>Latrine Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance to the nearest latrine or soakaway of foul water. Usual unit m. Range from 0 m to 10 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Latrine Distance</em>' attribute.
	 * @see #setLatrineDistance(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_LatrineDistance()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getLatrineDistance();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getLatrineDistance <em>Latrine Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Latrine Distance</em>' attribute.
	 * @see #getLatrineDistance()
	 * @generated
	 */
	void setLatrineDistance(Quantity value);

	/**
	 * Returns the value of the '<em><b>Latrine Uphill</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether that latrine lies uphill.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Latrine Uphill</em>' attribute.
	 * @see #setLatrineUphill(boolean)
	 * @see org.roofspring.site.SitePackage#getSiting_LatrineUphill()
	 * @model
	 * @generated
	 */
	boolean isLatrineUphill();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#isLatrineUphill <em>Latrine Uphill</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Latrine Uphill</em>' attribute.
	 * @see #isLatrineUphill()
	 * @generated
	 */
	void setLatrineUphill(boolean value);

	/**
	 * Returns the value of the '<em><b>Refuse Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance to the nearest refuse or animal pen. Usual unit m. Range from 0 m to 10 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Refuse Distance</em>' attribute.
	 * @see #setRefuseDistance(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_RefuseDistance()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getRefuseDistance();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getRefuseDistance <em>Refuse Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Refuse Distance</em>' attribute.
	 * @see #getRefuseDistance()
	 * @generated
	 */
	void setRefuseDistance(Quantity value);

	/**
	 * Returns the value of the '<em><b>Groundwater Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Least depth of groundwater below the ground; bears on the uplift of an empty buried tank. Usual unit m. Range from 0 m to 500 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Groundwater Depth</em>' attribute.
	 * @see #setGroundwaterDepth(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_GroundwaterDepth()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='500'"
	 * @generated
	 */
	Quantity getGroundwaterDepth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getGroundwaterDepth <em>Groundwater Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Groundwater Depth</em>' attribute.
	 * @see #getGroundwaterDepth()
	 * @generated
	 */
	void setGroundwaterDepth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Burial Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of its floor below the ground. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Burial Depth</em>' attribute.
	 * @see #setBurialDepth(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_BurialDepth()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getBurialDepth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getBurialDepth <em>Burial Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Burial Depth</em>' attribute.
	 * @see #getBurialDepth()
	 * @generated
	 */
	void setBurialDepth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Base Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Area that carries the weight. Usual unit m2. Range above 0 m2 to 100000 m2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base Area</em>' attribute.
	 * @see #setBaseArea(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_BaseArea()
	 * @model dataType="org.roofspring.site.Area"
	 *        annotation="http://www.roofspring.org/value above='0' max='100000'"
	 * @generated
	 */
	Quantity getBaseArea();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getBaseArea <em>Base Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base Area</em>' attribute.
	 * @see #getBaseArea()
	 * @generated
	 */
	void setBaseArea(Quantity value);

	/**
	 * Returns the value of the '<em><b>Empty Mass</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mass of the empty tank and its base. Usual unit kg. Range from 0 kg to 1000000000 kg.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Empty Mass</em>' attribute.
	 * @see #setEmptyMass(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_EmptyMass()
	 * @model dataType="org.roofspring.site.Mass"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000000'"
	 * @generated
	 */
	Quantity getEmptyMass();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getEmptyMass <em>Empty Mass</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Empty Mass</em>' attribute.
	 * @see #getEmptyMass()
	 * @generated
	 */
	void setEmptyMass(Quantity value);

	/**
	 * Returns the value of the '<em><b>Soil Cover</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickness of soil above it. Usual unit m. Range from 0 m to 20 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Soil Cover</em>' attribute.
	 * @see #setSoilCover(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_SoilCover()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='20'"
	 * @generated
	 */
	Quantity getSoilCover();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getSoilCover <em>Soil Cover</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soil Cover</em>' attribute.
	 * @see #getSoilCover()
	 * @generated
	 */
	void setSoilCover(Quantity value);

	/**
	 * Returns the value of the '<em><b>Allowed Bearing</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bearing pressure that the ground may carry, as said by an engineer or a test. Usual unit kPa. Range above 0 kPa to 10000 kPa.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Allowed Bearing</em>' attribute.
	 * @see #setAllowedBearing(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_AllowedBearing()
	 * @model dataType="org.roofspring.site.Pressure"
	 *        annotation="http://www.roofspring.org/value above='0' max='10000000'"
	 * @generated
	 */
	Quantity getAllowedBearing();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getAllowedBearing <em>Allowed Bearing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Allowed Bearing</em>' attribute.
	 * @see #getAllowedBearing()
	 * @generated
	 */
	void setAllowedBearing(Quantity value);

	/**
	 * Returns the value of the '<em><b>Stand Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the stand. Usual unit m. Range from 0 m to 100 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stand Height</em>' attribute.
	 * @see #setStandHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_StandHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='100'"
	 * @generated
	 */
	Quantity getStandHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getStandHeight <em>Stand Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stand Height</em>' attribute.
	 * @see #getStandHeight()
	 * @generated
	 */
	void setStandHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Foundation Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance of overflow and soakaway from the nearest foundation. Usual unit m. Range from 0 m to 10 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Foundation Distance</em>' attribute.
	 * @see #setFoundationDistance(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_FoundationDistance()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getFoundationDistance();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getFoundationDistance <em>Foundation Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Foundation Distance</em>' attribute.
	 * @see #getFoundationDistance()
	 * @generated
	 */
	void setFoundationDistance(Quantity value);

	/**
	 * Returns the value of the '<em><b>Soakaway</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether spilled water goes to a soakaway.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Soakaway</em>' attribute.
	 * @see #setSoakaway(boolean)
	 * @see org.roofspring.site.SitePackage#getSiting_Soakaway()
	 * @model
	 * @generated
	 */
	boolean isSoakaway();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#isSoakaway <em>Soakaway</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soakaway</em>' attribute.
	 * @see #isSoakaway()
	 * @generated
	 */
	void setSoakaway(boolean value);

	/**
	 * Returns the value of the '<em><b>Soakaway Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length of the soakaway pit, inside. Usual unit m. Range from 0.2 m to 100 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Soakaway Length</em>' attribute.
	 * @see #setSoakawayLength(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_SoakawayLength()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0.2' max='100'"
	 * @generated
	 */
	Quantity getSoakawayLength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getSoakawayLength <em>Soakaway Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soakaway Length</em>' attribute.
	 * @see #getSoakawayLength()
	 * @generated
	 */
	void setSoakawayLength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Soakaway Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width of the soakaway pit, inside. Usual unit m. Range from 0.2 m to 100 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Soakaway Width</em>' attribute.
	 * @see #setSoakawayWidth(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_SoakawayWidth()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0.2' max='100'"
	 * @generated
	 */
	Quantity getSoakawayWidth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getSoakawayWidth <em>Soakaway Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soakaway Width</em>' attribute.
	 * @see #getSoakawayWidth()
	 * @generated
	 */
	void setSoakawayWidth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Soakaway Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of the soakaway pit below the pipe that comes in. Usual unit m. Range from 0.2 m to 20 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Soakaway Depth</em>' attribute.
	 * @see #setSoakawayDepth(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_SoakawayDepth()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0.2' max='20'"
	 * @generated
	 */
	Quantity getSoakawayDepth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getSoakawayDepth <em>Soakaway Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soakaway Depth</em>' attribute.
	 * @see #getSoakawayDepth()
	 * @generated
	 */
	void setSoakawayDepth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Soakaway Voids</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the pit that water can fill: all of a hollow one, about 30 % in rubble. Usual unit %. Range from 5 % to 100 %. Default 30 % (common practice for rubble, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Soakaway Voids</em>' attribute.
	 * @see #setSoakawayVoids(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_SoakawayVoids()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0.05' max='1' default='30 %' defaultSource='common practice for rubble, no source'"
	 * @generated
	 */
	Quantity getSoakawayVoids();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getSoakawayVoids <em>Soakaway Voids</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Soakaway Voids</em>' attribute.
	 * @see #getSoakawayVoids()
	 * @generated
	 */
	void setSoakawayVoids(Quantity value);

	/**
	 * Returns the value of the '<em><b>Infiltration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rate at which the soil takes in water, found by a trial pit. Usual unit mm/h. Range from 0.0036 mm/h to 36000 mm/h.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Infiltration</em>' attribute.
	 * @see #setInfiltration(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_Infiltration()
	 * @model dataType="org.roofspring.site.Intensity"
	 *        annotation="http://www.roofspring.org/value min='0.0036' max='36000'"
	 * @generated
	 */
	Quantity getInfiltration();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getInfiltration <em>Infiltration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Infiltration</em>' attribute.
	 * @see #getInfiltration()
	 * @generated
	 */
	void setInfiltration(Quantity value);

	/**
	 * Returns the value of the '<em><b>Tap Drain</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steady flow that tap drains lead to the soakaway besides. Usual unit L/min. Range from 0 L/min to 1 m3/s.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tap Drain</em>' attribute.
	 * @see #setTapDrain(Quantity)
	 * @see org.roofspring.site.SitePackage#getSiting_TapDrain()
	 * @model dataType="org.roofspring.site.TapFlow"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getTapDrain();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Siting#getTapDrain <em>Tap Drain</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tap Drain</em>' attribute.
	 * @see #getTapDrain()
	 * @generated
	 */
	void setTapDrain(Quantity value);

} // Siting

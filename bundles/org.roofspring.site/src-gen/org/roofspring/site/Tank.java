/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Tank</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A tank.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Tank#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getCapacity <em>Capacity</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getDeadVolume <em>Dead Volume</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getReserveVolume <em>Reserve Volume</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getBaseLevel <em>Base Level</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getHeight <em>Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getOutletHeight <em>Outlet Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getReserveOutletHeight <em>Reserve Outlet Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getOverflowHeight <em>Overflow Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getInletHeight <em>Inlet Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getLevelVolume <em>Level Volume</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getStartHeight <em>Start Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getStopHeight <em>Stop Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getCurrentHeight <em>Current Height</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getCurrentDate <em>Current Date</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getPlaceInGround <em>Place In Ground</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getCover <em>Cover</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getWidth <em>Width</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getOpenArea <em>Open Area</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getEvaporationFactor <em>Evaporation Factor</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getLeakage <em>Leakage</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getOverflowDiameter <em>Overflow Diameter</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getOverflowsTo <em>Overflows To</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getVentArea <em>Vent Area</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getScreenMesh <em>Screen Mesh</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#isFloatingIntake <em>Floating Intake</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#isCalmedInlet <em>Calmed Inlet</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#isLockedHatch <em>Locked Hatch</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getLastCleaned <em>Last Cleaned</em>}</li>
 *   <li>{@link org.roofspring.site.Tank#getSiting <em>Siting</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTank()
 * @model
 * @generated
 */
public interface Tank extends Receiver, PipeNode
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.TankKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What sort of tank it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.TankKind
	 * @see #setKind(TankKind)
	 * @see org.roofspring.site.SitePackage#getTank_Kind()
	 * @model
	 * @generated
	 */
	TankKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.TankKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(TankKind value);

	/**
	 * Returns the value of the '<em><b>Capacity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume up to the overflow. Usual unit m3. Range above 0 m3 to 1000000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Capacity</em>' attribute.
	 * @see #setCapacity(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_Capacity()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value above='0' max='1000000'"
	 * @generated
	 */
	Quantity getCapacity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getCapacity <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Capacity</em>' attribute.
	 * @see #getCapacity()
	 * @generated
	 */
	void setCapacity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Dead Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume below the outlet that cannot be drawn, within the capacity. Usual unit m3. Range from 0 m3 to 1000000 m3. Default 0 m3 (none unless given).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dead Volume</em>' attribute.
	 * @see #setDeadVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_DeadVolume()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000' default='0 m3' defaultSource='none unless given'"
	 * @generated
	 */
	Quantity getDeadVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getDeadVolume <em>Dead Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dead Volume</em>' attribute.
	 * @see #getDeadVolume()
	 * @generated
	 */
	void setDeadVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Reserve Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume above the dead one that is kept behind a lower outlet as a reserve. Usual unit m3. Range from 0 m3 to 1000000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reserve Volume</em>' attribute.
	 * @see #setReserveVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_ReserveVolume()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000'"
	 * @generated
	 */
	Quantity getReserveVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getReserveVolume <em>Reserve Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reserve Volume</em>' attribute.
	 * @see #getReserveVolume()
	 * @generated
	 */
	void setReserveVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Base Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of its floor above the site datum. Usual unit m. Range from -500 m to 9000 m. Default 0 m (the site datum).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Base Level</em>' attribute.
	 * @see #setBaseLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_BaseLevel()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000' default='0 m' defaultSource='the site datum'"
	 * @generated
	 */
	Quantity getBaseLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getBaseLevel <em>Base Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Base Level</em>' attribute.
	 * @see #getBaseLevel()
	 * @generated
	 */
	void setBaseLevel(Quantity value);

	/**
	 * Returns the value of the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside height from floor to roof. Usual unit m. Range above 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height</em>' attribute.
	 * @see #setHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_Height()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='50'"
	 * @generated
	 */
	Quantity getHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getHeight <em>Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height</em>' attribute.
	 * @see #getHeight()
	 * @generated
	 */
	void setHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Outlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the outlet above the floor. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outlet Height</em>' attribute.
	 * @see #setOutletHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_OutletHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getOutletHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getOutletHeight <em>Outlet Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outlet Height</em>' attribute.
	 * @see #getOutletHeight()
	 * @generated
	 */
	void setOutletHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Reserve Outlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the outlet above the floor that leaves the reserve. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Reserve Outlet Height</em>' attribute.
	 * @see #setReserveOutletHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_ReserveOutletHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getReserveOutletHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getReserveOutletHeight <em>Reserve Outlet Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reserve Outlet Height</em>' attribute.
	 * @see #getReserveOutletHeight()
	 * @generated
	 */
	void setReserveOutletHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Overflow Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the overflow's lip above the floor. Usual unit m. Range above 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Overflow Height</em>' attribute.
	 * @see #setOverflowHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_OverflowHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='50'"
	 * @generated
	 */
	Quantity getOverflowHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getOverflowHeight <em>Overflow Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overflow Height</em>' attribute.
	 * @see #getOverflowHeight()
	 * @generated
	 */
	void setOverflowHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Inlet Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of the inlet above the floor; a pump lifts to here. Usual unit m. Range from 0 m to 60 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Inlet Height</em>' attribute.
	 * @see #setInletHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_InletHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='60'"
	 * @generated
	 */
	Quantity getInletHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getInletHeight <em>Inlet Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Inlet Height</em>' attribute.
	 * @see #getInletHeight()
	 * @generated
	 */
	void setInletHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Level Volume</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.LevelVolumePoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Curve of volume against height of water, rising; without it the tank is taken as upright with equal section.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level Volume</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getTank_LevelVolume()
	 * @model containment="true"
	 * @generated
	 */
	EList<LevelVolumePoint> getLevelVolume();

	/**
	 * Returns the value of the '<em><b>Start Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water height above the floor at which the pump that fills it starts. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Start Height</em>' attribute.
	 * @see #setStartHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_StartHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getStartHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getStartHeight <em>Start Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Start Height</em>' attribute.
	 * @see #getStartHeight()
	 * @generated
	 */
	void setStartHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Stop Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water height above the floor at which the pump that fills it stops. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stop Height</em>' attribute.
	 * @see #setStopHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_StopHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getStopHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getStopHeight <em>Stop Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stop Height</em>' attribute.
	 * @see #getStopHeight()
	 * @generated
	 */
	void setStopHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Current Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water height above the floor today. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Current Height</em>' attribute.
	 * @see #setCurrentHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_CurrentHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getCurrentHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getCurrentHeight <em>Current Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current Height</em>' attribute.
	 * @see #getCurrentHeight()
	 * @generated
	 */
	void setCurrentHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Current Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day for which the current height holds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Current Date</em>' attribute.
	 * @see #setCurrentDate(LocalDate)
	 * @see org.roofspring.site.SitePackage#getTank_CurrentDate()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getCurrentDate();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getCurrentDate <em>Current Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Current Date</em>' attribute.
	 * @see #getCurrentDate()
	 * @generated
	 */
	void setCurrentDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Place In Ground</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.PlaceInGround}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How it stands.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Place In Ground</em>' attribute.
	 * @see org.roofspring.site.PlaceInGround
	 * @see #setPlaceInGround(PlaceInGround)
	 * @see org.roofspring.site.SitePackage#getTank_PlaceInGround()
	 * @model
	 * @generated
	 */
	PlaceInGround getPlaceInGround();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getPlaceInGround <em>Place In Ground</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Place In Ground</em>' attribute.
	 * @see org.roofspring.site.PlaceInGround
	 * @see #getPlaceInGround()
	 * @generated
	 */
	void setPlaceInGround(PlaceInGround value);

	/**
	 * Returns the value of the '<em><b>Cover</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.TankCover}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How its top is closed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cover</em>' attribute.
	 * @see org.roofspring.site.TankCover
	 * @see #setCover(TankCover)
	 * @see org.roofspring.site.SitePackage#getTank_Cover()
	 * @model
	 * @generated
	 */
	TankCover getCover();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getCover <em>Cover</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cover</em>' attribute.
	 * @see org.roofspring.site.TankCover
	 * @see #getCover()
	 * @generated
	 */
	void setCover(TankCover value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.TankMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What its wall is made of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see org.roofspring.site.TankMaterial
	 * @see #setMaterial(TankMaterial)
	 * @see org.roofspring.site.SitePackage#getTank_Material()
	 * @model
	 * @generated
	 */
	TankMaterial getMaterial();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see org.roofspring.site.TankMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(TankMaterial value);

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside diameter of a round tank. Usual unit m. Range above 0 m to 200 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_Diameter()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='200'"
	 * @generated
	 */
	Quantity getDiameter();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Quantity value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside length of a rectangular tank. Usual unit m. Range above 0 m to 500 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_Length()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='500'"
	 * @generated
	 */
	Quantity getLength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside width of a rectangular tank. Usual unit m. Range above 0 m to 500 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_Width()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='500'"
	 * @generated
	 */
	Quantity getWidth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Open Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water surface open to the sun; not given means none for a covered tank. Usual unit m2. Range from 0 m2 to 100000 m2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Open Area</em>' attribute.
	 * @see #setOpenArea(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_OpenArea()
	 * @model dataType="org.roofspring.site.Area"
	 *        annotation="http://www.roofspring.org/value min='0' max='100000'"
	 * @generated
	 */
	Quantity getOpenArea();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getOpenArea <em>Open Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Area</em>' attribute.
	 * @see #getOpenArea()
	 * @generated
	 */
	void setOpenArea(Quantity value);

	/**
	 * Returns the value of the '<em><b>Evaporation Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Evaporation from the open surface over reference evaporation. Range from 0 to 2. Default 1.05 (from memory, verify against FAO Irrigation and Drainage Paper 56, Table 12).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Evaporation Factor</em>' attribute.
	 * @see #setEvaporationFactor(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_EvaporationFactor()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='2' default='1.05' defaultSource='from memory, verify against FAO Irrigation and Drainage Paper 56, Table 12'"
	 * @generated
	 */
	Quantity getEvaporationFactor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getEvaporationFactor <em>Evaporation Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Evaporation Factor</em>' attribute.
	 * @see #getEvaporationFactor()
	 * @generated
	 */
	void setEvaporationFactor(Quantity value);

	/**
	 * Returns the value of the '<em><b>Leakage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water lost by leaks when half full. Usual unit L/d. Range from 0 L/d to 100 m3/d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leakage</em>' attribute.
	 * @see #setLeakage(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_Leakage()
	 * @model dataType="org.roofspring.site.DailyVolume"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.00115740740741'"
	 * @generated
	 */
	Quantity getLeakage();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getLeakage <em>Leakage</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leakage</em>' attribute.
	 * @see #getLeakage()
	 * @generated
	 */
	void setLeakage(Quantity value);

	/**
	 * Returns the value of the '<em><b>Overflow Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inside diameter of the overflow pipe. Usual unit mm. Range from 0 mm to 1000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Overflow Diameter</em>' attribute.
	 * @see #setOverflowDiameter(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_OverflowDiameter()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getOverflowDiameter();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getOverflowDiameter <em>Overflow Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overflow Diameter</em>' attribute.
	 * @see #getOverflowDiameter()
	 * @generated
	 */
	void setOverflowDiameter(Quantity value);

	/**
	 * Returns the value of the '<em><b>Overflows To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where spilled water goes; not given means away.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Overflows To</em>' reference.
	 * @see #setOverflowsTo(Receiver)
	 * @see org.roofspring.site.SitePackage#getTank_OverflowsTo()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Receiver getOverflowsTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getOverflowsTo <em>Overflows To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Overflows To</em>' reference.
	 * @see #getOverflowsTo()
	 * @generated
	 */
	void setOverflowsTo(Receiver value);

	/**
	 * Returns the value of the '<em><b>Vent Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Open area of vents. Usual unit cm2. Range from 0 cm2 to 10 m2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Vent Area</em>' attribute.
	 * @see #setVentArea(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_VentArea()
	 * @model dataType="org.roofspring.site.OpeningArea"
	 *        annotation="http://www.roofspring.org/value min='0' max='10'"
	 * @generated
	 */
	Quantity getVentArea();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getVentArea <em>Vent Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vent Area</em>' attribute.
	 * @see #getVentArea()
	 * @generated
	 */
	void setVentArea(Quantity value);

	/**
	 * Returns the value of the '<em><b>Screen Mesh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mesh of the screens at inlet, overflow and vent; 1.2 mm and finer keeps mosquitoes out, common practice. Usual unit mm. Range from 0 mm to 50 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Screen Mesh</em>' attribute.
	 * @see #setScreenMesh(Quantity)
	 * @see org.roofspring.site.SitePackage#getTank_ScreenMesh()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.05'"
	 * @generated
	 */
	Quantity getScreenMesh();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getScreenMesh <em>Screen Mesh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Screen Mesh</em>' attribute.
	 * @see #getScreenMesh()
	 * @generated
	 */
	void setScreenMesh(Quantity value);

	/**
	 * Returns the value of the '<em><b>Floating Intake</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether water is drawn by a floating intake below the surface.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Floating Intake</em>' attribute.
	 * @see #setFloatingIntake(boolean)
	 * @see org.roofspring.site.SitePackage#getTank_FloatingIntake()
	 * @model
	 * @generated
	 */
	boolean isFloatingIntake();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#isFloatingIntake <em>Floating Intake</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Floating Intake</em>' attribute.
	 * @see #isFloatingIntake()
	 * @generated
	 */
	void setFloatingIntake(boolean value);

	/**
	 * Returns the value of the '<em><b>Calmed Inlet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the inlet is calmed so that sludge is not stirred.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calmed Inlet</em>' attribute.
	 * @see #setCalmedInlet(boolean)
	 * @see org.roofspring.site.SitePackage#getTank_CalmedInlet()
	 * @model
	 * @generated
	 */
	boolean isCalmedInlet();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#isCalmedInlet <em>Calmed Inlet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calmed Inlet</em>' attribute.
	 * @see #isCalmedInlet()
	 * @generated
	 */
	void setCalmedInlet(boolean value);

	/**
	 * Returns the value of the '<em><b>Locked Hatch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the hatch is locked, so that nobody falls in and nobody fouls the water.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Locked Hatch</em>' attribute.
	 * @see #setLockedHatch(boolean)
	 * @see org.roofspring.site.SitePackage#getTank_LockedHatch()
	 * @model
	 * @generated
	 */
	boolean isLockedHatch();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#isLockedHatch <em>Locked Hatch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Locked Hatch</em>' attribute.
	 * @see #isLockedHatch()
	 * @generated
	 */
	void setLockedHatch(boolean value);

	/**
	 * Returns the value of the '<em><b>Last Cleaned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it was last cleaned.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Last Cleaned</em>' attribute.
	 * @see #setLastCleaned(LocalDate)
	 * @see org.roofspring.site.SitePackage#getTank_LastCleaned()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getLastCleaned();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getLastCleaned <em>Last Cleaned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Cleaned</em>' attribute.
	 * @see #getLastCleaned()
	 * @generated
	 */
	void setLastCleaned(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Siting</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is known about the ground and surroundings.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Siting</em>' containment reference.
	 * @see #setSiting(Siting)
	 * @see org.roofspring.site.SitePackage#getTank_Siting()
	 * @model containment="true"
	 * @generated
	 */
	Siting getSiting();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Tank#getSiting <em>Siting</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Siting</em>' containment reference.
	 * @see #getSiting()
	 * @generated
	 */
	void setSiting(Siting value);

} // Tank

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pipe Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A run of pipe of one bore from one part to another.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.PipeRun#getUse <em>Use</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getBore <em>Bore</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getWallThickness <em>Wall Thickness</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getClosureTime <em>Closure Time</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getPressureClass <em>Pressure Class</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getRoughness <em>Roughness</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getAgedRoughness <em>Aged Roughness</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getFittings <em>Fittings</em>}</li>
 *   <li>{@link org.roofspring.site.PipeRun#getProfile <em>Profile</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPipeRun()
 * @model
 * @generated
 */
public interface PipeRun extends Component
{
	/**
	 * Returns the value of the '<em><b>Use</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.RunUse}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Use</em>' attribute.
	 * @see org.roofspring.site.RunUse
	 * @see #setUse(RunUse)
	 * @see org.roofspring.site.SitePackage#getPipeRun_Use()
	 * @model
	 * @generated
	 */
	RunUse getUse();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getUse <em>Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Use</em>' attribute.
	 * @see org.roofspring.site.RunUse
	 * @see #getUse()
	 * @generated
	 */
	void setUse(RunUse value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part it starts at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' reference.
	 * @see #setFrom(PipeNode)
	 * @see org.roofspring.site.SitePackage#getPipeRun_From()
	 * @model resolveProxies="false"
	 * @generated
	 */
	PipeNode getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getFrom <em>From</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' reference.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(PipeNode value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part it ends at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' reference.
	 * @see #setTo(PipeNode)
	 * @see org.roofspring.site.SitePackage#getPipeRun_To()
	 * @model resolveProxies="false"
	 * @generated
	 */
	PipeNode getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getTo <em>To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' reference.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(PipeNode value);

	/**
	 * Returns the value of the '<em><b>Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * True inside diameter. Usual unit mm. Range above 0 mm to 3000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bore</em>' attribute.
	 * @see #setBore(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_Bore()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='3'"
	 * @generated
	 */
	Quantity getBore();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getBore <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bore</em>' attribute.
	 * @see #getBore()
	 * @generated
	 */
	void setBore(Quantity value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length along the pipe. Usual unit m. Range from 0 m to 100 km.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_Length()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='100000'"
	 * @generated
	 */
	Quantity getLength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Material</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.PipeMaterial}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it is made of.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Material</em>' attribute.
	 * @see org.roofspring.site.PipeMaterial
	 * @see #setMaterial(PipeMaterial)
	 * @see org.roofspring.site.SitePackage#getPipeRun_Material()
	 * @model
	 * @generated
	 */
	PipeMaterial getMaterial();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getMaterial <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Material</em>' attribute.
	 * @see org.roofspring.site.PipeMaterial
	 * @see #getMaterial()
	 * @generated
	 */
	void setMaterial(PipeMaterial value);

	/**
	 * Returns the value of the '<em><b>Wall Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thickness of its wall; bears on water hammer. Usual unit mm. Range above 0 mm to 200 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Wall Thickness</em>' attribute.
	 * @see #setWallThickness(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_WallThickness()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.2'"
	 * @generated
	 */
	Quantity getWallThickness();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getWallThickness <em>Wall Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Wall Thickness</em>' attribute.
	 * @see #getWallThickness()
	 * @generated
	 */
	void setWallThickness(Quantity value);

	/**
	 * Returns the value of the '<em><b>Closure Time</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time in which the quickest valve of the run closes, or its check valve; bears on water hammer. Usual unit s. Range from 0 s to 3600 s.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Closure Time</em>' attribute.
	 * @see #setClosureTime(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_ClosureTime()
	 * @model dataType="org.roofspring.site.Seconds"
	 *        annotation="http://www.roofspring.org/value min='0' max='3600'"
	 * @generated
	 */
	Quantity getClosureTime();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getClosureTime <em>Closure Time</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Closure Time</em>' attribute.
	 * @see #getClosureTime()
	 * @generated
	 */
	void setClosureTime(Quantity value);

	/**
	 * Returns the value of the '<em><b>Pressure Class</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure it is rated for. Usual unit kPa. Range above 0 kPa to 100000 kPa.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pressure Class</em>' attribute.
	 * @see #setPressureClass(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_PressureClass()
	 * @model dataType="org.roofspring.site.Pressure"
	 *        annotation="http://www.roofspring.org/value above='0' max='100000000'"
	 * @generated
	 */
	Quantity getPressureClass();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getPressureClass <em>Pressure Class</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pressure Class</em>' attribute.
	 * @see #getPressureClass()
	 * @generated
	 */
	void setPressureClass(Quantity value);

	/**
	 * Returns the value of the '<em><b>Roughness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Roughness of the wall; not given means that of the material. Usual unit mm. Range from 0 mm to 50 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roughness</em>' attribute.
	 * @see #setRoughness(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_Roughness()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.05'"
	 * @generated
	 */
	Quantity getRoughness();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getRoughness <em>Roughness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Roughness</em>' attribute.
	 * @see #getRoughness()
	 * @generated
	 */
	void setRoughness(Quantity value);

	/**
	 * Returns the value of the '<em><b>Aged Roughness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Roughness when old; not given means that of the material. Usual unit mm. Range from 0 mm to 50 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Aged Roughness</em>' attribute.
	 * @see #setAgedRoughness(Quantity)
	 * @see org.roofspring.site.SitePackage#getPipeRun_AgedRoughness()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.05'"
	 * @generated
	 */
	Quantity getAgedRoughness();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PipeRun#getAgedRoughness <em>Aged Roughness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Aged Roughness</em>' attribute.
	 * @see #getAgedRoughness()
	 * @generated
	 */
	void setAgedRoughness(Quantity value);

	/**
	 * Returns the value of the '<em><b>Fittings</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.Fitting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fittings, valves, entrance and exit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Fittings</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getPipeRun_Fittings()
	 * @model containment="true"
	 * @generated
	 */
	EList<Fitting> getFittings();

	/**
	 * Returns the value of the '<em><b>Profile</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.ProfilePoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heights along the run; without it a straight line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Profile</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getPipeRun_Profile()
	 * @model containment="true"
	 * @generated
	 */
	EList<ProfilePoint> getProfile();

} // PipeRun

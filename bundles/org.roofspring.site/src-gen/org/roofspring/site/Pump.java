/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pump</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A pump, or several equal ones.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Pump#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getArrangement <em>Arrangement</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getSpeedRatio <em>Speed Ratio</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getCutOutHeight <em>Cut Out Height</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#isFootValve <em>Foot Valve</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getEnergySource <em>Energy Source</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getSupplyTimes <em>Supply Times</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getOutageShare <em>Outage Share</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getStrokeVolume <em>Stroke Volume</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getStrokesPerMinute <em>Strokes Per Minute</em>}</li>
 *   <li>{@link org.roofspring.site.Pump#getCandidates <em>Candidates</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPump()
 * @model
 * @generated
 */
public interface Pump extends PipeNode, PumpData
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.PumpKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What sort of pump it is.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.PumpKind
	 * @see #setKind(PumpKind)
	 * @see org.roofspring.site.SitePackage#getPump_Kind()
	 * @model
	 * @generated
	 */
	PumpKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.PumpKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(PumpKind value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many equal pumps there are. Range from 1 to 100. Default 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(int)
	 * @see org.roofspring.site.SitePackage#getPump_Count()
	 * @model default="1"
	 *        annotation="http://www.roofspring.org/value min='1' max='100'"
	 * @generated
	 */
	int getCount();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(int value);

	/**
	 * Returns the value of the '<em><b>Arrangement</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.PumpArrangement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How they work together.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Arrangement</em>' attribute.
	 * @see org.roofspring.site.PumpArrangement
	 * @see #setArrangement(PumpArrangement)
	 * @see org.roofspring.site.SitePackage#getPump_Arrangement()
	 * @model
	 * @generated
	 */
	PumpArrangement getArrangement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getArrangement <em>Arrangement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Arrangement</em>' attribute.
	 * @see org.roofspring.site.PumpArrangement
	 * @see #getArrangement()
	 * @generated
	 */
	void setArrangement(PumpArrangement value);

	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of its inlet above the site datum. Usual unit m. Range from -1000 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getPump_Level()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-1000' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

	/**
	 * Returns the value of the '<em><b>Speed Ratio</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Speed it runs at over the rated speed. Range above 0 to 2. Default 1 (rated speed).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Speed Ratio</em>' attribute.
	 * @see #setSpeedRatio(Quantity)
	 * @see org.roofspring.site.SitePackage#getPump_SpeedRatio()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value above='0' max='2' default='1' defaultSource='rated speed'"
	 * @generated
	 */
	Quantity getSpeedRatio();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getSpeedRatio <em>Speed Ratio</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Speed Ratio</em>' attribute.
	 * @see #getSpeedRatio()
	 * @generated
	 */
	void setSpeedRatio(Quantity value);

	/**
	 * Returns the value of the '<em><b>Cut Out Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water height above the floor of the tank it draws from, at which it is switched off against running dry. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cut Out Height</em>' attribute.
	 * @see #setCutOutHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getPump_CutOutHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getCutOutHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getCutOutHeight <em>Cut Out Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cut Out Height</em>' attribute.
	 * @see #getCutOutHeight()
	 * @generated
	 */
	void setCutOutHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Foot Valve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether a foot valve holds its prime.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Foot Valve</em>' attribute.
	 * @see #setFootValve(boolean)
	 * @see org.roofspring.site.SitePackage#getPump_FootValve()
	 * @model
	 * @generated
	 */
	boolean isFootValve();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#isFootValve <em>Foot Valve</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Foot Valve</em>' attribute.
	 * @see #isFootValve()
	 * @generated
	 */
	void setFootValve(boolean value);

	/**
	 * Returns the value of the '<em><b>Energy Source</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.EnergySource}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What drives it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Energy Source</em>' attribute.
	 * @see org.roofspring.site.EnergySource
	 * @see #setEnergySource(EnergySource)
	 * @see org.roofspring.site.SitePackage#getPump_EnergySource()
	 * @model
	 * @generated
	 */
	EnergySource getEnergySource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getEnergySource <em>Energy Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Energy Source</em>' attribute.
	 * @see org.roofspring.site.EnergySource
	 * @see #getEnergySource()
	 * @generated
	 */
	void setEnergySource(EnergySource value);

	/**
	 * Returns the value of the '<em><b>Supply Times</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.SupplyTime}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hours in which there is power; none means always.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Supply Times</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getPump_SupplyTimes()
	 * @model containment="true"
	 * @generated
	 */
	EList<SupplyTime> getSupplyTimes();

	/**
	 * Returns the value of the '<em><b>Outage Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of days without power. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outage Share</em>' attribute.
	 * @see #setOutageShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getPump_OutageShare()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getOutageShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getOutageShare <em>Outage Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outage Share</em>' attribute.
	 * @see #getOutageShare()
	 * @generated
	 */
	void setOutageShare(Quantity value);

	/**
	 * Returns the value of the '<em><b>Stroke Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of one stroke of a hand pump. Usual unit L. Range above 0 L to 100 L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stroke Volume</em>' attribute.
	 * @see #setStrokeVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getPump_StrokeVolume()
	 * @model dataType="org.roofspring.site.SmallVolume"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.1'"
	 * @generated
	 */
	Quantity getStrokeVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getStrokeVolume <em>Stroke Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stroke Volume</em>' attribute.
	 * @see #getStrokeVolume()
	 * @generated
	 */
	void setStrokeVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Strokes Per Minute</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Strokes in a minute of a hand pump. Range above 0 to 200.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Strokes Per Minute</em>' attribute.
	 * @see #setStrokesPerMinute(Quantity)
	 * @see org.roofspring.site.SitePackage#getPump_StrokesPerMinute()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value above='0' max='200'"
	 * @generated
	 */
	Quantity getStrokesPerMinute();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Pump#getStrokesPerMinute <em>Strokes Per Minute</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strokes Per Minute</em>' attribute.
	 * @see #getStrokesPerMinute()
	 * @generated
	 */
	void setStrokesPerMinute(Quantity value);

	/**
	 * Returns the value of the '<em><b>Candidates</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.PumpCandidate}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pumps that are weighed against it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Candidates</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getPump_Candidates()
	 * @model containment="true"
	 * @generated
	 */
	EList<PumpCandidate> getCandidates();

} // Pump

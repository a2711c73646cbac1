/**
 */
package org.roofspring.site;

import java.time.LocalDate;
import java.time.MonthDay;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Upkeep Task</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Recurring work.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.UpkeepTask#getElements <em>Elements</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getInterval <em>Interval</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getDueOn <em>Due On</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getAfterVolume <em>After Volume</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#isBeforeFirstRain <em>Before First Rain</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getLastDone <em>Last Done</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getEffort <em>Effort</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getCost <em>Cost</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getWho <em>Who</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getChecklist <em>Checklist</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getSpares <em>Spares</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getSource <em>Source</em>}</li>
 *   <li>{@link org.roofspring.site.UpkeepTask#getHazard <em>Hazard</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getUpkeepTask()
 * @model
 * @generated
 */
public interface UpkeepTask extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Elements</b></em>' reference list.
	 * The list contents are of type {@link org.roofspring.site.NamedElement}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts it is done on.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Elements</em>' reference list.
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Elements()
	 * @model resolveProxies="false"
	 * @generated
	 */
	EList<NamedElement> getElements();

	/**
	 * Returns the value of the '<em><b>Interval</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Time after which it is due again. Usual unit d. Range above 0 d to 36525 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Interval</em>' attribute.
	 * @see #setInterval(Quantity)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Interval()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value above='0' max='3155760000'"
	 * @generated
	 */
	Quantity getInterval();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getInterval <em>Interval</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Interval</em>' attribute.
	 * @see #getInterval()
	 * @generated
	 */
	void setInterval(Quantity value);

	/**
	 * Returns the value of the '<em><b>Due On</b></em>' attribute list.
	 * The list contents are of type {@link java.time.MonthDay}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days of the year on which it is due, such as before the rains.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Due On</em>' attribute list.
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_DueOn()
	 * @model dataType="org.roofspring.site.DayOfYear"
	 * @generated
	 */
	EList<MonthDay> getDueOn();

	/**
	 * Returns the value of the '<em><b>After Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of water after which it is due. Usual unit m3. Range above 0 m3 to 1000000 m3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>After Volume</em>' attribute.
	 * @see #setAfterVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_AfterVolume()
	 * @model dataType="org.roofspring.site.Volume"
	 *        annotation="http://www.roofspring.org/value above='0' max='1000000'"
	 * @generated
	 */
	Quantity getAfterVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getAfterVolume <em>After Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>After Volume</em>' attribute.
	 * @see #getAfterVolume()
	 * @generated
	 */
	void setAfterVolume(Quantity value);

	/**
	 * Returns the value of the '<em><b>Before First Rain</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is due before the first rain after the dry season.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Before First Rain</em>' attribute.
	 * @see #setBeforeFirstRain(boolean)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_BeforeFirstRain()
	 * @model
	 * @generated
	 */
	boolean isBeforeFirstRain();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#isBeforeFirstRain <em>Before First Rain</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Before First Rain</em>' attribute.
	 * @see #isBeforeFirstRain()
	 * @generated
	 */
	void setBeforeFirstRain(boolean value);

	/**
	 * Returns the value of the '<em><b>Last Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it was last done.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Last Done</em>' attribute.
	 * @see #setLastDone(LocalDate)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_LastDone()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getLastDone();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getLastDone <em>Last Done</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Done</em>' attribute.
	 * @see #getLastDone()
	 * @generated
	 */
	void setLastDone(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Effort</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Work it takes. Usual unit h. Range from 0 h to 1000 h.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Effort</em>' attribute.
	 * @see #setEffort(Quantity)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Effort()
	 * @model dataType="org.roofspring.site.Hours"
	 *        annotation="http://www.roofspring.org/value min='0' max='3600000'"
	 * @generated
	 */
	Quantity getEffort();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getEffort <em>Effort</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Effort</em>' attribute.
	 * @see #getEffort()
	 * @generated
	 */
	void setEffort(Quantity value);

	/**
	 * Returns the value of the '<em><b>Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What it costs each time. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cost</em>' attribute.
	 * @see #setCost(Quantity)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Cost()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getCost();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getCost <em>Cost</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cost</em>' attribute.
	 * @see #getCost()
	 * @generated
	 */
	void setCost(Quantity value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who does it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

	/**
	 * Returns the value of the '<em><b>Checklist</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steps, one on each line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Checklist</em>' attribute.
	 * @see #setChecklist(String)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Checklist()
	 * @model
	 * @generated
	 */
	String getChecklist();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getChecklist <em>Checklist</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Checklist</em>' attribute.
	 * @see #getChecklist()
	 * @generated
	 */
	void setChecklist(String value);

	/**
	 * Returns the value of the '<em><b>Spares</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts and tools needed, one on each line.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Spares</em>' attribute.
	 * @see #setSpares(String)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Spares()
	 * @model
	 * @generated
	 */
	String getSpares();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getSpares <em>Spares</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Spares</em>' attribute.
	 * @see #getSpares()
	 * @generated
	 */
	void setSpares(String value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the interval comes from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What can hurt the one who does it, and what to mind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hazard</em>' attribute.
	 * @see #setHazard(String)
	 * @see org.roofspring.site.SitePackage#getUpkeepTask_Hazard()
	 * @model
	 * @generated
	 */
	String getHazard();

	/**
	 * Sets the value of the '{@link org.roofspring.site.UpkeepTask#getHazard <em>Hazard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hazard</em>' attribute.
	 * @see #getHazard()
	 * @generated
	 */
	void setHazard(String value);

} // UpkeepTask

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Use</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What water is used for, by whom and how much.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Use#getPurpose <em>Purpose</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getConsumers <em>Consumers</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getAmountEach <em>Amount Each</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getPriority <em>Priority</em>}</li>
 *   <li>{@link org.roofspring.site.Use#isVulnerable <em>Vulnerable</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getCalendar <em>Calendar</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getTaps <em>Taps</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getTank <em>Tank</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getTrain <em>Train</em>}</li>
 *   <li>{@link org.roofspring.site.Use#getPeaks <em>Peaks</em>}</li>
 *   <li>{@link org.roofspring.site.Use#isContainers <em>Containers</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getUse()
 * @model
 * @generated
 */
public interface Use extends Component
{
	/**
	 * Returns the value of the '<em><b>Purpose</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.Purpose}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What for; sets how clean the water must be.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Purpose</em>' attribute.
	 * @see org.roofspring.site.Purpose
	 * @see #setPurpose(Purpose)
	 * @see org.roofspring.site.SitePackage#getUse_Purpose()
	 * @model
	 * @generated
	 */
	Purpose getPurpose();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getPurpose <em>Purpose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Purpose</em>' attribute.
	 * @see org.roofspring.site.Purpose
	 * @see #getPurpose()
	 * @generated
	 */
	void setPurpose(Purpose value);

	/**
	 * Returns the value of the '<em><b>Consumers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who or what uses it, such as pupils, goats, beds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Consumers</em>' attribute.
	 * @see #setConsumers(String)
	 * @see org.roofspring.site.SitePackage#getUse_Consumers()
	 * @model
	 * @generated
	 */
	String getConsumers();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getConsumers <em>Consumers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Consumers</em>' attribute.
	 * @see #getConsumers()
	 * @generated
	 */
	void setConsumers(String value);

	/**
	 * Returns the value of the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many of them. Range from 0 to 1000000. Default 1 (one consumer).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Count</em>' attribute.
	 * @see #setCount(Quantity)
	 * @see org.roofspring.site.SitePackage#getUse_Count()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000' default='1' defaultSource='one consumer'"
	 * @generated
	 */
	Quantity getCount();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getCount <em>Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Count</em>' attribute.
	 * @see #getCount()
	 * @generated
	 */
	void setCount(Quantity value);

	/**
	 * Returns the value of the '<em><b>Amount Each</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water for each of them on a day with use. Usual unit L/d. Range from 0 L/d to 1000 m3/d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Amount Each</em>' attribute.
	 * @see #setAmountEach(Quantity)
	 * @see org.roofspring.site.SitePackage#getUse_AmountEach()
	 * @model dataType="org.roofspring.site.DailyVolume"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.0115740740741'"
	 * @generated
	 */
	Quantity getAmountEach();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getAmountEach <em>Amount Each</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Amount Each</em>' attribute.
	 * @see #getAmountEach()
	 * @generated
	 */
	void setAmountEach(Quantity value);

	/**
	 * Returns the value of the '<em><b>Priority</b></em>' attribute.
	 * The default value is <code>"3"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * 1 is served first and cut last. Range from 1 to 9. Default 3.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Priority</em>' attribute.
	 * @see #setPriority(int)
	 * @see org.roofspring.site.SitePackage#getUse_Priority()
	 * @model default="3"
	 *        annotation="http://www.roofspring.org/value min='1' max='9'"
	 * @generated
	 */
	int getPriority();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getPriority <em>Priority</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Priority</em>' attribute.
	 * @see #getPriority()
	 * @generated
	 */
	void setPriority(int value);

	/**
	 * Returns the value of the '<em><b>Vulnerable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether infants, pregnant, old or ill people are among them; then stricter conditions hold.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Vulnerable</em>' attribute.
	 * @see #setVulnerable(boolean)
	 * @see org.roofspring.site.SitePackage#getUse_Vulnerable()
	 * @model
	 * @generated
	 */
	boolean isVulnerable();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#isVulnerable <em>Vulnerable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Vulnerable</em>' attribute.
	 * @see #isVulnerable()
	 * @generated
	 */
	void setVulnerable(boolean value);

	/**
	 * Returns the value of the '<em><b>Calendar</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it takes place; not given means every day alike.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Calendar</em>' reference.
	 * @see #setCalendar(UseCalendar)
	 * @see org.roofspring.site.SitePackage#getUse_Calendar()
	 * @model resolveProxies="false"
	 * @generated
	 */
	UseCalendar getCalendar();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getCalendar <em>Calendar</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Calendar</em>' reference.
	 * @see #getCalendar()
	 * @generated
	 */
	void setCalendar(UseCalendar value);

	/**
	 * Returns the value of the '<em><b>Taps</b></em>' reference list.
	 * The list contents are of type {@link org.roofspring.site.Tap}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Taps it is drawn at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Taps</em>' reference list.
	 * @see org.roofspring.site.SitePackage#getUse_Taps()
	 * @model resolveProxies="false"
	 * @generated
	 */
	EList<Tap> getTaps();

	/**
	 * Returns the value of the '<em><b>Tank</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tank it draws from; not given means the tank that feeds its taps, or else all tanks.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tank</em>' reference.
	 * @see #setTank(Tank)
	 * @see org.roofspring.site.SitePackage#getUse_Tank()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Tank getTank();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getTank <em>Tank</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank</em>' reference.
	 * @see #getTank()
	 * @generated
	 */
	void setTank(Tank value);

	/**
	 * Returns the value of the '<em><b>Train</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Treatment that its water passes; not given means that on the way to its taps, or none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Train</em>' reference.
	 * @see #setTrain(TreatmentTrain)
	 * @see org.roofspring.site.SitePackage#getUse_Train()
	 * @model resolveProxies="false"
	 * @generated
	 */
	TreatmentTrain getTrain();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#getTrain <em>Train</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Train</em>' reference.
	 * @see #getTrain()
	 * @generated
	 */
	void setTrain(TreatmentTrain value);

	/**
	 * Returns the value of the '<em><b>Peaks</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.UsePeak}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Parts of the day with most of the use; none means spread over daytime.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Peaks</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getUse_Peaks()
	 * @model containment="true"
	 * @generated
	 */
	EList<UsePeak> getPeaks();

	/**
	 * Returns the value of the '<em><b>Containers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the water is carried home in vessels that hands touch.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Containers</em>' attribute.
	 * @see #setContainers(boolean)
	 * @see org.roofspring.site.SitePackage#getUse_Containers()
	 * @model
	 * @generated
	 */
	boolean isContainers();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Use#isContainers <em>Containers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Containers</em>' attribute.
	 * @see #isContainers()
	 * @generated
	 */
	void setContainers(boolean value);

} // Use

/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Safety Measure</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A hazard and what keeps it in check.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getHazard <em>Hazard</em>}</li>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getControl <em>Control</em>}</li>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getLimit <em>Limit</em>}</li>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getCheck <em>Check</em>}</li>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getAction <em>Action</em>}</li>
 *   <li>{@link org.roofspring.site.SafetyMeasure#getWho <em>Who</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getSafetyMeasure()
 * @model
 * @generated
 */
public interface SafetyMeasure extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

	/**
	 * Returns the value of the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What can go wrong.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hazard</em>' attribute.
	 * @see #setHazard(String)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Hazard()
	 * @model
	 * @generated
	 */
	String getHazard();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getHazard <em>Hazard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Hazard</em>' attribute.
	 * @see #getHazard()
	 * @generated
	 */
	void setHazard(String value);

	/**
	 * Returns the value of the '<em><b>Control</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What keeps it in check.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Control</em>' attribute.
	 * @see #setControl(String)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Control()
	 * @model
	 * @generated
	 */
	String getControl();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getControl <em>Control</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Control</em>' attribute.
	 * @see #getControl()
	 * @generated
	 */
	void setControl(String value);

	/**
	 * Returns the value of the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * When it is no longer in check.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Limit</em>' attribute.
	 * @see #setLimit(String)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Limit()
	 * @model
	 * @generated
	 */
	String getLimit();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getLimit <em>Limit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Limit</em>' attribute.
	 * @see #getLimit()
	 * @generated
	 */
	void setLimit(String value);

	/**
	 * Returns the value of the '<em><b>Check</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How and how often it is looked at.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Check</em>' attribute.
	 * @see #setCheck(String)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Check()
	 * @model
	 * @generated
	 */
	String getCheck();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getCheck <em>Check</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Check</em>' attribute.
	 * @see #getCheck()
	 * @generated
	 */
	void setCheck(String value);

	/**
	 * Returns the value of the '<em><b>Action</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What is done then.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Action</em>' attribute.
	 * @see #setAction(String)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Action()
	 * @model
	 * @generated
	 */
	String getAction();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getAction <em>Action</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Action</em>' attribute.
	 * @see #getAction()
	 * @generated
	 */
	void setAction(String value);

	/**
	 * Returns the value of the '<em><b>Who</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who does it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Who</em>' attribute.
	 * @see #setWho(String)
	 * @see org.roofspring.site.SitePackage#getSafetyMeasure_Who()
	 * @model
	 * @generated
	 */
	String getWho();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SafetyMeasure#getWho <em>Who</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Who</em>' attribute.
	 * @see #getWho()
	 * @generated
	 */
	void setWho(String value);

} // SafetyMeasure

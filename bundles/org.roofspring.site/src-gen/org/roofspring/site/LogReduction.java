/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Log Reduction</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How far a step lowers a group of germs.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.LogReduction#getGroup <em>Group</em>}</li>
 *   <li>{@link org.roofspring.site.LogReduction#getLow <em>Low</em>}</li>
 *   <li>{@link org.roofspring.site.LogReduction#getHigh <em>High</em>}</li>
 *   <li>{@link org.roofspring.site.LogReduction#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getLogReduction()
 * @model
 * @generated
 */
public interface LogReduction extends Row
{
	/**
	 * Returns the value of the '<em><b>Group</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.PathogenGroup}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Group.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Group</em>' attribute.
	 * @see org.roofspring.site.PathogenGroup
	 * @see #setGroup(PathogenGroup)
	 * @see org.roofspring.site.SitePackage#getLogReduction_Group()
	 * @model
	 * @generated
	 */
	PathogenGroup getGroup();

	/**
	 * Sets the value of the '{@link org.roofspring.site.LogReduction#getGroup <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group</em>' attribute.
	 * @see org.roofspring.site.PathogenGroup
	 * @see #getGroup()
	 * @generated
	 */
	void setGroup(PathogenGroup value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Powers of ten removed in usual, not so careful use. Range from 0 to 12.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Quantity)
	 * @see org.roofspring.site.SitePackage#getLogReduction_Low()
	 * @model dataType="org.roofspring.site.Coefficient" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='12'"
	 * @generated
	 */
	Quantity getLow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.LogReduction#getLow <em>Low</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Low</em>' attribute.
	 * @see #getLow()
	 * @generated
	 */
	void setLow(Quantity value);

	/**
	 * Returns the value of the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Powers of ten removed at best. Range from 0 to 12.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Quantity)
	 * @see org.roofspring.site.SitePackage#getLogReduction_High()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='12'"
	 * @generated
	 */
	Quantity getHigh();

	/**
	 * Sets the value of the '{@link org.roofspring.site.LogReduction#getHigh <em>High</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>High</em>' attribute.
	 * @see #getHigh()
	 * @generated
	 */
	void setHigh(Quantity value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where the numbers come from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.roofspring.site.SitePackage#getLogReduction_Source()
	 * @model required="true"
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.LogReduction#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // LogReduction

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pathogen Level</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Number of germs of a kind in the water.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.PathogenLevel#getGroup <em>Group</em>}</li>
 *   <li>{@link org.roofspring.site.PathogenLevel#getPathogen <em>Pathogen</em>}</li>
 *   <li>{@link org.roofspring.site.PathogenLevel#getPerLitre <em>Per Litre</em>}</li>
 *   <li>{@link org.roofspring.site.PathogenLevel#getLow <em>Low</em>}</li>
 *   <li>{@link org.roofspring.site.PathogenLevel#getHigh <em>High</em>}</li>
 *   <li>{@link org.roofspring.site.PathogenLevel#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPathogenLevel()
 * @model
 * @generated
 */
public interface PathogenLevel extends Row
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
	 * @see org.roofspring.site.SitePackage#getPathogenLevel_Group()
	 * @model
	 * @generated
	 */
	PathogenGroup getGroup();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PathogenLevel#getGroup <em>Group</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group</em>' attribute.
	 * @see org.roofspring.site.PathogenGroup
	 * @see #getGroup()
	 * @generated
	 */
	void setGroup(PathogenGroup value);

	/**
	 * Returns the value of the '<em><b>Pathogen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which germ.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pathogen</em>' attribute.
	 * @see #setPathogen(String)
	 * @see org.roofspring.site.SitePackage#getPathogenLevel_Pathogen()
	 * @model
	 * @generated
	 */
	String getPathogen();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PathogenLevel#getPathogen <em>Pathogen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pathogen</em>' attribute.
	 * @see #getPathogen()
	 * @generated
	 */
	void setPathogen(String value);

	/**
	 * Returns the value of the '<em><b>Per Litre</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number in a litre. Range from 0 to 1000000000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Per Litre</em>' attribute.
	 * @see #setPerLitre(Quantity)
	 * @see org.roofspring.site.SitePackage#getPathogenLevel_PerLitre()
	 * @model dataType="org.roofspring.site.Coefficient" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000000'"
	 * @generated
	 */
	Quantity getPerLitre();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PathogenLevel#getPerLitre <em>Per Litre</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Per Litre</em>' attribute.
	 * @see #getPerLitre()
	 * @generated
	 */
	void setPerLitre(Quantity value);

	/**
	 * Returns the value of the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Low end of the range, in a litre. Range from 0 to 1000000000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Low</em>' attribute.
	 * @see #setLow(Quantity)
	 * @see org.roofspring.site.SitePackage#getPathogenLevel_Low()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000000'"
	 * @generated
	 */
	Quantity getLow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PathogenLevel#getLow <em>Low</em>}' attribute.
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
	 * High end of the range, in a litre. Range from 0 to 1000000000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>High</em>' attribute.
	 * @see #setHigh(Quantity)
	 * @see org.roofspring.site.SitePackage#getPathogenLevel_High()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='1000000000'"
	 * @generated
	 */
	Quantity getHigh();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PathogenLevel#getHigh <em>High</em>}' attribute.
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
	 * Where the number comes from; an assumption says so.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.roofspring.site.SitePackage#getPathogenLevel_Source()
	 * @model required="true"
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PathogenLevel#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

} // PathogenLevel

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Raw Water</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the stored water is like before any treatment; where not tested it is assumed.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.RawWater#isTested <em>Tested</em>}</li>
 *   <li>{@link org.roofspring.site.RawWater#getTurbidity <em>Turbidity</em>}</li>
 *   <li>{@link org.roofspring.site.RawWater#getPh <em>Ph</em>}</li>
 *   <li>{@link org.roofspring.site.RawWater#getAlkalinity <em>Alkalinity</em>}</li>
 *   <li>{@link org.roofspring.site.RawWater#getChlorineDemand <em>Chlorine Demand</em>}</li>
 *   <li>{@link org.roofspring.site.RawWater#getSource <em>Source</em>}</li>
 *   <li>{@link org.roofspring.site.RawWater#getPathogens <em>Pathogens</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getRawWater()
 * @model
 * @generated
 */
public interface RawWater extends Element
{
	/**
	 * Returns the value of the '<em><b>Tested</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the values come from tests of this water. Untested water is a condition in every verdict.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tested</em>' attribute.
	 * @see #setTested(boolean)
	 * @see org.roofspring.site.SitePackage#getRawWater_Tested()
	 * @model
	 * @generated
	 */
	boolean isTested();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RawWater#isTested <em>Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tested</em>' attribute.
	 * @see #isTested()
	 * @generated
	 */
	void setTested(boolean value);

	/**
	 * Returns the value of the '<em><b>Turbidity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Turbidity. Usual unit NTU. Range from 0 NTU to 10000 NTU.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Turbidity</em>' attribute.
	 * @see #setTurbidity(Quantity)
	 * @see org.roofspring.site.SitePackage#getRawWater_Turbidity()
	 * @model dataType="org.roofspring.site.Turbidity"
	 *        annotation="http://www.roofspring.org/value min='0' max='10000'"
	 * @generated
	 */
	Quantity getTurbidity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RawWater#getTurbidity <em>Turbidity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turbidity</em>' attribute.
	 * @see #getTurbidity()
	 * @generated
	 */
	void setTurbidity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Ph</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * pH. Range from 0 to 14.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ph</em>' attribute.
	 * @see #setPh(Quantity)
	 * @see org.roofspring.site.SitePackage#getRawWater_Ph()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='14'"
	 * @generated
	 */
	Quantity getPh();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RawWater#getPh <em>Ph</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ph</em>' attribute.
	 * @see #getPh()
	 * @generated
	 */
	void setPh(Quantity value);

	/**
	 * Returns the value of the '<em><b>Alkalinity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Alkalinity as calcium carbonate. Usual unit mg/L. Range from 0 mg/L to 2000 mg/L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Alkalinity</em>' attribute.
	 * @see #setAlkalinity(Quantity)
	 * @see org.roofspring.site.SitePackage#getRawWater_Alkalinity()
	 * @model dataType="org.roofspring.site.Concentration"
	 *        annotation="http://www.roofspring.org/value min='0' max='2000'"
	 * @generated
	 */
	Quantity getAlkalinity();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RawWater#getAlkalinity <em>Alkalinity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Alkalinity</em>' attribute.
	 * @see #getAlkalinity()
	 * @generated
	 */
	void setAlkalinity(Quantity value);

	/**
	 * Returns the value of the '<em><b>Chlorine Demand</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Chlorine used up by what is in the water. Usual unit mg/L. Range from 0 mg/L to 100 mg/L.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Chlorine Demand</em>' attribute.
	 * @see #setChlorineDemand(Quantity)
	 * @see org.roofspring.site.SitePackage#getRawWater_ChlorineDemand()
	 * @model dataType="org.roofspring.site.Concentration"
	 *        annotation="http://www.roofspring.org/value min='0' max='100'"
	 * @generated
	 */
	Quantity getChlorineDemand();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RawWater#getChlorineDemand <em>Chlorine Demand</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chlorine Demand</em>' attribute.
	 * @see #getChlorineDemand()
	 * @generated
	 */
	void setChlorineDemand(Quantity value);

	/**
	 * Returns the value of the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where these values come from.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Source</em>' attribute.
	 * @see #setSource(String)
	 * @see org.roofspring.site.SitePackage#getRawWater_Source()
	 * @model
	 * @generated
	 */
	String getSource();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RawWater#getSource <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Source</em>' attribute.
	 * @see #getSource()
	 * @generated
	 */
	void setSource(String value);

	/**
	 * Returns the value of the '<em><b>Pathogens</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.PathogenLevel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Germs in the water.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pathogens</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getRawWater_Pathogens()
	 * @model containment="true"
	 * @generated
	 */
	EList<PathogenLevel> getPathogens();

} // RawWater

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Climate Stress</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A change of climate: rain scaled, dry season made longer.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.ClimateStress#getDepthFactor <em>Depth Factor</em>}</li>
 *   <li>{@link org.roofspring.site.ClimateStress#getDrySeasonLonger <em>Dry Season Longer</em>}</li>
 *   <li>{@link org.roofspring.site.ClimateStress#getSeasons <em>Seasons</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getClimateStress()
 * @model
 * @generated
 */
public interface ClimateStress extends Element
{
	/**
	 * Returns the value of the '<em><b>Depth Factor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Factor on the depth of every day, unless a season below gives its own. Range from 0 to 5. Default 1 (no change).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth Factor</em>' attribute.
	 * @see #setDepthFactor(Quantity)
	 * @see org.roofspring.site.SitePackage#getClimateStress_DepthFactor()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='5' default='1' defaultSource='no change'"
	 * @generated
	 */
	Quantity getDepthFactor();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ClimateStress#getDepthFactor <em>Depth Factor</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth Factor</em>' attribute.
	 * @see #getDepthFactor()
	 * @generated
	 */
	void setDepthFactor(Quantity value);

	/**
	 * Returns the value of the '<em><b>Dry Season Longer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Days by which the dry season lasts longer: rain of that many days after it is dropped. Usual unit d. Range from 0 d to 120 d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Dry Season Longer</em>' attribute.
	 * @see #setDrySeasonLonger(Quantity)
	 * @see org.roofspring.site.SitePackage#getClimateStress_DrySeasonLonger()
	 * @model dataType="org.roofspring.site.Days"
	 *        annotation="http://www.roofspring.org/value min='0' max='10368000'"
	 * @generated
	 */
	Quantity getDrySeasonLonger();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ClimateStress#getDrySeasonLonger <em>Dry Season Longer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Season Longer</em>' attribute.
	 * @see #getDrySeasonLonger()
	 * @generated
	 */
	void setDrySeasonLonger(Quantity value);

	/**
	 * Returns the value of the '<em><b>Seasons</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.SeasonFactor}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Factors for parts of the year.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Seasons</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getClimateStress_Seasons()
	 * @model containment="true"
	 * @generated
	 */
	EList<SeasonFactor> getSeasons();

} // ClimateStress

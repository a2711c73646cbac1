/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Screen</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A screen that holds back leaves, insects or grit.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Screen#getMesh <em>Mesh</em>}</li>
 *   <li>{@link org.roofspring.site.Screen#getArea <em>Area</em>}</li>
 *   <li>{@link org.roofspring.site.Screen#getOpenShare <em>Open Share</em>}</li>
 *   <li>{@link org.roofspring.site.Screen#getBlockedShare <em>Blocked Share</em>}</li>
 *   <li>{@link org.roofspring.site.Screen#getLostShare <em>Lost Share</em>}</li>
 *   <li>{@link org.roofspring.site.Screen#getRimHeight <em>Rim Height</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getScreen()
 * @model
 * @generated
 */
public interface Screen extends Conduit
{
	/**
	 * Returns the value of the '<em><b>Mesh</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width of its openings. Usual unit mm. Range above 0 mm to 50 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Mesh</em>' attribute.
	 * @see #setMesh(Quantity)
	 * @see org.roofspring.site.SitePackage#getScreen_Mesh()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.05'"
	 * @generated
	 */
	Quantity getMesh();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Screen#getMesh <em>Mesh</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Mesh</em>' attribute.
	 * @see #getMesh()
	 * @generated
	 */
	void setMesh(Quantity value);

	/**
	 * Returns the value of the '<em><b>Area</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whole area of the screen. Usual unit cm2. Range above 0 cm2 to 10 m2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Area</em>' attribute.
	 * @see #setArea(Quantity)
	 * @see org.roofspring.site.SitePackage#getScreen_Area()
	 * @model dataType="org.roofspring.site.OpeningArea"
	 *        annotation="http://www.roofspring.org/value above='0' max='10'"
	 * @generated
	 */
	Quantity getArea();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Screen#getArea <em>Area</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Area</em>' attribute.
	 * @see #getArea()
	 * @generated
	 */
	void setArea(Quantity value);

	/**
	 * Returns the value of the '<em><b>Open Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the area that is open when clean. Usual unit %. Range above 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Open Share</em>' attribute.
	 * @see #setOpenShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getScreen_OpenShare()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getOpenShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Screen#getOpenShare <em>Open Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Open Share</em>' attribute.
	 * @see #getOpenShare()
	 * @generated
	 */
	void setOpenShare(Quantity value);

	/**
	 * Returns the value of the '<em><b>Blocked Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share that is taken as blocked in the design storm. Usual unit %. Range from 0 to 1. Default 50 % (common practice, no source).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Blocked Share</em>' attribute.
	 * @see #setBlockedShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getScreen_BlockedShare()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1' default='50 %' defaultSource='common practice, no source'"
	 * @generated
	 */
	Quantity getBlockedShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Screen#getBlockedShare <em>Blocked Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Blocked Share</em>' attribute.
	 * @see #getBlockedShare()
	 * @generated
	 */
	void setBlockedShare(Quantity value);

	/**
	 * Returns the value of the '<em><b>Lost Share</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the water that a self-cleaning screen throws off. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lost Share</em>' attribute.
	 * @see #setLostShare(Quantity)
	 * @see org.roofspring.site.SitePackage#getScreen_LostShare()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getLostShare();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Screen#getLostShare <em>Lost Share</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lost Share</em>' attribute.
	 * @see #getLostShare()
	 * @generated
	 */
	void setLostShare(Quantity value);

	/**
	 * Returns the value of the '<em><b>Rim Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of water that stands over it before it spills. Usual unit mm. Range above 0 mm to 1 m. Default 20 mm (assumed; replace with the height of the rim).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Rim Height</em>' attribute.
	 * @see #setRimHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getScreen_RimHeight()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='1' default='20 mm' defaultSource='assumed; replace with the height of the rim'"
	 * @generated
	 */
	Quantity getRimHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Screen#getRimHeight <em>Rim Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Rim Height</em>' attribute.
	 * @see #getRimHeight()
	 * @generated
	 */
	void setRimHeight(Quantity value);

} // Screen

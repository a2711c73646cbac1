/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Gutter</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A gutter along an eaves.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Gutter#getProfile <em>Profile</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getWidth <em>Width</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getSoleWidth <em>Sole Width</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getFreeboard <em>Freeboard</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getSlope <em>Slope</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getRoughness <em>Roughness</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getBends <em>Bends</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#isLeafGuard <em>Leaf Guard</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getLastCleaned <em>Last Cleaned</em>}</li>
 *   <li>{@link org.roofspring.site.Gutter#getOutlets <em>Outlets</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getGutter()
 * @model
 * @generated
 */
public interface Gutter extends Receiver
{
	/**
	 * Returns the value of the '<em><b>Profile</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.GutterProfile}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shape of its cross-section.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Profile</em>' attribute.
	 * @see org.roofspring.site.GutterProfile
	 * @see #setProfile(GutterProfile)
	 * @see org.roofspring.site.SitePackage#getGutter_Profile()
	 * @model
	 * @generated
	 */
	GutterProfile getProfile();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getProfile <em>Profile</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Profile</em>' attribute.
	 * @see org.roofspring.site.GutterProfile
	 * @see #getProfile()
	 * @generated
	 */
	void setProfile(GutterProfile value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width at the top. Usual unit mm. Range above 0 mm to 2000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Width()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='2'"
	 * @generated
	 */
	Quantity getWidth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Sole Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Width at the bottom of a trapezium. Usual unit mm. Range from 0 mm to 2000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sole Width</em>' attribute.
	 * @see #setSoleWidth(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_SoleWidth()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='2'"
	 * @generated
	 */
	Quantity getSoleWidth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getSoleWidth <em>Sole Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sole Width</em>' attribute.
	 * @see #getSoleWidth()
	 * @generated
	 */
	void setSoleWidth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth; not given for a half-round one means half the width. Usual unit mm. Range above 0 mm to 1000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Depth</em>' attribute.
	 * @see #setDepth(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Depth()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getDepth();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getDepth <em>Depth</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Depth</em>' attribute.
	 * @see #getDepth()
	 * @generated
	 */
	void setDepth(Quantity value);

	/**
	 * Returns the value of the '<em><b>Freeboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part of the depth kept free against splash. Usual unit mm. Range from 0 mm to 500 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Freeboard</em>' attribute.
	 * @see #setFreeboard(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Freeboard()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.5'"
	 * @generated
	 */
	Quantity getFreeboard();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getFreeboard <em>Freeboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Freeboard</em>' attribute.
	 * @see #getFreeboard()
	 * @generated
	 */
	void setFreeboard(Quantity value);

	/**
	 * Returns the value of the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Length. Usual unit m. Range above 0 m to 500 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Length</em>' attribute.
	 * @see #setLength(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Length()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value above='0' max='500'"
	 * @generated
	 */
	Quantity getLength();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getLength <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Length</em>' attribute.
	 * @see #getLength()
	 * @generated
	 */
	void setLength(Quantity value);

	/**
	 * Returns the value of the '<em><b>Slope</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fall along its length. Usual unit %. Range from 0 to 0.2. Default 0 % (level gutter assumed, on the safe side).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Slope</em>' attribute.
	 * @see #setSlope(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Slope()
	 * @model dataType="org.roofspring.site.Share"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.2' default='0 %' defaultSource='level gutter assumed, on the safe side'"
	 * @generated
	 */
	Quantity getSlope();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getSlope <em>Slope</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slope</em>' attribute.
	 * @see #getSlope()
	 * @generated
	 */
	void setSlope(Quantity value);

	/**
	 * Returns the value of the '<em><b>Roughness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Manning roughness. Range from 0.005 to 0.1. Default 0.012 (Manning n between 0.010 and 0.015, Warwick Development Technology Unit, gutter notes).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Roughness</em>' attribute.
	 * @see #setRoughness(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Roughness()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0.005' max='0.1' default='0.012' defaultSource='Manning n between 0.010 and 0.015, Warwick Development Technology Unit, gutter notes'"
	 * @generated
	 */
	Quantity getRoughness();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getRoughness <em>Roughness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Roughness</em>' attribute.
	 * @see #getRoughness()
	 * @generated
	 */
	void setRoughness(Quantity value);

	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height of its sole at the lower end above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutter_Level()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

	/**
	 * Returns the value of the '<em><b>Bends</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of corners. Range from 0 to 100.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bends</em>' attribute.
	 * @see #setBends(int)
	 * @see org.roofspring.site.SitePackage#getGutter_Bends()
	 * @model annotation="http://www.roofspring.org/value min='0' max='100'"
	 * @generated
	 */
	int getBends();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getBends <em>Bends</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bends</em>' attribute.
	 * @see #getBends()
	 * @generated
	 */
	void setBends(int value);

	/**
	 * Returns the value of the '<em><b>Leaf Guard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether a guard keeps leaves out.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Leaf Guard</em>' attribute.
	 * @see #setLeafGuard(boolean)
	 * @see org.roofspring.site.SitePackage#getGutter_LeafGuard()
	 * @model
	 * @generated
	 */
	boolean isLeafGuard();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#isLeafGuard <em>Leaf Guard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Leaf Guard</em>' attribute.
	 * @see #isLeafGuard()
	 * @generated
	 */
	void setLeafGuard(boolean value);

	/**
	 * Returns the value of the '<em><b>Last Cleaned</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it was last cleaned.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Last Cleaned</em>' attribute.
	 * @see #setLastCleaned(LocalDate)
	 * @see org.roofspring.site.SitePackage#getGutter_LastCleaned()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getLastCleaned();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Gutter#getLastCleaned <em>Last Cleaned</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Last Cleaned</em>' attribute.
	 * @see #getLastCleaned()
	 * @generated
	 */
	void setLastCleaned(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Outlets</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.GutterOutlet}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where water leaves it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Outlets</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getGutter_Outlets()
	 * @model containment="true"
	 * @generated
	 */
	EList<GutterOutlet> getOutlets();

} // Gutter

/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Gutter Outlet</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A hole or end by which water leaves a gutter.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.GutterOutlet#getPosition <em>Position</em>}</li>
 *   <li>{@link org.roofspring.site.GutterOutlet#getShape <em>Shape</em>}</li>
 *   <li>{@link org.roofspring.site.GutterOutlet#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.roofspring.site.GutterOutlet#isStrainer <em>Strainer</em>}</li>
 *   <li>{@link org.roofspring.site.GutterOutlet#getTo <em>To</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getGutterOutlet()
 * @model
 * @generated
 */
public interface GutterOutlet extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>Position</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Distance from the upper end of the gutter; not given means the lower end. Usual unit m. Range from 0 m to 500 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Position</em>' attribute.
	 * @see #setPosition(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutterOutlet_Position()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='500'"
	 * @generated
	 */
	Quantity getPosition();

	/**
	 * Sets the value of the '{@link org.roofspring.site.GutterOutlet#getPosition <em>Position</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Position</em>' attribute.
	 * @see #getPosition()
	 * @generated
	 */
	void setPosition(Quantity value);

	/**
	 * Returns the value of the '<em><b>Shape</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.OutletShape}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shape of the outlet.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Shape</em>' attribute.
	 * @see org.roofspring.site.OutletShape
	 * @see #setShape(OutletShape)
	 * @see org.roofspring.site.SitePackage#getGutterOutlet_Shape()
	 * @model
	 * @generated
	 */
	OutletShape getShape();

	/**
	 * Sets the value of the '{@link org.roofspring.site.GutterOutlet#getShape <em>Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Shape</em>' attribute.
	 * @see org.roofspring.site.OutletShape
	 * @see #getShape()
	 * @generated
	 */
	void setShape(OutletShape value);

	/**
	 * Returns the value of the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Diameter at the gutter's sole. Usual unit mm. Range above 0 mm to 1000 mm.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Diameter</em>' attribute.
	 * @see #setDiameter(Quantity)
	 * @see org.roofspring.site.SitePackage#getGutterOutlet_Diameter()
	 * @model dataType="org.roofspring.site.Bore"
	 *        annotation="http://www.roofspring.org/value above='0' max='1'"
	 * @generated
	 */
	Quantity getDiameter();

	/**
	 * Sets the value of the '{@link org.roofspring.site.GutterOutlet#getDiameter <em>Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Diameter</em>' attribute.
	 * @see #getDiameter()
	 * @generated
	 */
	void setDiameter(Quantity value);

	/**
	 * Returns the value of the '<em><b>Strainer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether a strainer covers it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Strainer</em>' attribute.
	 * @see #setStrainer(boolean)
	 * @see org.roofspring.site.SitePackage#getGutterOutlet_Strainer()
	 * @model
	 * @generated
	 */
	boolean isStrainer();

	/**
	 * Sets the value of the '{@link org.roofspring.site.GutterOutlet#isStrainer <em>Strainer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Strainer</em>' attribute.
	 * @see #isStrainer()
	 * @generated
	 */
	void setStrainer(boolean value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Downpipe or other part that takes the water; not given means lost.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' reference.
	 * @see #setTo(Receiver)
	 * @see org.roofspring.site.SitePackage#getGutterOutlet_To()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Receiver getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.GutterOutlet#getTo <em>To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' reference.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Receiver value);

} // GutterOutlet

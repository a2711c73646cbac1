/**
 */
package org.roofspring.site;

import java.time.LocalDate;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Component</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A physical part of the system. Options and stages switch parts on and off.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Component#isInUse <em>In Use</em>}</li>
 *   <li>{@link org.roofspring.site.Component#getInstalled <em>Installed</em>}</li>
 *   <li>{@link org.roofspring.site.Component#getDrawingPlace <em>Drawing Place</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getComponent()
 * @model abstract="true"
 * @generated
 */
public interface Component extends NamedElement
{
	/**
	 * Returns the value of the '<em><b>In Use</b></em>' attribute.
	 * The default value is <code>"true"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the part takes part in the calculations; a part not in use stays in the file. Default true.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>In Use</em>' attribute.
	 * @see #setInUse(boolean)
	 * @see org.roofspring.site.SitePackage#getComponent_InUse()
	 * @model default="true"
	 * @generated
	 */
	boolean isInUse();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Component#isInUse <em>In Use</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>In Use</em>' attribute.
	 * @see #isInUse()
	 * @generated
	 */
	void setInUse(boolean value);

	/**
	 * Returns the value of the '<em><b>Installed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Day it was installed; not given means not known.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Installed</em>' attribute.
	 * @see #setInstalled(LocalDate)
	 * @see org.roofspring.site.SitePackage#getComponent_Installed()
	 * @model dataType="org.roofspring.site.Date"
	 * @generated
	 */
	LocalDate getInstalled();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Component#getInstalled <em>Installed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Installed</em>' attribute.
	 * @see #getInstalled()
	 * @generated
	 */
	void setInstalled(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Drawing Place</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Horizontal place on the drawing, from the left edge of the site; not given means it is placed by the program. It has no effect on any result. Usual unit m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Drawing Place</em>' attribute.
	 * @see #setDrawingPlace(Quantity)
	 * @see org.roofspring.site.SitePackage#getComponent_DrawingPlace()
	 * @model dataType="org.roofspring.site.Length"
	 * @generated
	 */
	Quantity getDrawingPlace();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Component#getDrawingPlace <em>Drawing Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drawing Place</em>' attribute.
	 * @see #getDrawingPlace()
	 * @generated
	 */
	void setDrawingPlace(Quantity value);

} // Component

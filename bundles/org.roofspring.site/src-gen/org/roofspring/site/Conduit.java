/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Conduit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part that roof water flows through on its way to one next part.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.Conduit#getDrainsTo <em>Drains To</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getConduit()
 * @model abstract="true"
 * @generated
 */
public interface Conduit extends Receiver
{
	/**
	 * Returns the value of the '<em><b>Drains To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Part that the water flows into next; not given means the water is lost.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Drains To</em>' reference.
	 * @see #setDrainsTo(Receiver)
	 * @see org.roofspring.site.SitePackage#getConduit_DrainsTo()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Receiver getDrainsTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.Conduit#getDrainsTo <em>Drains To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drains To</em>' reference.
	 * @see #getDrainsTo()
	 * @generated
	 */
	void setDrainsTo(Receiver value);

} // Conduit

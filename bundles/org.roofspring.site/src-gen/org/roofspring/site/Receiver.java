/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Receiver</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part that roof water can flow into.
 * <!-- end-model-doc -->
 *
 *
 * @see org.roofspring.site.SitePackage#getReceiver()
 * @model abstract="true"
 * @generated
 */
public interface Receiver extends Component
{
} // Receiver

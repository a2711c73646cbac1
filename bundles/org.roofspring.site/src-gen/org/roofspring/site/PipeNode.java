/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pipe Node</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A part that runs of pipe start or end at.
 * <!-- end-model-doc -->
 *
 *
 * @see org.roofspring.site.SitePackage#getPipeNode()
 * @model abstract="true"
 * @generated
 */
public interface PipeNode extends Component
{
} // PipeNode

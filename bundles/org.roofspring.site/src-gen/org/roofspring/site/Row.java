/**
 */
package org.roofspring.site;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Row</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A row of a table inside an element, such as a point of a curve. It has no identifier of its own: it is found through the element that holds it.
 * <!-- end-model-doc -->
 *
 *
 * @see org.roofspring.site.SitePackage#getRow()
 * @model abstract="true"
 * @generated
 */
public interface Row extends EObject
{
} // Row

/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Pump Candidate</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A pump that might be bought.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.PumpCandidate#getModel <em>Model</em>}</li>
 *   <li>{@link org.roofspring.site.PumpCandidate#isChosen <em>Chosen</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getPumpCandidate()
 * @model
 * @generated
 */
public interface PumpCandidate extends NamedElement, PumpData
{
	/**
	 * Returns the value of the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Maker's or seller's name of it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Model</em>' attribute.
	 * @see #setModel(String)
	 * @see org.roofspring.site.SitePackage#getPumpCandidate_Model()
	 * @model
	 * @generated
	 */
	String getModel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpCandidate#getModel <em>Model</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Model</em>' attribute.
	 * @see #getModel()
	 * @generated
	 */
	void setModel(String value);

	/**
	 * Returns the value of the '<em><b>Chosen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether it is the one decided for.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Chosen</em>' attribute.
	 * @see #setChosen(boolean)
	 * @see org.roofspring.site.SitePackage#getPumpCandidate_Chosen()
	 * @model
	 * @generated
	 */
	boolean isChosen();

	/**
	 * Sets the value of the '{@link org.roofspring.site.PumpCandidate#isChosen <em>Chosen</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Chosen</em>' attribute.
	 * @see #isChosen()
	 * @generated
	 */
	void setChosen(boolean value);

} // PumpCandidate

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Treatment Train</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Steps of treatment that water passes in order.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.TreatmentTrain#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentTrain#getDesignFlow <em>Design Flow</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentTrain#isBatch <em>Batch</em>}</li>
 *   <li>{@link org.roofspring.site.TreatmentTrain#getSteps <em>Steps</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTreatmentTrain()
 * @model
 * @generated
 */
public interface TreatmentTrain extends PipeNode
{
	/**
	 * Returns the value of the '<em><b>Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the site datum. Usual unit m. Range from -500 m to 9000 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Level</em>' attribute.
	 * @see #setLevel(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentTrain_Level()
	 * @model dataType="org.roofspring.site.Level"
	 *        annotation="http://www.roofspring.org/value min='-500' max='9000'"
	 * @generated
	 */
	Quantity getLevel();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentTrain#getLevel <em>Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Level</em>' attribute.
	 * @see #getLevel()
	 * @generated
	 */
	void setLevel(Quantity value);

	/**
	 * Returns the value of the '<em><b>Design Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flow it is meant for. Usual unit L/min. Range above 0 L/min to 10000 L/min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Design Flow</em>' attribute.
	 * @see #setDesignFlow(Quantity)
	 * @see org.roofspring.site.SitePackage#getTreatmentTrain_DesignFlow()
	 * @model dataType="org.roofspring.site.TapFlow"
	 *        annotation="http://www.roofspring.org/value above='0' max='0.166666666667'"
	 * @generated
	 */
	Quantity getDesignFlow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentTrain#getDesignFlow <em>Design Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Design Flow</em>' attribute.
	 * @see #getDesignFlow()
	 * @generated
	 */
	void setDesignFlow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Batch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether water is treated in batches away from the pipes, as in a kitchen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Batch</em>' attribute.
	 * @see #setBatch(boolean)
	 * @see org.roofspring.site.SitePackage#getTreatmentTrain_Batch()
	 * @model
	 * @generated
	 */
	boolean isBatch();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TreatmentTrain#isBatch <em>Batch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Batch</em>' attribute.
	 * @see #isBatch()
	 * @generated
	 */
	void setBatch(boolean value);

	/**
	 * Returns the value of the '<em><b>Steps</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.TreatmentStep}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steps, from the tank to the use.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Steps</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getTreatmentTrain_Steps()
	 * @model containment="true"
	 * @generated
	 */
	EList<TreatmentStep> getSteps();

} // TreatmentTrain

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Treatment Train</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentTrainImpl#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentTrainImpl#getDesignFlow <em>Design Flow</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentTrainImpl#isBatch <em>Batch</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TreatmentTrainImpl#getSteps <em>Steps</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TreatmentTrainImpl extends PipeNodeImpl implements TreatmentTrain
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TreatmentTrainImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return SitePackage.Literals.TREATMENT_TRAIN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_TRAIN__LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(Quantity newLevel)
	{
		eSet(SitePackage.Literals.TREATMENT_TRAIN__LEVEL, newLevel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDesignFlow()
	{
		return (Quantity)eGet(SitePackage.Literals.TREATMENT_TRAIN__DESIGN_FLOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDesignFlow(Quantity newDesignFlow)
	{
		eSet(SitePackage.Literals.TREATMENT_TRAIN__DESIGN_FLOW, newDesignFlow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBatch()
	{
		return (Boolean)eGet(SitePackage.Literals.TREATMENT_TRAIN__BATCH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBatch(boolean newBatch)
	{
		eSet(SitePackage.Literals.TREATMENT_TRAIN__BATCH, newBatch);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<TreatmentStep> getSteps()
	{
		return (EList<TreatmentStep>)eGet(SitePackage.Literals.TREATMENT_TRAIN__STEPS, true);
	}

} //TreatmentTrainImpl

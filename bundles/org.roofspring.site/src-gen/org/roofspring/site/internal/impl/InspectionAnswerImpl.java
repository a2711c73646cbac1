/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.CheckAnswer;
import org.roofspring.site.InspectionAnswer;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Inspection Answer</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.InspectionAnswerImpl#getQuestion <em>Question</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.InspectionAnswerImpl#getAnswer <em>Answer</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.InspectionAnswerImpl#getRemark <em>Remark</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InspectionAnswerImpl extends RowImpl implements InspectionAnswer
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected InspectionAnswerImpl()
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
		return SitePackage.Literals.INSPECTION_ANSWER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getQuestion()
	{
		return (String)eGet(SitePackage.Literals.INSPECTION_ANSWER__QUESTION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuestion(String newQuestion)
	{
		eSet(SitePackage.Literals.INSPECTION_ANSWER__QUESTION, newQuestion);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public CheckAnswer getAnswer()
	{
		return (CheckAnswer)eGet(SitePackage.Literals.INSPECTION_ANSWER__ANSWER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAnswer(CheckAnswer newAnswer)
	{
		eSet(SitePackage.Literals.INSPECTION_ANSWER__ANSWER, newAnswer);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRemark()
	{
		return (String)eGet(SitePackage.Literals.INSPECTION_ANSWER__REMARK, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRemark(String newRemark)
	{
		eSet(SitePackage.Literals.INSPECTION_ANSWER__REMARK, newRemark);
	}

} //InspectionAnswerImpl

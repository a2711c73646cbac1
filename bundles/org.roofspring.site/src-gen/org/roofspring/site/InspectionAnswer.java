/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Inspection Answer</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Answer to a question of an inspection.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.InspectionAnswer#getQuestion <em>Question</em>}</li>
 *   <li>{@link org.roofspring.site.InspectionAnswer#getAnswer <em>Answer</em>}</li>
 *   <li>{@link org.roofspring.site.InspectionAnswer#getRemark <em>Remark</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getInspectionAnswer()
 * @model
 * @generated
 */
public interface InspectionAnswer extends Row
{
	/**
	 * Returns the value of the '<em><b>Question</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Code of the question.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Question</em>' attribute.
	 * @see #setQuestion(String)
	 * @see org.roofspring.site.SitePackage#getInspectionAnswer_Question()
	 * @model required="true"
	 * @generated
	 */
	String getQuestion();

	/**
	 * Sets the value of the '{@link org.roofspring.site.InspectionAnswer#getQuestion <em>Question</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Question</em>' attribute.
	 * @see #getQuestion()
	 * @generated
	 */
	void setQuestion(String value);

	/**
	 * Returns the value of the '<em><b>Answer</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.CheckAnswer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Answer.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Answer</em>' attribute.
	 * @see org.roofspring.site.CheckAnswer
	 * @see #setAnswer(CheckAnswer)
	 * @see org.roofspring.site.SitePackage#getInspectionAnswer_Answer()
	 * @model
	 * @generated
	 */
	CheckAnswer getAnswer();

	/**
	 * Sets the value of the '{@link org.roofspring.site.InspectionAnswer#getAnswer <em>Answer</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Answer</em>' attribute.
	 * @see org.roofspring.site.CheckAnswer
	 * @see #getAnswer()
	 * @generated
	 */
	void setAnswer(CheckAnswer value);

	/**
	 * Returns the value of the '<em><b>Remark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was seen.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Remark</em>' attribute.
	 * @see #setRemark(String)
	 * @see org.roofspring.site.SitePackage#getInspectionAnswer_Remark()
	 * @model
	 * @generated
	 */
	String getRemark();

	/**
	 * Sets the value of the '{@link org.roofspring.site.InspectionAnswer#getRemark <em>Remark</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Remark</em>' attribute.
	 * @see #getRemark()
	 * @generated
	 */
	void setRemark(String value);

} // InspectionAnswer

/**
 */
package org.roofspring.site;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shared Scheme</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a system that several households share is run.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.SharedScheme#getFamilies <em>Families</em>}</li>
 *   <li>{@link org.roofspring.site.SharedScheme#getPeoplePerFamily <em>People Per Family</em>}</li>
 *   <li>{@link org.roofspring.site.SharedScheme#getKeyHolder <em>Key Holder</em>}</li>
 *   <li>{@link org.roofspring.site.SharedScheme#getRation <em>Ration</em>}</li>
 *   <li>{@link org.roofspring.site.SharedScheme#getMonthlyFee <em>Monthly Fee</em>}</li>
 *   <li>{@link org.roofspring.site.SharedScheme#getNightLoss <em>Night Loss</em>}</li>
 *   <li>{@link org.roofspring.site.SharedScheme#getCashBook <em>Cash Book</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getSharedScheme()
 * @model
 * @generated
 */
public interface SharedScheme extends Element
{
	/**
	 * Returns the value of the '<em><b>Families</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Number of families. Range from 0 to 100000.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Families</em>' attribute.
	 * @see #setFamilies(int)
	 * @see org.roofspring.site.SitePackage#getSharedScheme_Families()
	 * @model annotation="http://www.roofspring.org/value min='0' max='100000'"
	 * @generated
	 */
	int getFamilies();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SharedScheme#getFamilies <em>Families</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Families</em>' attribute.
	 * @see #getFamilies()
	 * @generated
	 */
	void setFamilies(int value);

	/**
	 * Returns the value of the '<em><b>People Per Family</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People in a family. Range from 0 to 100.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>People Per Family</em>' attribute.
	 * @see #setPeoplePerFamily(Quantity)
	 * @see org.roofspring.site.SitePackage#getSharedScheme_PeoplePerFamily()
	 * @model dataType="org.roofspring.site.Coefficient"
	 *        annotation="http://www.roofspring.org/value min='0' max='100'"
	 * @generated
	 */
	Quantity getPeoplePerFamily();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SharedScheme#getPeoplePerFamily <em>People Per Family</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>People Per Family</em>' attribute.
	 * @see #getPeoplePerFamily()
	 * @generated
	 */
	void setPeoplePerFamily(Quantity value);

	/**
	 * Returns the value of the '<em><b>Key Holder</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Who keeps the key.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Key Holder</em>' attribute.
	 * @see #setKeyHolder(String)
	 * @see org.roofspring.site.SitePackage#getSharedScheme_KeyHolder()
	 * @model
	 * @generated
	 */
	String getKeyHolder();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SharedScheme#getKeyHolder <em>Key Holder</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key Holder</em>' attribute.
	 * @see #getKeyHolder()
	 * @generated
	 */
	void setKeyHolder(String value);

	/**
	 * Returns the value of the '<em><b>Ration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ration of a family. Usual unit L/d. Range from 0 L/d to 100 m3/d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Ration</em>' attribute.
	 * @see #setRation(Quantity)
	 * @see org.roofspring.site.SitePackage#getSharedScheme_Ration()
	 * @model dataType="org.roofspring.site.DailyVolume"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.00115740740741'"
	 * @generated
	 */
	Quantity getRation();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SharedScheme#getRation <em>Ration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Ration</em>' attribute.
	 * @see #getRation()
	 * @generated
	 */
	void setRation(Quantity value);

	/**
	 * Returns the value of the '<em><b>Monthly Fee</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fee of a family each month. Usual unit cur. Range from 0 upwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Monthly Fee</em>' attribute.
	 * @see #setMonthlyFee(Quantity)
	 * @see org.roofspring.site.SitePackage#getSharedScheme_MonthlyFee()
	 * @model dataType="org.roofspring.site.Money"
	 *        annotation="http://www.roofspring.org/value min='0'"
	 * @generated
	 */
	Quantity getMonthlyFee();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SharedScheme#getMonthlyFee <em>Monthly Fee</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Monthly Fee</em>' attribute.
	 * @see #getMonthlyFee()
	 * @generated
	 */
	void setMonthlyFee(Quantity value);

	/**
	 * Returns the value of the '<em><b>Night Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flow measured at night when nobody draws. Usual unit L/min. Range from 0 L/min to 1000 L/min.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Night Loss</em>' attribute.
	 * @see #setNightLoss(Quantity)
	 * @see org.roofspring.site.SitePackage#getSharedScheme_NightLoss()
	 * @model dataType="org.roofspring.site.TapFlow"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.0166666666667'"
	 * @generated
	 */
	Quantity getNightLoss();

	/**
	 * Sets the value of the '{@link org.roofspring.site.SharedScheme#getNightLoss <em>Night Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Night Loss</em>' attribute.
	 * @see #getNightLoss()
	 * @generated
	 */
	void setNightLoss(Quantity value);

	/**
	 * Returns the value of the '<em><b>Cash Book</b></em>' containment reference list.
	 * The list contents are of type {@link org.roofspring.site.CashEntry}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Money taken and spent.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cash Book</em>' containment reference list.
	 * @see org.roofspring.site.SitePackage#getSharedScheme_CashBook()
	 * @model containment="true"
	 * @generated
	 */
	EList<CashEntry> getCashBook();

} // SharedScheme

/**
 */
package org.roofspring.site;

import java.time.MonthDay;

import org.eclipse.emf.common.util.EList;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Rationing Rule</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A rule by which use is cut when water is short.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.RationingRule#getTank <em>Tank</em>}</li>
 *   <li>{@link org.roofspring.site.RationingRule#getBelow <em>Below</em>}</li>
 *   <li>{@link org.roofspring.site.RationingRule#getUses <em>Uses</em>}</li>
 *   <li>{@link org.roofspring.site.RationingRule#getAllowed <em>Allowed</em>}</li>
 *   <li>{@link org.roofspring.site.RationingRule#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.RationingRule#getTo <em>To</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getRationingRule()
 * @model
 * @generated
 */
public interface RationingRule extends Component
{
	/**
	 * Returns the value of the '<em><b>Tank</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tank whose level decides; not given means all tanks together.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tank</em>' reference.
	 * @see #setTank(Tank)
	 * @see org.roofspring.site.SitePackage#getRationingRule_Tank()
	 * @model resolveProxies="false"
	 * @generated
	 */
	Tank getTank();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RationingRule#getTank <em>Tank</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tank</em>' reference.
	 * @see #getTank()
	 * @generated
	 */
	void setTank(Tank value);

	/**
	 * Returns the value of the '<em><b>Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the usable volume below which the rule acts. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Below</em>' attribute.
	 * @see #setBelow(Quantity)
	 * @see org.roofspring.site.SitePackage#getRationingRule_Below()
	 * @model dataType="org.roofspring.site.Share" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getBelow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RationingRule#getBelow <em>Below</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Below</em>' attribute.
	 * @see #getBelow()
	 * @generated
	 */
	void setBelow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Uses</b></em>' reference list.
	 * The list contents are of type {@link org.roofspring.site.Use}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Uses that are cut; none means all.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Uses</em>' reference list.
	 * @see org.roofspring.site.SitePackage#getRationingRule_Uses()
	 * @model resolveProxies="false"
	 * @generated
	 */
	EList<Use> getUses();

	/**
	 * Returns the value of the '<em><b>Allowed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Share of the full amount that may still be used. Usual unit %. Range from 0 to 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Allowed</em>' attribute.
	 * @see #setAllowed(Quantity)
	 * @see org.roofspring.site.SitePackage#getRationingRule_Allowed()
	 * @model dataType="org.roofspring.site.Share" required="true"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getAllowed();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RationingRule#getAllowed <em>Allowed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Allowed</em>' attribute.
	 * @see #getAllowed()
	 * @generated
	 */
	void setAllowed(Quantity value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First day of the part of the year in which it acts; not given means all year.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' attribute.
	 * @see #setFrom(MonthDay)
	 * @see org.roofspring.site.SitePackage#getRationingRule_From()
	 * @model dataType="org.roofspring.site.DayOfYear"
	 * @generated
	 */
	MonthDay getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RationingRule#getFrom <em>From</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' attribute.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(MonthDay value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Last day of that part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' attribute.
	 * @see #setTo(MonthDay)
	 * @see org.roofspring.site.SitePackage#getRationingRule_To()
	 * @model dataType="org.roofspring.site.DayOfYear"
	 * @generated
	 */
	MonthDay getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.RationingRule#getTo <em>To</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' attribute.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(MonthDay value);

} // RationingRule

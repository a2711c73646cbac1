/**
 */
package org.roofspring.site;

import org.roofspring.quantity.Quantity;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Tank Link</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How two tanks share water.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.TankLink#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.TankLink#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.TankLink#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.TankLink#getSillHeight <em>Sill Height</em>}</li>
 *   <li>{@link org.roofspring.site.TankLink#getMaxFlow <em>Max Flow</em>}</li>
 *   <li>{@link org.roofspring.site.TankLink#getDailyVolume <em>Daily Volume</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getTankLink()
 * @model
 * @generated
 */
public interface TankLink extends Component
{
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.TankLinkKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How they share it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.TankLinkKind
	 * @see #setKind(TankLinkKind)
	 * @see org.roofspring.site.SitePackage#getTankLink_Kind()
	 * @model
	 * @generated
	 */
	TankLinkKind getKind();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TankLink#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see org.roofspring.site.TankLinkKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(TankLinkKind value);

	/**
	 * Returns the value of the '<em><b>From</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First or upper tank.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>From</em>' reference.
	 * @see #setFrom(Tank)
	 * @see org.roofspring.site.SitePackage#getTankLink_From()
	 * @model resolveProxies="false" required="true"
	 * @generated
	 */
	Tank getFrom();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TankLink#getFrom <em>From</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>From</em>' reference.
	 * @see #getFrom()
	 * @generated
	 */
	void setFrom(Tank value);

	/**
	 * Returns the value of the '<em><b>To</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Second or lower tank.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>To</em>' reference.
	 * @see #setTo(Tank)
	 * @see org.roofspring.site.SitePackage#getTankLink_To()
	 * @model resolveProxies="false" required="true"
	 * @generated
	 */
	Tank getTo();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TankLink#getTo <em>To</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>To</em>' reference.
	 * @see #getTo()
	 * @generated
	 */
	void setTo(Tank value);

	/**
	 * Returns the value of the '<em><b>Sill Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Height above the first tank's floor below which no water passes. Usual unit m. Range from 0 m to 50 m.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sill Height</em>' attribute.
	 * @see #setSillHeight(Quantity)
	 * @see org.roofspring.site.SitePackage#getTankLink_SillHeight()
	 * @model dataType="org.roofspring.site.Length"
	 *        annotation="http://www.roofspring.org/value min='0' max='50'"
	 * @generated
	 */
	Quantity getSillHeight();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TankLink#getSillHeight <em>Sill Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sill Height</em>' attribute.
	 * @see #getSillHeight()
	 * @generated
	 */
	void setSillHeight(Quantity value);

	/**
	 * Returns the value of the '<em><b>Max Flow</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Most that can pass; not given means no limit. Usual unit L/s. Range from 0 L/s to 1000 L/s.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Max Flow</em>' attribute.
	 * @see #setMaxFlow(Quantity)
	 * @see org.roofspring.site.SitePackage#getTankLink_MaxFlow()
	 * @model dataType="org.roofspring.site.Flow"
	 *        annotation="http://www.roofspring.org/value min='0' max='1'"
	 * @generated
	 */
	Quantity getMaxFlow();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TankLink#getMaxFlow <em>Max Flow</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Max Flow</em>' attribute.
	 * @see #getMaxFlow()
	 * @generated
	 */
	void setMaxFlow(Quantity value);

	/**
	 * Returns the value of the '<em><b>Daily Volume</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Most that is moved in a day by hand or transfer pump. Usual unit L/d. Range from 0 L/d to 10000 m3/d.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Daily Volume</em>' attribute.
	 * @see #setDailyVolume(Quantity)
	 * @see org.roofspring.site.SitePackage#getTankLink_DailyVolume()
	 * @model dataType="org.roofspring.site.DailyVolume"
	 *        annotation="http://www.roofspring.org/value min='0' max='0.115740740741'"
	 * @generated
	 */
	Quantity getDailyVolume();

	/**
	 * Sets the value of the '{@link org.roofspring.site.TankLink#getDailyVolume <em>Daily Volume</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Daily Volume</em>' attribute.
	 * @see #getDailyVolume()
	 * @generated
	 */
	void setDailyVolume(Quantity value);

} // TankLink

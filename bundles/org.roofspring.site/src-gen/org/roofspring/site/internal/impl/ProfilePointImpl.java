/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.ProfilePoint;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Profile Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ProfilePointImpl#getDistance <em>Distance</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ProfilePointImpl#getLevel <em>Level</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ProfilePointImpl extends RowImpl implements ProfilePoint
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ProfilePointImpl()
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
		return SitePackage.Literals.PROFILE_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDistance()
	{
		return (Quantity)eGet(SitePackage.Literals.PROFILE_POINT__DISTANCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDistance(Quantity newDistance)
	{
		eSet(SitePackage.Literals.PROFILE_POINT__DISTANCE, newDistance);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.PROFILE_POINT__LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(Quantity newLevel)
	{
		eSet(SitePackage.Literals.PROFILE_POINT__LEVEL, newLevel);
	}

} //ProfilePointImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.MonthDay;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SeasonFactor;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Season Factor</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.SeasonFactorImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SeasonFactorImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SeasonFactorImpl#getFactor <em>Factor</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SeasonFactorImpl extends RowImpl implements SeasonFactor
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SeasonFactorImpl()
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
		return SitePackage.Literals.SEASON_FACTOR;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getFrom()
	{
		return (MonthDay)eGet(SitePackage.Literals.SEASON_FACTOR__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(MonthDay newFrom)
	{
		eSet(SitePackage.Literals.SEASON_FACTOR__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getTo()
	{
		return (MonthDay)eGet(SitePackage.Literals.SEASON_FACTOR__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(MonthDay newTo)
	{
		eSet(SitePackage.Literals.SEASON_FACTOR__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFactor()
	{
		return (Quantity)eGet(SitePackage.Literals.SEASON_FACTOR__FACTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFactor(Quantity newFactor)
	{
		eSet(SitePackage.Literals.SEASON_FACTOR__FACTOR, newFactor);
	}

} //SeasonFactorImpl

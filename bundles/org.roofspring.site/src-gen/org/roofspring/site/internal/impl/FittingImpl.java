/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Fitting;
import org.roofspring.site.FittingKind;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fitting</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.FittingImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FittingImpl#getCount <em>Count</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FittingImpl#getLossCoefficient <em>Loss Coefficient</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FittingImpl extends RowImpl implements Fitting
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FittingImpl()
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
		return SitePackage.Literals.FITTING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FittingKind getKind()
	{
		return (FittingKind)eGet(SitePackage.Literals.FITTING__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(FittingKind newKind)
	{
		eSet(SitePackage.Literals.FITTING__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getCount()
	{
		return (Integer)eGet(SitePackage.Literals.FITTING__COUNT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCount(int newCount)
	{
		eSet(SitePackage.Literals.FITTING__COUNT, newCount);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLossCoefficient()
	{
		return (Quantity)eGet(SitePackage.Literals.FITTING__LOSS_COEFFICIENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLossCoefficient(Quantity newLossCoefficient)
	{
		eSet(SitePackage.Literals.FITTING__LOSS_COEFFICIENT, newLossCoefficient);
	}

} //FittingImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalTime;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.UsePeak;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Use Peak</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeakImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeakImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.UsePeakImpl#getShare <em>Share</em>}</li>
 * </ul>
 *
 * @generated
 */
public class UsePeakImpl extends RowImpl implements UsePeak
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected UsePeakImpl()
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
		return SitePackage.Literals.USE_PEAK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getFrom()
	{
		return (LocalTime)eGet(SitePackage.Literals.USE_PEAK__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(LocalTime newFrom)
	{
		eSet(SitePackage.Literals.USE_PEAK__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getTo()
	{
		return (LocalTime)eGet(SitePackage.Literals.USE_PEAK__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(LocalTime newTo)
	{
		eSet(SitePackage.Literals.USE_PEAK__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getShare()
	{
		return (Quantity)eGet(SitePackage.Literals.USE_PEAK__SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShare(Quantity newShare)
	{
		eSet(SitePackage.Literals.USE_PEAK__SHARE, newShare);
	}

} //UsePeakImpl

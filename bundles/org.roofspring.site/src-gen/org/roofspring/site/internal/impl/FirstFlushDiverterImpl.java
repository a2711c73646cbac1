/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>First Flush Diverter</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl#getVolume <em>Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl#getResetDryDays <em>Reset Dry Days</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl#getDrainTime <em>Drain Time</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl#getDrainOrifice <em>Drain Orifice</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.FirstFlushDiverterImpl#getHeight <em>Height</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FirstFlushDiverterImpl extends ConduitImpl implements FirstFlushDiverter
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FirstFlushDiverterImpl()
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
		return SitePackage.Literals.FIRST_FLUSH_DIVERTER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDepth()
	{
		return (Quantity)eGet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__DEPTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepth(Quantity newDepth)
	{
		eSet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__DEPTH, newDepth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVolume(Quantity newVolume)
	{
		eSet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__VOLUME, newVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getResetDryDays()
	{
		return (Quantity)eGet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setResetDryDays(Quantity newResetDryDays)
	{
		eSet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__RESET_DRY_DAYS, newResetDryDays);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDrainTime()
	{
		return (Quantity)eGet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__DRAIN_TIME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrainTime(Quantity newDrainTime)
	{
		eSet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__DRAIN_TIME, newDrainTime);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDrainOrifice()
	{
		return (Quantity)eGet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__DRAIN_ORIFICE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrainOrifice(Quantity newDrainOrifice)
	{
		eSet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__DRAIN_ORIFICE, newDrainOrifice);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Quantity newHeight)
	{
		eSet(SitePackage.Literals.FIRST_FLUSH_DIVERTER__HEIGHT, newHeight);
	}

} //FirstFlushDiverterImpl

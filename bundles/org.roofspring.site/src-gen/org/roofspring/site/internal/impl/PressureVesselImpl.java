/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.PressureVessel;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pressure Vessel</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PressureVesselImpl#getVolume <em>Volume</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PressureVesselImpl#getPrecharge <em>Precharge</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PressureVesselImpl#getCutIn <em>Cut In</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PressureVesselImpl#getCutOut <em>Cut Out</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PressureVesselImpl#getLevel <em>Level</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PressureVesselImpl extends PipeNodeImpl implements PressureVessel
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PressureVesselImpl()
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
		return SitePackage.Literals.PRESSURE_VESSEL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.PRESSURE_VESSEL__VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVolume(Quantity newVolume)
	{
		eSet(SitePackage.Literals.PRESSURE_VESSEL__VOLUME, newVolume);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPrecharge()
	{
		return (Quantity)eGet(SitePackage.Literals.PRESSURE_VESSEL__PRECHARGE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrecharge(Quantity newPrecharge)
	{
		eSet(SitePackage.Literals.PRESSURE_VESSEL__PRECHARGE, newPrecharge);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCutIn()
	{
		return (Quantity)eGet(SitePackage.Literals.PRESSURE_VESSEL__CUT_IN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCutIn(Quantity newCutIn)
	{
		eSet(SitePackage.Literals.PRESSURE_VESSEL__CUT_IN, newCutIn);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getCutOut()
	{
		return (Quantity)eGet(SitePackage.Literals.PRESSURE_VESSEL__CUT_OUT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCutOut(Quantity newCutOut)
	{
		eSet(SitePackage.Literals.PRESSURE_VESSEL__CUT_OUT, newCutOut);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.PRESSURE_VESSEL__LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(Quantity newLevel)
	{
		eSet(SitePackage.Literals.PRESSURE_VESSEL__LEVEL, newLevel);
	}

} //PressureVesselImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.IntensityPoint;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Intensity Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.IntensityPointImpl#getDuration <em>Duration</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IntensityPointImpl#getReturnPeriod <em>Return Period</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IntensityPointImpl#getIntensity <em>Intensity</em>}</li>
 * </ul>
 *
 * @generated
 */
public class IntensityPointImpl extends RowImpl implements IntensityPoint
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected IntensityPointImpl()
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
		return SitePackage.Literals.INTENSITY_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDuration()
	{
		return (Quantity)eGet(SitePackage.Literals.INTENSITY_POINT__DURATION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDuration(Quantity newDuration)
	{
		eSet(SitePackage.Literals.INTENSITY_POINT__DURATION, newDuration);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getReturnPeriod()
	{
		return (Quantity)eGet(SitePackage.Literals.INTENSITY_POINT__RETURN_PERIOD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReturnPeriod(Quantity newReturnPeriod)
	{
		eSet(SitePackage.Literals.INTENSITY_POINT__RETURN_PERIOD, newReturnPeriod);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getIntensity()
	{
		return (Quantity)eGet(SitePackage.Literals.INTENSITY_POINT__INTENSITY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIntensity(Quantity newIntensity)
	{
		eSet(SitePackage.Literals.INTENSITY_POINT__INTENSITY, newIntensity);
	}

} //IntensityPointImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.LevelVolumePoint;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Level Volume Point</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.LevelVolumePointImpl#getHeight <em>Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.LevelVolumePointImpl#getVolume <em>Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LevelVolumePointImpl extends RowImpl implements LevelVolumePoint
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LevelVolumePointImpl()
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
		return SitePackage.Literals.LEVEL_VOLUME_POINT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.LEVEL_VOLUME_POINT__HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHeight(Quantity newHeight)
	{
		eSet(SitePackage.Literals.LEVEL_VOLUME_POINT__HEIGHT, newHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.LEVEL_VOLUME_POINT__VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVolume(Quantity newVolume)
	{
		eSet(SitePackage.Literals.LEVEL_VOLUME_POINT__VOLUME, newVolume);
	}

} //LevelVolumePointImpl

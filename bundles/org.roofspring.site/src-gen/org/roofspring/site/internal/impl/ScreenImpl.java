/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Screen;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Screen</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ScreenImpl#getMesh <em>Mesh</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ScreenImpl#getArea <em>Area</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ScreenImpl#getOpenShare <em>Open Share</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ScreenImpl#getBlockedShare <em>Blocked Share</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ScreenImpl#getLostShare <em>Lost Share</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ScreenImpl#getRimHeight <em>Rim Height</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ScreenImpl extends ConduitImpl implements Screen
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ScreenImpl()
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
		return SitePackage.Literals.SCREEN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMesh()
	{
		return (Quantity)eGet(SitePackage.Literals.SCREEN__MESH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMesh(Quantity newMesh)
	{
		eSet(SitePackage.Literals.SCREEN__MESH, newMesh);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getArea()
	{
		return (Quantity)eGet(SitePackage.Literals.SCREEN__AREA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setArea(Quantity newArea)
	{
		eSet(SitePackage.Literals.SCREEN__AREA, newArea);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getOpenShare()
	{
		return (Quantity)eGet(SitePackage.Literals.SCREEN__OPEN_SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpenShare(Quantity newOpenShare)
	{
		eSet(SitePackage.Literals.SCREEN__OPEN_SHARE, newOpenShare);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBlockedShare()
	{
		return (Quantity)eGet(SitePackage.Literals.SCREEN__BLOCKED_SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBlockedShare(Quantity newBlockedShare)
	{
		eSet(SitePackage.Literals.SCREEN__BLOCKED_SHARE, newBlockedShare);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLostShare()
	{
		return (Quantity)eGet(SitePackage.Literals.SCREEN__LOST_SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLostShare(Quantity newLostShare)
	{
		eSet(SitePackage.Literals.SCREEN__LOST_SHARE, newLostShare);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRimHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.SCREEN__RIM_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRimHeight(Quantity newRimHeight)
	{
		eSet(SitePackage.Literals.SCREEN__RIM_HEIGHT, newRimHeight);
	}

} //ScreenImpl

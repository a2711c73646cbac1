/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TankLink;
import org.roofspring.site.TankLinkKind;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Tank Link</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.TankLinkImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankLinkImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankLinkImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankLinkImpl#getSillHeight <em>Sill Height</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankLinkImpl#getMaxFlow <em>Max Flow</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.TankLinkImpl#getDailyVolume <em>Daily Volume</em>}</li>
 * </ul>
 *
 * @generated
 */
public class TankLinkImpl extends ComponentImpl implements TankLink
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected TankLinkImpl()
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
		return SitePackage.Literals.TANK_LINK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TankLinkKind getKind()
	{
		return (TankLinkKind)eGet(SitePackage.Literals.TANK_LINK__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(TankLinkKind newKind)
	{
		eSet(SitePackage.Literals.TANK_LINK__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tank getFrom()
	{
		return (Tank)eGet(SitePackage.Literals.TANK_LINK__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(Tank newFrom)
	{
		eSet(SitePackage.Literals.TANK_LINK__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tank getTo()
	{
		return (Tank)eGet(SitePackage.Literals.TANK_LINK__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(Tank newTo)
	{
		eSet(SitePackage.Literals.TANK_LINK__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSillHeight()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK_LINK__SILL_HEIGHT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSillHeight(Quantity newSillHeight)
	{
		eSet(SitePackage.Literals.TANK_LINK__SILL_HEIGHT, newSillHeight);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getMaxFlow()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK_LINK__MAX_FLOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaxFlow(Quantity newMaxFlow)
	{
		eSet(SitePackage.Literals.TANK_LINK__MAX_FLOW, newMaxFlow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDailyVolume()
	{
		return (Quantity)eGet(SitePackage.Literals.TANK_LINK__DAILY_VOLUME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDailyVolume(Quantity newDailyVolume)
	{
		eSet(SitePackage.Literals.TANK_LINK__DAILY_VOLUME, newDailyVolume);
	}

} //TankLinkImpl

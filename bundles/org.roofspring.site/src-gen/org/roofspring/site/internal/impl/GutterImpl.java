/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.GutterProfile;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Gutter</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getProfile <em>Profile</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getWidth <em>Width</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getSoleWidth <em>Sole Width</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getDepth <em>Depth</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getFreeboard <em>Freeboard</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getSlope <em>Slope</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getRoughness <em>Roughness</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getLevel <em>Level</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getBends <em>Bends</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#isLeafGuard <em>Leaf Guard</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getLastCleaned <em>Last Cleaned</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterImpl#getOutlets <em>Outlets</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GutterImpl extends ReceiverImpl implements Gutter
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GutterImpl()
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
		return SitePackage.Literals.GUTTER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GutterProfile getProfile()
	{
		return (GutterProfile)eGet(SitePackage.Literals.GUTTER__PROFILE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProfile(GutterProfile newProfile)
	{
		eSet(SitePackage.Literals.GUTTER__PROFILE, newProfile);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWidth()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__WIDTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWidth(Quantity newWidth)
	{
		eSet(SitePackage.Literals.GUTTER__WIDTH, newWidth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSoleWidth()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__SOLE_WIDTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSoleWidth(Quantity newSoleWidth)
	{
		eSet(SitePackage.Literals.GUTTER__SOLE_WIDTH, newSoleWidth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDepth()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__DEPTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDepth(Quantity newDepth)
	{
		eSet(SitePackage.Literals.GUTTER__DEPTH, newDepth);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFreeboard()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__FREEBOARD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFreeboard(Quantity newFreeboard)
	{
		eSet(SitePackage.Literals.GUTTER__FREEBOARD, newFreeboard);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLength()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__LENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Quantity newLength)
	{
		eSet(SitePackage.Literals.GUTTER__LENGTH, newLength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getSlope()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__SLOPE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlope(Quantity newSlope)
	{
		eSet(SitePackage.Literals.GUTTER__SLOPE, newSlope);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRoughness()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__ROUGHNESS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoughness(Quantity newRoughness)
	{
		eSet(SitePackage.Literals.GUTTER__ROUGHNESS, newRoughness);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLevel()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER__LEVEL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLevel(Quantity newLevel)
	{
		eSet(SitePackage.Literals.GUTTER__LEVEL, newLevel);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getBends()
	{
		return (Integer)eGet(SitePackage.Literals.GUTTER__BENDS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBends(int newBends)
	{
		eSet(SitePackage.Literals.GUTTER__BENDS, newBends);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isLeafGuard()
	{
		return (Boolean)eGet(SitePackage.Literals.GUTTER__LEAF_GUARD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeafGuard(boolean newLeafGuard)
	{
		eSet(SitePackage.Literals.GUTTER__LEAF_GUARD, newLeafGuard);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getLastCleaned()
	{
		return (LocalDate)eGet(SitePackage.Literals.GUTTER__LAST_CLEANED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLastCleaned(LocalDate newLastCleaned)
	{
		eSet(SitePackage.Literals.GUTTER__LAST_CLEANED, newLastCleaned);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<GutterOutlet> getOutlets()
	{
		return (EList<GutterOutlet>)eGet(SitePackage.Literals.GUTTER__OUTLETS, true);
	}

} //GutterImpl

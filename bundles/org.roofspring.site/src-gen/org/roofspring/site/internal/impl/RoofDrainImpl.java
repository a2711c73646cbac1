/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Receiver;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Roof Drain</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.RoofDrainImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RoofDrainImpl#getShare <em>Share</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RoofDrainImpl extends RowImpl implements RoofDrain
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RoofDrainImpl()
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
		return SitePackage.Literals.ROOF_DRAIN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Receiver getTo()
	{
		return (Receiver)eGet(SitePackage.Literals.ROOF_DRAIN__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(Receiver newTo)
	{
		eSet(SitePackage.Literals.ROOF_DRAIN__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getShare()
	{
		return (Quantity)eGet(SitePackage.Literals.ROOF_DRAIN__SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShare(Quantity newShare)
	{
		eSet(SitePackage.Literals.ROOF_DRAIN__SHARE, newShare);
	}

} //RoofDrainImpl

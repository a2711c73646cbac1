/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Downpipe;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Downpipe</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.DownpipeImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.DownpipeImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.DownpipeImpl#getFillShare <em>Fill Share</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.DownpipeImpl#isWet <em>Wet</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DownpipeImpl extends ConduitImpl implements Downpipe
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DownpipeImpl()
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
		return SitePackage.Literals.DOWNPIPE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBore()
	{
		return (Quantity)eGet(SitePackage.Literals.DOWNPIPE__BORE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBore(Quantity newBore)
	{
		eSet(SitePackage.Literals.DOWNPIPE__BORE, newBore);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLength()
	{
		return (Quantity)eGet(SitePackage.Literals.DOWNPIPE__LENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Quantity newLength)
	{
		eSet(SitePackage.Literals.DOWNPIPE__LENGTH, newLength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getFillShare()
	{
		return (Quantity)eGet(SitePackage.Literals.DOWNPIPE__FILL_SHARE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFillShare(Quantity newFillShare)
	{
		eSet(SitePackage.Literals.DOWNPIPE__FILL_SHARE, newFillShare);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isWet()
	{
		return (Boolean)eGet(SitePackage.Literals.DOWNPIPE__WET, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWet(boolean newWet)
	{
		eSet(SitePackage.Literals.DOWNPIPE__WET, newWet);
	}

} //DownpipeImpl

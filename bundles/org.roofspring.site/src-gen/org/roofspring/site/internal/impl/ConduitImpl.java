/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.Conduit;
import org.roofspring.site.Receiver;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Conduit</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ConduitImpl#getDrainsTo <em>Drains To</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class ConduitImpl extends ReceiverImpl implements Conduit
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ConduitImpl()
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
		return SitePackage.Literals.CONDUIT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Receiver getDrainsTo()
	{
		return (Receiver)eGet(SitePackage.Literals.CONDUIT__DRAINS_TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrainsTo(Receiver newDrainsTo)
	{
		eSet(SitePackage.Literals.CONDUIT__DRAINS_TO, newDrainsTo);
	}

} //ConduitImpl

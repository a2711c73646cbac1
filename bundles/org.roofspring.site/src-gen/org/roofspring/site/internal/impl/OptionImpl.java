/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.Change;
import org.roofspring.site.Option;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Option</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.OptionImpl#isActive <em>Active</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.OptionImpl#getReason <em>Reason</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.OptionImpl#getChanges <em>Changes</em>}</li>
 * </ul>
 *
 * @generated
 */
public class OptionImpl extends NamedElementImpl implements Option
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected OptionImpl()
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
		return SitePackage.Literals.OPTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isActive()
	{
		return (Boolean)eGet(SitePackage.Literals.OPTION__ACTIVE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setActive(boolean newActive)
	{
		eSet(SitePackage.Literals.OPTION__ACTIVE, newActive);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReason()
	{
		return (String)eGet(SitePackage.Literals.OPTION__REASON, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReason(String newReason)
	{
		eSet(SitePackage.Literals.OPTION__REASON, newReason);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Change> getChanges()
	{
		return (EList<Change>)eGet(SitePackage.Literals.OPTION__CHANGES, true);
	}

} //OptionImpl

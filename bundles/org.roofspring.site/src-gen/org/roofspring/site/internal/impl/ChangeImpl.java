/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.Change;
import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Change</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ChangeImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ChangeImpl#getFeature <em>Feature</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ChangeImpl#getValue <em>Value</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ChangeImpl extends ElementImpl implements Change
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ChangeImpl()
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
		return SitePackage.Literals.CHANGE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.CHANGE__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.CHANGE__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFeature()
	{
		return (String)eGet(SitePackage.Literals.CHANGE__FEATURE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFeature(String newFeature)
	{
		eSet(SitePackage.Literals.CHANGE__FEATURE, newFeature);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getValue()
	{
		return (String)eGet(SitePackage.Literals.CHANGE__VALUE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(String newValue)
	{
		eSet(SitePackage.Literals.CHANGE__VALUE, newValue);
	}

} //ChangeImpl

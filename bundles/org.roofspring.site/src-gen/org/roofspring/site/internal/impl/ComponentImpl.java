/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Component;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Component</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ComponentImpl#isInUse <em>In Use</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ComponentImpl#getInstalled <em>Installed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ComponentImpl#getDrawingPlace <em>Drawing Place</em>}</li>
 * </ul>
 *
 * @generated
 */
public abstract class ComponentImpl extends NamedElementImpl implements Component
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ComponentImpl()
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
		return SitePackage.Literals.COMPONENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isInUse()
	{
		return (Boolean)eGet(SitePackage.Literals.COMPONENT__IN_USE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInUse(boolean newInUse)
	{
		eSet(SitePackage.Literals.COMPONENT__IN_USE, newInUse);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getInstalled()
	{
		return (LocalDate)eGet(SitePackage.Literals.COMPONENT__INSTALLED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstalled(LocalDate newInstalled)
	{
		eSet(SitePackage.Literals.COMPONENT__INSTALLED, newInstalled);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDrawingPlace()
	{
		return (Quantity)eGet(SitePackage.Literals.COMPONENT__DRAWING_PLACE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDrawingPlace(Quantity newDrawingPlace)
	{
		eSet(SitePackage.Literals.COMPONENT__DRAWING_PLACE, newDrawingPlace);
	}

} //ComponentImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.GutterOutlet;
import org.roofspring.site.OutletShape;
import org.roofspring.site.Receiver;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Gutter Outlet</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.GutterOutletImpl#getPosition <em>Position</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterOutletImpl#getShape <em>Shape</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterOutletImpl#getDiameter <em>Diameter</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterOutletImpl#isStrainer <em>Strainer</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.GutterOutletImpl#getTo <em>To</em>}</li>
 * </ul>
 *
 * @generated
 */
public class GutterOutletImpl extends NamedElementImpl implements GutterOutlet
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected GutterOutletImpl()
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
		return SitePackage.Literals.GUTTER_OUTLET;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPosition()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER_OUTLET__POSITION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPosition(Quantity newPosition)
	{
		eSet(SitePackage.Literals.GUTTER_OUTLET__POSITION, newPosition);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public OutletShape getShape()
	{
		return (OutletShape)eGet(SitePackage.Literals.GUTTER_OUTLET__SHAPE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShape(OutletShape newShape)
	{
		eSet(SitePackage.Literals.GUTTER_OUTLET__SHAPE, newShape);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getDiameter()
	{
		return (Quantity)eGet(SitePackage.Literals.GUTTER_OUTLET__DIAMETER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDiameter(Quantity newDiameter)
	{
		eSet(SitePackage.Literals.GUTTER_OUTLET__DIAMETER, newDiameter);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isStrainer()
	{
		return (Boolean)eGet(SitePackage.Literals.GUTTER_OUTLET__STRAINER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStrainer(boolean newStrainer)
	{
		eSet(SitePackage.Literals.GUTTER_OUTLET__STRAINER, newStrainer);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Receiver getTo()
	{
		return (Receiver)eGet(SitePackage.Literals.GUTTER_OUTLET__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(Receiver newTo)
	{
		eSet(SitePackage.Literals.GUTTER_OUTLET__TO, newTo);
	}

} //GutterOutletImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.NamedElement;
import org.roofspring.site.SafetyMeasure;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Safety Measure</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getHazard <em>Hazard</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getControl <em>Control</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getLimit <em>Limit</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getCheck <em>Check</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getAction <em>Action</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.SafetyMeasureImpl#getWho <em>Who</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SafetyMeasureImpl extends NamedElementImpl implements SafetyMeasure
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SafetyMeasureImpl()
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
		return SitePackage.Literals.SAFETY_MEASURE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.SAFETY_MEASURE__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getHazard()
	{
		return (String)eGet(SitePackage.Literals.SAFETY_MEASURE__HAZARD, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHazard(String newHazard)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__HAZARD, newHazard);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getControl()
	{
		return (String)eGet(SitePackage.Literals.SAFETY_MEASURE__CONTROL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setControl(String newControl)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__CONTROL, newControl);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLimit()
	{
		return (String)eGet(SitePackage.Literals.SAFETY_MEASURE__LIMIT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLimit(String newLimit)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__LIMIT, newLimit);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCheck()
	{
		return (String)eGet(SitePackage.Literals.SAFETY_MEASURE__CHECK, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCheck(String newCheck)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__CHECK, newCheck);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAction()
	{
		return (String)eGet(SitePackage.Literals.SAFETY_MEASURE__ACTION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAction(String newAction)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__ACTION, newAction);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getWho()
	{
		return (String)eGet(SitePackage.Literals.SAFETY_MEASURE__WHO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWho(String newWho)
	{
		eSet(SitePackage.Literals.SAFETY_MEASURE__WHO, newWho);
	}

} //SafetyMeasureImpl

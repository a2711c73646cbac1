/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;
import org.roofspring.site.WaterParameter;
import org.roofspring.site.WaterTest;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Water Test</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getParameter <em>Parameter</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getValue <em>Value</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#isBelowDetection <em>Below Detection</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getUnit <em>Unit</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getLimit <em>Limit</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getLimitSource <em>Limit Source</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getLaboratory <em>Laboratory</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.WaterTestImpl#getAction <em>Action</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WaterTestImpl extends ElementImpl implements WaterTest
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WaterTestImpl()
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
		return SitePackage.Literals.WATER_TEST;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.WATER_TEST__DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate)
	{
		eSet(SitePackage.Literals.WATER_TEST__DATE, newDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterParameter getParameter()
	{
		return (WaterParameter)eGet(SitePackage.Literals.WATER_TEST__PARAMETER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setParameter(WaterParameter newParameter)
	{
		eSet(SitePackage.Literals.WATER_TEST__PARAMETER, newParameter);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getValue()
	{
		return (Quantity)eGet(SitePackage.Literals.WATER_TEST__VALUE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Quantity newValue)
	{
		eSet(SitePackage.Literals.WATER_TEST__VALUE, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBelowDetection()
	{
		return (Boolean)eGet(SitePackage.Literals.WATER_TEST__BELOW_DETECTION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBelowDetection(boolean newBelowDetection)
	{
		eSet(SitePackage.Literals.WATER_TEST__BELOW_DETECTION, newBelowDetection);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getUnit()
	{
		return (String)eGet(SitePackage.Literals.WATER_TEST__UNIT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUnit(String newUnit)
	{
		eSet(SitePackage.Literals.WATER_TEST__UNIT, newUnit);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLimit()
	{
		return (Quantity)eGet(SitePackage.Literals.WATER_TEST__LIMIT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLimit(Quantity newLimit)
	{
		eSet(SitePackage.Literals.WATER_TEST__LIMIT, newLimit);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLimitSource()
	{
		return (String)eGet(SitePackage.Literals.WATER_TEST__LIMIT_SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLimitSource(String newLimitSource)
	{
		eSet(SitePackage.Literals.WATER_TEST__LIMIT_SOURCE, newLimitSource);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLaboratory()
	{
		return (String)eGet(SitePackage.Literals.WATER_TEST__LABORATORY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLaboratory(String newLaboratory)
	{
		eSet(SitePackage.Literals.WATER_TEST__LABORATORY, newLaboratory);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.WATER_TEST__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.WATER_TEST__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAction()
	{
		return (String)eGet(SitePackage.Literals.WATER_TEST__ACTION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAction(String newAction)
	{
		eSet(SitePackage.Literals.WATER_TEST__ACTION, newAction);
	}

} //WaterTestImpl

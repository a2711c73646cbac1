/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.Inspection;
import org.roofspring.site.InspectionAnswer;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Inspection</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.InspectionImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.InspectionImpl#getInspector <em>Inspector</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.InspectionImpl#getAnswers <em>Answers</em>}</li>
 * </ul>
 *
 * @generated
 */
public class InspectionImpl extends NamedElementImpl implements Inspection
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected InspectionImpl()
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
		return SitePackage.Literals.INSPECTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.INSPECTION__DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate)
	{
		eSet(SitePackage.Literals.INSPECTION__DATE, newDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getInspector()
	{
		return (String)eGet(SitePackage.Literals.INSPECTION__INSPECTOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInspector(String newInspector)
	{
		eSet(SitePackage.Literals.INSPECTION__INSPECTOR, newInspector);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<InspectionAnswer> getAnswers()
	{
		return (EList<InspectionAnswer>)eGet(SitePackage.Literals.INSPECTION__ANSWERS, true);
	}

} //InspectionImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Incident;
import org.roofspring.site.IncidentKind;
import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Incident</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.IncidentImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IncidentImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IncidentImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IncidentImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IncidentImpl#getVolumeLost <em>Volume Lost</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.IncidentImpl#getAction <em>Action</em>}</li>
 * </ul>
 *
 * @generated
 */
public class IncidentImpl extends NamedElementImpl implements Incident
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected IncidentImpl()
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
		return SitePackage.Literals.INCIDENT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public IncidentKind getKind()
	{
		return (IncidentKind)eGet(SitePackage.Literals.INCIDENT__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(IncidentKind newKind)
	{
		eSet(SitePackage.Literals.INCIDENT__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getFrom()
	{
		return (LocalDate)eGet(SitePackage.Literals.INCIDENT__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(LocalDate newFrom)
	{
		eSet(SitePackage.Literals.INCIDENT__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getTo()
	{
		return (LocalDate)eGet(SitePackage.Literals.INCIDENT__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(LocalDate newTo)
	{
		eSet(SitePackage.Literals.INCIDENT__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.INCIDENT__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.INCIDENT__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getVolumeLost()
	{
		return (Quantity)eGet(SitePackage.Literals.INCIDENT__VOLUME_LOST, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVolumeLost(Quantity newVolumeLost)
	{
		eSet(SitePackage.Literals.INCIDENT__VOLUME_LOST, newVolumeLost);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAction()
	{
		return (String)eGet(SitePackage.Literals.INCIDENT__ACTION, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAction(String newAction)
	{
		eSet(SitePackage.Literals.INCIDENT__ACTION, newAction);
	}

} //IncidentImpl

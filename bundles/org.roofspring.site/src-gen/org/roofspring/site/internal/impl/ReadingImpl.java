/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;
import java.time.LocalTime;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.NamedElement;
import org.roofspring.site.Reading;
import org.roofspring.site.ReadingKind;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Reading</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ReadingImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ReadingImpl#getTime <em>Time</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ReadingImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ReadingImpl#getValue <em>Value</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ReadingImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ReadingImpl#getReader <em>Reader</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ReadingImpl extends ElementImpl implements Reading
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ReadingImpl()
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
		return SitePackage.Literals.READING;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.READING__DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate)
	{
		eSet(SitePackage.Literals.READING__DATE, newDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalTime getTime()
	{
		return (LocalTime)eGet(SitePackage.Literals.READING__TIME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTime(LocalTime newTime)
	{
		eSet(SitePackage.Literals.READING__TIME, newTime);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ReadingKind getKind()
	{
		return (ReadingKind)eGet(SitePackage.Literals.READING__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(ReadingKind newKind)
	{
		eSet(SitePackage.Literals.READING__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getValue()
	{
		return (Quantity)eGet(SitePackage.Literals.READING__VALUE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(Quantity newValue)
	{
		eSet(SitePackage.Literals.READING__VALUE, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.READING__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.READING__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getReader()
	{
		return (String)eGet(SitePackage.Literals.READING__READER, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReader(String newReader)
	{
		eSet(SitePackage.Literals.READING__READER, newReader);
	}

} //ReadingImpl

/**
 */
package org.roofspring.site.internal.impl;

import java.time.LocalDate;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.NamedElement;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Remark</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getElement <em>Element</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getAuthor <em>Author</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getRole <em>Role</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getDate <em>Date</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getText <em>Text</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getFingerprint <em>Fingerprint</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getRestsOn <em>Rests On</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#isSettled <em>Settled</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RemarkImpl#getReplies <em>Replies</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RemarkImpl extends ElementImpl implements Remark
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RemarkImpl()
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
		return SitePackage.Literals.REMARK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RemarkKind getKind()
	{
		return (RemarkKind)eGet(SitePackage.Literals.REMARK__KIND, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(RemarkKind newKind)
	{
		eSet(SitePackage.Literals.REMARK__KIND, newKind);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.REMARK__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.REMARK__ELEMENT, newElement);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getAuthor()
	{
		return (String)eGet(SitePackage.Literals.REMARK__AUTHOR, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAuthor(String newAuthor)
	{
		eSet(SitePackage.Literals.REMARK__AUTHOR, newAuthor);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getRole()
	{
		return (String)eGet(SitePackage.Literals.REMARK__ROLE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRole(String newRole)
	{
		eSet(SitePackage.Literals.REMARK__ROLE, newRole);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getDate()
	{
		return (LocalDate)eGet(SitePackage.Literals.REMARK__DATE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(LocalDate newDate)
	{
		eSet(SitePackage.Literals.REMARK__DATE, newDate);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getText()
	{
		return (String)eGet(SitePackage.Literals.REMARK__TEXT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setText(String newText)
	{
		eSet(SitePackage.Literals.REMARK__TEXT, newText);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getFingerprint()
	{
		return (String)eGet(SitePackage.Literals.REMARK__FINGERPRINT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFingerprint(String newFingerprint)
	{
		eSet(SitePackage.Literals.REMARK__FINGERPRINT, newFingerprint);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<String> getRestsOn()
	{
		return (EList<String>)eGet(SitePackage.Literals.REMARK__RESTS_ON, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSettled()
	{
		return (Boolean)eGet(SitePackage.Literals.REMARK__SETTLED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSettled(boolean newSettled)
	{
		eSet(SitePackage.Literals.REMARK__SETTLED, newSettled);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Remark> getReplies()
	{
		return (EList<Remark>)eGet(SitePackage.Literals.REMARK__REPLIES, true);
	}

} //RemarkImpl

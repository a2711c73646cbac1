/**
 */
package org.roofspring.site.internal.impl;

import java.time.MonthDay;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.RationingRule;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.Use;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Rationing Rule</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.RationingRuleImpl#getTank <em>Tank</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RationingRuleImpl#getBelow <em>Below</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RationingRuleImpl#getUses <em>Uses</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RationingRuleImpl#getAllowed <em>Allowed</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RationingRuleImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.RationingRuleImpl#getTo <em>To</em>}</li>
 * </ul>
 *
 * @generated
 */
public class RationingRuleImpl extends ComponentImpl implements RationingRule
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected RationingRuleImpl()
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
		return SitePackage.Literals.RATIONING_RULE;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Tank getTank()
	{
		return (Tank)eGet(SitePackage.Literals.RATIONING_RULE__TANK, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTank(Tank newTank)
	{
		eSet(SitePackage.Literals.RATIONING_RULE__TANK, newTank);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBelow()
	{
		return (Quantity)eGet(SitePackage.Literals.RATIONING_RULE__BELOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBelow(Quantity newBelow)
	{
		eSet(SitePackage.Literals.RATIONING_RULE__BELOW, newBelow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Use> getUses()
	{
		return (EList<Use>)eGet(SitePackage.Literals.RATIONING_RULE__USES, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAllowed()
	{
		return (Quantity)eGet(SitePackage.Literals.RATIONING_RULE__ALLOWED, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAllowed(Quantity newAllowed)
	{
		eSet(SitePackage.Literals.RATIONING_RULE__ALLOWED, newAllowed);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getFrom()
	{
		return (MonthDay)eGet(SitePackage.Literals.RATIONING_RULE__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(MonthDay newFrom)
	{
		eSet(SitePackage.Literals.RATIONING_RULE__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MonthDay getTo()
	{
		return (MonthDay)eGet(SitePackage.Literals.RATIONING_RULE__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(MonthDay newTo)
	{
		eSet(SitePackage.Literals.RATIONING_RULE__TO, newTo);
	}

} //RationingRuleImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.LogReduction;
import org.roofspring.site.PathogenGroup;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Log Reduction</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.LogReductionImpl#getGroup <em>Group</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.LogReductionImpl#getLow <em>Low</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.LogReductionImpl#getHigh <em>High</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.LogReductionImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LogReductionImpl extends RowImpl implements LogReduction
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LogReductionImpl()
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
		return SitePackage.Literals.LOG_REDUCTION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PathogenGroup getGroup()
	{
		return (PathogenGroup)eGet(SitePackage.Literals.LOG_REDUCTION__GROUP, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroup(PathogenGroup newGroup)
	{
		eSet(SitePackage.Literals.LOG_REDUCTION__GROUP, newGroup);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLow()
	{
		return (Quantity)eGet(SitePackage.Literals.LOG_REDUCTION__LOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLow(Quantity newLow)
	{
		eSet(SitePackage.Literals.LOG_REDUCTION__LOW, newLow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHigh()
	{
		return (Quantity)eGet(SitePackage.Literals.LOG_REDUCTION__HIGH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHigh(Quantity newHigh)
	{
		eSet(SitePackage.Literals.LOG_REDUCTION__HIGH, newHigh);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource()
	{
		return (String)eGet(SitePackage.Literals.LOG_REDUCTION__SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource)
	{
		eSet(SitePackage.Literals.LOG_REDUCTION__SOURCE, newSource);
	}

} //LogReductionImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.PathogenGroup;
import org.roofspring.site.PathogenLevel;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pathogen Level</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PathogenLevelImpl#getGroup <em>Group</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PathogenLevelImpl#getPathogen <em>Pathogen</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PathogenLevelImpl#getPerLitre <em>Per Litre</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PathogenLevelImpl#getLow <em>Low</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PathogenLevelImpl#getHigh <em>High</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PathogenLevelImpl#getSource <em>Source</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PathogenLevelImpl extends RowImpl implements PathogenLevel
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PathogenLevelImpl()
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
		return SitePackage.Literals.PATHOGEN_LEVEL;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PathogenGroup getGroup()
	{
		return (PathogenGroup)eGet(SitePackage.Literals.PATHOGEN_LEVEL__GROUP, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGroup(PathogenGroup newGroup)
	{
		eSet(SitePackage.Literals.PATHOGEN_LEVEL__GROUP, newGroup);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPathogen()
	{
		return (String)eGet(SitePackage.Literals.PATHOGEN_LEVEL__PATHOGEN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPathogen(String newPathogen)
	{
		eSet(SitePackage.Literals.PATHOGEN_LEVEL__PATHOGEN, newPathogen);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPerLitre()
	{
		return (Quantity)eGet(SitePackage.Literals.PATHOGEN_LEVEL__PER_LITRE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPerLitre(Quantity newPerLitre)
	{
		eSet(SitePackage.Literals.PATHOGEN_LEVEL__PER_LITRE, newPerLitre);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLow()
	{
		return (Quantity)eGet(SitePackage.Literals.PATHOGEN_LEVEL__LOW, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLow(Quantity newLow)
	{
		eSet(SitePackage.Literals.PATHOGEN_LEVEL__LOW, newLow);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getHigh()
	{
		return (Quantity)eGet(SitePackage.Literals.PATHOGEN_LEVEL__HIGH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHigh(Quantity newHigh)
	{
		eSet(SitePackage.Literals.PATHOGEN_LEVEL__HIGH, newHigh);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource()
	{
		return (String)eGet(SitePackage.Literals.PATHOGEN_LEVEL__SOURCE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource)
	{
		eSet(SitePackage.Literals.PATHOGEN_LEVEL__SOURCE, newSource);
	}

} //PathogenLevelImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.quantity.Quantity;

import org.roofspring.site.Fitting;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.PipeNode;
import org.roofspring.site.PipeRun;
import org.roofspring.site.ProfilePoint;
import org.roofspring.site.RunUse;
import org.roofspring.site.SitePackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Pipe Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getUse <em>Use</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getFrom <em>From</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getTo <em>To</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getLength <em>Length</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getWallThickness <em>Wall Thickness</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getClosureTime <em>Closure Time</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getPressureClass <em>Pressure Class</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getRoughness <em>Roughness</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getAgedRoughness <em>Aged Roughness</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getFittings <em>Fittings</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.PipeRunImpl#getProfile <em>Profile</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PipeRunImpl extends ComponentImpl implements PipeRun
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PipeRunImpl()
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
		return SitePackage.Literals.PIPE_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public RunUse getUse()
	{
		return (RunUse)eGet(SitePackage.Literals.PIPE_RUN__USE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUse(RunUse newUse)
	{
		eSet(SitePackage.Literals.PIPE_RUN__USE, newUse);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PipeNode getFrom()
	{
		return (PipeNode)eGet(SitePackage.Literals.PIPE_RUN__FROM, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFrom(PipeNode newFrom)
	{
		eSet(SitePackage.Literals.PIPE_RUN__FROM, newFrom);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PipeNode getTo()
	{
		return (PipeNode)eGet(SitePackage.Literals.PIPE_RUN__TO, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTo(PipeNode newTo)
	{
		eSet(SitePackage.Literals.PIPE_RUN__TO, newTo);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getBore()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__BORE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBore(Quantity newBore)
	{
		eSet(SitePackage.Literals.PIPE_RUN__BORE, newBore);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getLength()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__LENGTH, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Quantity newLength)
	{
		eSet(SitePackage.Literals.PIPE_RUN__LENGTH, newLength);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PipeMaterial getMaterial()
	{
		return (PipeMaterial)eGet(SitePackage.Literals.PIPE_RUN__MATERIAL, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(PipeMaterial newMaterial)
	{
		eSet(SitePackage.Literals.PIPE_RUN__MATERIAL, newMaterial);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getWallThickness()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__WALL_THICKNESS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWallThickness(Quantity newWallThickness)
	{
		eSet(SitePackage.Literals.PIPE_RUN__WALL_THICKNESS, newWallThickness);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getClosureTime()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__CLOSURE_TIME, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClosureTime(Quantity newClosureTime)
	{
		eSet(SitePackage.Literals.PIPE_RUN__CLOSURE_TIME, newClosureTime);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getPressureClass()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__PRESSURE_CLASS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPressureClass(Quantity newPressureClass)
	{
		eSet(SitePackage.Literals.PIPE_RUN__PRESSURE_CLASS, newPressureClass);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getRoughness()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__ROUGHNESS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRoughness(Quantity newRoughness)
	{
		eSet(SitePackage.Literals.PIPE_RUN__ROUGHNESS, newRoughness);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Quantity getAgedRoughness()
	{
		return (Quantity)eGet(SitePackage.Literals.PIPE_RUN__AGED_ROUGHNESS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAgedRoughness(Quantity newAgedRoughness)
	{
		eSet(SitePackage.Literals.PIPE_RUN__AGED_ROUGHNESS, newAgedRoughness);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<Fitting> getFittings()
	{
		return (EList<Fitting>)eGet(SitePackage.Literals.PIPE_RUN__FITTINGS, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public EList<ProfilePoint> getProfile()
	{
		return (EList<ProfilePoint>)eGet(SitePackage.Literals.PIPE_RUN__PROFILE, true);
	}

} //PipeRunImpl

/**
 */
package org.roofspring.site.internal.impl;

import org.eclipse.emf.ecore.EClass;

import org.roofspring.site.ExtensionEntry;
import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;
import org.roofspring.site.ValueType;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Extension Entry</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.internal.impl.ExtensionEntryImpl#getPlugin <em>Plugin</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ExtensionEntryImpl#getSchema <em>Schema</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ExtensionEntryImpl#getKey <em>Key</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ExtensionEntryImpl#getType <em>Type</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ExtensionEntryImpl#getValue <em>Value</em>}</li>
 *   <li>{@link org.roofspring.site.internal.impl.ExtensionEntryImpl#getElement <em>Element</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ExtensionEntryImpl extends ElementImpl implements ExtensionEntry
{
	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExtensionEntryImpl()
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
		return SitePackage.Literals.EXTENSION_ENTRY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPlugin()
	{
		return (String)eGet(SitePackage.Literals.EXTENSION_ENTRY__PLUGIN, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlugin(String newPlugin)
	{
		eSet(SitePackage.Literals.EXTENSION_ENTRY__PLUGIN, newPlugin);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getSchema()
	{
		return (Integer)eGet(SitePackage.Literals.EXTENSION_ENTRY__SCHEMA, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSchema(int newSchema)
	{
		eSet(SitePackage.Literals.EXTENSION_ENTRY__SCHEMA, newSchema);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKey()
	{
		return (String)eGet(SitePackage.Literals.EXTENSION_ENTRY__KEY, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKey(String newKey)
	{
		eSet(SitePackage.Literals.EXTENSION_ENTRY__KEY, newKey);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ValueType getType()
	{
		return (ValueType)eGet(SitePackage.Literals.EXTENSION_ENTRY__TYPE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setType(ValueType newType)
	{
		eSet(SitePackage.Literals.EXTENSION_ENTRY__TYPE, newType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getValue()
	{
		return (String)eGet(SitePackage.Literals.EXTENSION_ENTRY__VALUE, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValue(String newValue)
	{
		eSet(SitePackage.Literals.EXTENSION_ENTRY__VALUE, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NamedElement getElement()
	{
		return (NamedElement)eGet(SitePackage.Literals.EXTENSION_ENTRY__ELEMENT, true);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElement(NamedElement newElement)
	{
		eSet(SitePackage.Literals.EXTENSION_ENTRY__ELEMENT, newElement);
	}

} //ExtensionEntryImpl

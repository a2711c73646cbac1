/**
 */
package org.roofspring.site;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Extension Entry</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A value that belongs to a plug-in; kept and written back even when the plug-in is absent.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.roofspring.site.ExtensionEntry#getPlugin <em>Plugin</em>}</li>
 *   <li>{@link org.roofspring.site.ExtensionEntry#getSchema <em>Schema</em>}</li>
 *   <li>{@link org.roofspring.site.ExtensionEntry#getKey <em>Key</em>}</li>
 *   <li>{@link org.roofspring.site.ExtensionEntry#getType <em>Type</em>}</li>
 *   <li>{@link org.roofspring.site.ExtensionEntry#getValue <em>Value</em>}</li>
 *   <li>{@link org.roofspring.site.ExtensionEntry#getElement <em>Element</em>}</li>
 * </ul>
 *
 * @see org.roofspring.site.SitePackage#getExtensionEntry()
 * @model
 * @generated
 */
public interface ExtensionEntry extends Element
{
	/**
	 * Returns the value of the '<em><b>Plugin</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Identifier of the plug-in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Plugin</em>' attribute.
	 * @see #setPlugin(String)
	 * @see org.roofspring.site.SitePackage#getExtensionEntry_Plugin()
	 * @model required="true"
	 * @generated
	 */
	String getPlugin();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ExtensionEntry#getPlugin <em>Plugin</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Plugin</em>' attribute.
	 * @see #getPlugin()
	 * @generated
	 */
	void setPlugin(String value);

	/**
	 * Returns the value of the '<em><b>Schema</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Version of the plug-in's own schema. Range from 1 upwards. Default 1.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Schema</em>' attribute.
	 * @see #setSchema(int)
	 * @see org.roofspring.site.SitePackage#getExtensionEntry_Schema()
	 * @model default="1"
	 *        annotation="http://www.roofspring.org/value min='1'"
	 * @generated
	 */
	int getSchema();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ExtensionEntry#getSchema <em>Schema</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Schema</em>' attribute.
	 * @see #getSchema()
	 * @generated
	 */
	void setSchema(int value);

	/**
	 * Returns the value of the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Key within the plug-in.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Key</em>' attribute.
	 * @see #setKey(String)
	 * @see org.roofspring.site.SitePackage#getExtensionEntry_Key()
	 * @model required="true"
	 * @generated
	 */
	String getKey();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ExtensionEntry#getKey <em>Key</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Key</em>' attribute.
	 * @see #getKey()
	 * @generated
	 */
	void setKey(String value);

	/**
	 * Returns the value of the '<em><b>Type</b></em>' attribute.
	 * The literals are from the enumeration {@link org.roofspring.site.ValueType}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Type of the value.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Type</em>' attribute.
	 * @see org.roofspring.site.ValueType
	 * @see #setType(ValueType)
	 * @see org.roofspring.site.SitePackage#getExtensionEntry_Type()
	 * @model
	 * @generated
	 */
	ValueType getType();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ExtensionEntry#getType <em>Type</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Type</em>' attribute.
	 * @see org.roofspring.site.ValueType
	 * @see #getType()
	 * @generated
	 */
	void setType(ValueType value);

	/**
	 * Returns the value of the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Value as text.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Value</em>' attribute.
	 * @see #setValue(String)
	 * @see org.roofspring.site.SitePackage#getExtensionEntry_Value()
	 * @model
	 * @generated
	 */
	String getValue();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ExtensionEntry#getValue <em>Value</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Value</em>' attribute.
	 * @see #getValue()
	 * @generated
	 */
	void setValue(String value);

	/**
	 * Returns the value of the '<em><b>Element</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Element it belongs to; not given means the whole site.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Element</em>' reference.
	 * @see #setElement(NamedElement)
	 * @see org.roofspring.site.SitePackage#getExtensionEntry_Element()
	 * @model resolveProxies="false"
	 * @generated
	 */
	NamedElement getElement();

	/**
	 * Sets the value of the '{@link org.roofspring.site.ExtensionEntry#getElement <em>Element</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Element</em>' reference.
	 * @see #getElement()
	 * @generated
	 */
	void setElement(NamedElement value);

} // ExtensionEntry

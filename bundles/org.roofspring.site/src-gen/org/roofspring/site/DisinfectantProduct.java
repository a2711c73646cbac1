/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Disinfectant Product</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * In which form chlorine is bought.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getDisinfectantProduct()
 * @model
 * @generated
 */
public enum DisinfectantProduct implements Enumerator
{
	/**
	 * The '<em><b>Unstated</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not stated.
	 * <!-- end-model-doc -->
	 * @see #UNSTATED_VALUE
	 * @generated
	 * @ordered
	 */
	UNSTATED(0, "unstated", "unstated"),

	/**
	 * The '<em><b>Liquid</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sodium hypochlorite solution (bleach).
	 * <!-- end-model-doc -->
	 * @see #LIQUID_VALUE
	 * @generated
	 * @ordered
	 */
	LIQUID(1, "liquid", "liquid"),

	/**
	 * The '<em><b>Granules</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Calcium hypochlorite granules.
	 * <!-- end-model-doc -->
	 * @see #GRANULES_VALUE
	 * @generated
	 * @ordered
	 */
	GRANULES(2, "granules", "granules"),

	/**
	 * The '<em><b>Tablets</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tablets of stated strength.
	 * <!-- end-model-doc -->
	 * @see #TABLETS_VALUE
	 * @generated
	 * @ordered
	 */
	TABLETS(3, "tablets", "tablets");

	/**
	 * The '<em><b>Unstated</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Not stated.
	 * <!-- end-model-doc -->
	 * @see #UNSTATED
	 * @model name="unstated"
	 * @generated
	 * @ordered
	 */
	public static final int UNSTATED_VALUE = 0;

	/**
	 * The '<em><b>Liquid</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sodium hypochlorite solution (bleach).
	 * <!-- end-model-doc -->
	 * @see #LIQUID
	 * @model name="liquid"
	 * @generated
	 * @ordered
	 */
	public static final int LIQUID_VALUE = 1;

	/**
	 * The '<em><b>Granules</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Calcium hypochlorite granules.
	 * <!-- end-model-doc -->
	 * @see #GRANULES
	 * @model name="granules"
	 * @generated
	 * @ordered
	 */
	public static final int GRANULES_VALUE = 2;

	/**
	 * The '<em><b>Tablets</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tablets of stated strength.
	 * <!-- end-model-doc -->
	 * @see #TABLETS
	 * @model name="tablets"
	 * @generated
	 * @ordered
	 */
	public static final int TABLETS_VALUE = 3;

	/**
	 * An array of all the '<em><b>Disinfectant Product</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final DisinfectantProduct[] VALUES_ARRAY =
		new DisinfectantProduct[]
		{
			UNSTATED,
			LIQUID,
			GRANULES,
			TABLETS,
		};

	/**
	 * A public read-only list of all the '<em><b>Disinfectant Product</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<DisinfectantProduct> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Disinfectant Product</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DisinfectantProduct get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			DisinfectantProduct result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Disinfectant Product</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DisinfectantProduct getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			DisinfectantProduct result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Disinfectant Product</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DisinfectantProduct get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case LIQUID_VALUE: return LIQUID;
			case GRANULES_VALUE: return GRANULES;
			case TABLETS_VALUE: return TABLETS;
		}
		return null;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final int value;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String name;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private final String literal;

	/**
	 * Only this class can construct instances.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private DisinfectantProduct(int value, String name, String literal)
	{
		this.value = value;
		this.name = name;
		this.literal = literal;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getValue()
	{
	  return value;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName()
	{
	  return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLiteral()
	{
	  return literal;
	}

	/**
	 * Returns the literal value of the enumerator, which is its string representation.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		return literal;
	}
	
} //DisinfectantProduct

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Strength Basis</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What the strength of a chlorine product refers to.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getStrengthBasis()
 * @model
 * @generated
 */
public enum StrengthBasis implements Enumerator
{
	/**
	 * The '<em><b>Auto</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Weight for volume for a liquid, weight for weight for a solid.
	 * <!-- end-model-doc -->
	 * @see #AUTO_VALUE
	 * @generated
	 * @ordered
	 */
	AUTO(0, "auto", "auto"),

	/**
	 * The '<em><b>Weight Per Volume</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Grams of available chlorine in 100 mL of product.
	 * <!-- end-model-doc -->
	 * @see #WEIGHT_PER_VOLUME_VALUE
	 * @generated
	 * @ordered
	 */
	WEIGHT_PER_VOLUME(1, "weightPerVolume", "weightPerVolume"),

	/**
	 * The '<em><b>Weight Per Weight</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Grams of available chlorine in 100 g of product.
	 * <!-- end-model-doc -->
	 * @see #WEIGHT_PER_WEIGHT_VALUE
	 * @generated
	 * @ordered
	 */
	WEIGHT_PER_WEIGHT(2, "weightPerWeight", "weightPerWeight");

	/**
	 * The '<em><b>Auto</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Weight for volume for a liquid, weight for weight for a solid.
	 * <!-- end-model-doc -->
	 * @see #AUTO
	 * @model name="auto"
	 * @generated
	 * @ordered
	 */
	public static final int AUTO_VALUE = 0;

	/**
	 * The '<em><b>Weight Per Volume</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Grams of available chlorine in 100 mL of product.
	 * <!-- end-model-doc -->
	 * @see #WEIGHT_PER_VOLUME
	 * @model name="weightPerVolume"
	 * @generated
	 * @ordered
	 */
	public static final int WEIGHT_PER_VOLUME_VALUE = 1;

	/**
	 * The '<em><b>Weight Per Weight</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Grams of available chlorine in 100 g of product.
	 * <!-- end-model-doc -->
	 * @see #WEIGHT_PER_WEIGHT
	 * @model name="weightPerWeight"
	 * @generated
	 * @ordered
	 */
	public static final int WEIGHT_PER_WEIGHT_VALUE = 2;

	/**
	 * An array of all the '<em><b>Strength Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final StrengthBasis[] VALUES_ARRAY =
		new StrengthBasis[]
		{
			AUTO,
			WEIGHT_PER_VOLUME,
			WEIGHT_PER_WEIGHT,
		};

	/**
	 * A public read-only list of all the '<em><b>Strength Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<StrengthBasis> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Strength Basis</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrengthBasis get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			StrengthBasis result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Strength Basis</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrengthBasis getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			StrengthBasis result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Strength Basis</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StrengthBasis get(int value)
	{
		switch (value)
		{
			case AUTO_VALUE: return AUTO;
			case WEIGHT_PER_VOLUME_VALUE: return WEIGHT_PER_VOLUME;
			case WEIGHT_PER_WEIGHT_VALUE: return WEIGHT_PER_WEIGHT;
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
	private StrengthBasis(int value, String name, String literal)
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
	
} //StrengthBasis

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Purpose</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What water is used for; it sets how clean it must be.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getPurpose()
 * @model
 * @generated
 */
public enum Purpose implements Enumerator
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
	 * The '<em><b>Garden</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Watering plants that are not eaten raw, or the soil of those that are.
	 * <!-- end-model-doc -->
	 * @see #GARDEN_VALUE
	 * @generated
	 * @ordered
	 */
	GARDEN(1, "garden", "garden"),

	/**
	 * The '<em><b>Livestock</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Drinking water of animals.
	 * <!-- end-model-doc -->
	 * @see #LIVESTOCK_VALUE
	 * @generated
	 * @ordered
	 */
	LIVESTOCK(2, "livestock", "livestock"),

	/**
	 * The '<em><b>Flushing</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flushing toilets.
	 * <!-- end-model-doc -->
	 * @see #FLUSHING_VALUE
	 * @generated
	 * @ordered
	 */
	FLUSHING(3, "flushing", "flushing"),

	/**
	 * The '<em><b>Laundry</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Washing clothes.
	 * <!-- end-model-doc -->
	 * @see #LAUNDRY_VALUE
	 * @generated
	 * @ordered
	 */
	LAUNDRY(4, "laundry", "laundry"),

	/**
	 * The '<em><b>Washing</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Washing hands and body.
	 * <!-- end-model-doc -->
	 * @see #WASHING_VALUE
	 * @generated
	 * @ordered
	 */
	WASHING(5, "washing", "washing"),

	/**
	 * The '<em><b>Cooking</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cooking and washing of food and dishes.
	 * <!-- end-model-doc -->
	 * @see #COOKING_VALUE
	 * @generated
	 * @ordered
	 */
	COOKING(6, "cooking", "cooking"),

	/**
	 * The '<em><b>Drinking</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Drinking, brushing teeth, mixing infant food.
	 * <!-- end-model-doc -->
	 * @see #DRINKING_VALUE
	 * @generated
	 * @ordered
	 */
	DRINKING(7, "drinking", "drinking"),

	/**
	 * The '<em><b>Cleaning</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cleaning floors and rooms.
	 * <!-- end-model-doc -->
	 * @see #CLEANING_VALUE
	 * @generated
	 * @ordered
	 */
	CLEANING(8, "cleaning", "cleaning"),

	/**
	 * The '<em><b>Construction</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Building work.
	 * <!-- end-model-doc -->
	 * @see #CONSTRUCTION_VALUE
	 * @generated
	 * @ordered
	 */
	CONSTRUCTION(9, "construction", "construction"),

	/**
	 * The '<em><b>Other</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Something else, described in the note.
	 * <!-- end-model-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(10, "other", "other");

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
	 * The '<em><b>Garden</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Watering plants that are not eaten raw, or the soil of those that are.
	 * <!-- end-model-doc -->
	 * @see #GARDEN
	 * @model name="garden"
	 * @generated
	 * @ordered
	 */
	public static final int GARDEN_VALUE = 1;

	/**
	 * The '<em><b>Livestock</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Drinking water of animals.
	 * <!-- end-model-doc -->
	 * @see #LIVESTOCK
	 * @model name="livestock"
	 * @generated
	 * @ordered
	 */
	public static final int LIVESTOCK_VALUE = 2;

	/**
	 * The '<em><b>Flushing</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flushing toilets.
	 * <!-- end-model-doc -->
	 * @see #FLUSHING
	 * @model name="flushing"
	 * @generated
	 * @ordered
	 */
	public static final int FLUSHING_VALUE = 3;

	/**
	 * The '<em><b>Laundry</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Washing clothes.
	 * <!-- end-model-doc -->
	 * @see #LAUNDRY
	 * @model name="laundry"
	 * @generated
	 * @ordered
	 */
	public static final int LAUNDRY_VALUE = 4;

	/**
	 * The '<em><b>Washing</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Washing hands and body.
	 * <!-- end-model-doc -->
	 * @see #WASHING
	 * @model name="washing"
	 * @generated
	 * @ordered
	 */
	public static final int WASHING_VALUE = 5;

	/**
	 * The '<em><b>Cooking</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cooking and washing of food and dishes.
	 * <!-- end-model-doc -->
	 * @see #COOKING
	 * @model name="cooking"
	 * @generated
	 * @ordered
	 */
	public static final int COOKING_VALUE = 6;

	/**
	 * The '<em><b>Drinking</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Drinking, brushing teeth, mixing infant food.
	 * <!-- end-model-doc -->
	 * @see #DRINKING
	 * @model name="drinking"
	 * @generated
	 * @ordered
	 */
	public static final int DRINKING_VALUE = 7;

	/**
	 * The '<em><b>Cleaning</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cleaning floors and rooms.
	 * <!-- end-model-doc -->
	 * @see #CLEANING
	 * @model name="cleaning"
	 * @generated
	 * @ordered
	 */
	public static final int CLEANING_VALUE = 8;

	/**
	 * The '<em><b>Construction</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Building work.
	 * <!-- end-model-doc -->
	 * @see #CONSTRUCTION
	 * @model name="construction"
	 * @generated
	 * @ordered
	 */
	public static final int CONSTRUCTION_VALUE = 9;

	/**
	 * The '<em><b>Other</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Something else, described in the note.
	 * <!-- end-model-doc -->
	 * @see #OTHER
	 * @model name="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 10;

	/**
	 * An array of all the '<em><b>Purpose</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Purpose[] VALUES_ARRAY =
		new Purpose[]
		{
			UNSTATED,
			GARDEN,
			LIVESTOCK,
			FLUSHING,
			LAUNDRY,
			WASHING,
			COOKING,
			DRINKING,
			CLEANING,
			CONSTRUCTION,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Purpose</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Purpose> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Purpose</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Purpose get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			Purpose result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Purpose</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Purpose getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			Purpose result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Purpose</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Purpose get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case GARDEN_VALUE: return GARDEN;
			case LIVESTOCK_VALUE: return LIVESTOCK;
			case FLUSHING_VALUE: return FLUSHING;
			case LAUNDRY_VALUE: return LAUNDRY;
			case WASHING_VALUE: return WASHING;
			case COOKING_VALUE: return COOKING;
			case DRINKING_VALUE: return DRINKING;
			case CLEANING_VALUE: return CLEANING;
			case CONSTRUCTION_VALUE: return CONSTRUCTION;
			case OTHER_VALUE: return OTHER;
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
	private Purpose(int value, String name, String literal)
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
	
} //Purpose

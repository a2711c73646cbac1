/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Unit Preference</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * In which units a person wants to read; never changes a number.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getUnitPreference()
 * @model
 * @generated
 */
public enum UnitPreference implements Enumerator
{
	/**
	 * The '<em><b>Metric</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metric units.
	 * <!-- end-model-doc -->
	 * @see #METRIC_VALUE
	 * @generated
	 * @ordered
	 */
	METRIC(0, "metric", "metric"),

	/**
	 * The '<em><b>Us Customary</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * US customary units.
	 * <!-- end-model-doc -->
	 * @see #US_CUSTOMARY_VALUE
	 * @generated
	 * @ordered
	 */
	US_CUSTOMARY(1, "usCustomary", "usCustomary"),

	/**
	 * The '<em><b>Imperial</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metric units but for imperial gallons, feet and inches.
	 * <!-- end-model-doc -->
	 * @see #IMPERIAL_VALUE
	 * @generated
	 * @ordered
	 */
	IMPERIAL(2, "imperial", "imperial");

	/**
	 * The '<em><b>Metric</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metric units.
	 * <!-- end-model-doc -->
	 * @see #METRIC
	 * @model name="metric"
	 * @generated
	 * @ordered
	 */
	public static final int METRIC_VALUE = 0;

	/**
	 * The '<em><b>Us Customary</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * US customary units.
	 * <!-- end-model-doc -->
	 * @see #US_CUSTOMARY
	 * @model name="usCustomary"
	 * @generated
	 * @ordered
	 */
	public static final int US_CUSTOMARY_VALUE = 1;

	/**
	 * The '<em><b>Imperial</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Metric units but for imperial gallons, feet and inches.
	 * <!-- end-model-doc -->
	 * @see #IMPERIAL
	 * @model name="imperial"
	 * @generated
	 * @ordered
	 */
	public static final int IMPERIAL_VALUE = 2;

	/**
	 * An array of all the '<em><b>Unit Preference</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final UnitPreference[] VALUES_ARRAY =
		new UnitPreference[]
		{
			METRIC,
			US_CUSTOMARY,
			IMPERIAL,
		};

	/**
	 * A public read-only list of all the '<em><b>Unit Preference</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<UnitPreference> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Unit Preference</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static UnitPreference get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			UnitPreference result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Unit Preference</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static UnitPreference getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			UnitPreference result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Unit Preference</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static UnitPreference get(int value)
	{
		switch (value)
		{
			case METRIC_VALUE: return METRIC;
			case US_CUSTOMARY_VALUE: return US_CUSTOMARY;
			case IMPERIAL_VALUE: return IMPERIAL;
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
	private UnitPreference(int value, String name, String literal)
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
	
} //UnitPreference

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Top Up Source</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Where water from outside comes from.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getTopUpSource()
 * @model
 * @generated
 */
public enum TopUpSource implements Enumerator
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
	 * The '<em><b>Tanker</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lorry with a tank.
	 * <!-- end-model-doc -->
	 * @see #TANKER_VALUE
	 * @generated
	 * @ordered
	 */
	TANKER(1, "tanker", "tanker"),

	/**
	 * The '<em><b>Mains</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A piped supply.
	 * <!-- end-model-doc -->
	 * @see #MAINS_VALUE
	 * @generated
	 * @ordered
	 */
	MAINS(2, "mains", "mains"),

	/**
	 * The '<em><b>Borehole</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A well or borehole.
	 * <!-- end-model-doc -->
	 * @see #BOREHOLE_VALUE
	 * @generated
	 * @ordered
	 */
	BOREHOLE(3, "borehole", "borehole"),

	/**
	 * The '<em><b>Carried</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Carried by people or animals.
	 * <!-- end-model-doc -->
	 * @see #CARRIED_VALUE
	 * @generated
	 * @ordered
	 */
	CARRIED(4, "carried", "carried");

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
	 * The '<em><b>Tanker</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lorry with a tank.
	 * <!-- end-model-doc -->
	 * @see #TANKER
	 * @model name="tanker"
	 * @generated
	 * @ordered
	 */
	public static final int TANKER_VALUE = 1;

	/**
	 * The '<em><b>Mains</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A piped supply.
	 * <!-- end-model-doc -->
	 * @see #MAINS
	 * @model name="mains"
	 * @generated
	 * @ordered
	 */
	public static final int MAINS_VALUE = 2;

	/**
	 * The '<em><b>Borehole</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A well or borehole.
	 * <!-- end-model-doc -->
	 * @see #BOREHOLE
	 * @model name="borehole"
	 * @generated
	 * @ordered
	 */
	public static final int BOREHOLE_VALUE = 3;

	/**
	 * The '<em><b>Carried</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Carried by people or animals.
	 * <!-- end-model-doc -->
	 * @see #CARRIED
	 * @model name="carried"
	 * @generated
	 * @ordered
	 */
	public static final int CARRIED_VALUE = 4;

	/**
	 * An array of all the '<em><b>Top Up Source</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TopUpSource[] VALUES_ARRAY =
		new TopUpSource[]
		{
			UNSTATED,
			TANKER,
			MAINS,
			BOREHOLE,
			CARRIED,
		};

	/**
	 * A public read-only list of all the '<em><b>Top Up Source</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TopUpSource> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Top Up Source</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TopUpSource get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TopUpSource result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Top Up Source</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TopUpSource getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TopUpSource result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Top Up Source</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TopUpSource get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case TANKER_VALUE: return TANKER;
			case MAINS_VALUE: return MAINS;
			case BOREHOLE_VALUE: return BOREHOLE;
			case CARRIED_VALUE: return CARRIED;
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
	private TopUpSource(int value, String name, String literal)
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
	
} //TopUpSource

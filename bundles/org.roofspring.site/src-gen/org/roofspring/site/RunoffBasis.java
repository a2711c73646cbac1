/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Runoff Basis</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a runoff coefficient already holds.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getRunoffBasis()
 * @model
 * @generated
 */
public enum RunoffBasis implements Enumerator
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
	 * The '<em><b>Event</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Losses of one storm after wetting; initial loss is taken off apart from it.
	 * <!-- end-model-doc -->
	 * @see #EVENT_VALUE
	 * @generated
	 * @ordered
	 */
	EVENT(1, "event", "event"),

	/**
	 * The '<em><b>Long Term</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * All losses of a year, initial loss and splash among them; nothing else is to be taken off.
	 * <!-- end-model-doc -->
	 * @see #LONG_TERM_VALUE
	 * @generated
	 * @ordered
	 */
	LONG_TERM(2, "longTerm", "longTerm");

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
	 * The '<em><b>Event</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Losses of one storm after wetting; initial loss is taken off apart from it.
	 * <!-- end-model-doc -->
	 * @see #EVENT
	 * @model name="event"
	 * @generated
	 * @ordered
	 */
	public static final int EVENT_VALUE = 1;

	/**
	 * The '<em><b>Long Term</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * All losses of a year, initial loss and splash among them; nothing else is to be taken off.
	 * <!-- end-model-doc -->
	 * @see #LONG_TERM
	 * @model name="longTerm"
	 * @generated
	 * @ordered
	 */
	public static final int LONG_TERM_VALUE = 2;

	/**
	 * An array of all the '<em><b>Runoff Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RunoffBasis[] VALUES_ARRAY =
		new RunoffBasis[]
		{
			UNSTATED,
			EVENT,
			LONG_TERM,
		};

	/**
	 * A public read-only list of all the '<em><b>Runoff Basis</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RunoffBasis> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Runoff Basis</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RunoffBasis get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RunoffBasis result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Runoff Basis</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RunoffBasis getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RunoffBasis result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Runoff Basis</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RunoffBasis get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case EVENT_VALUE: return EVENT;
			case LONG_TERM_VALUE: return LONG_TERM;
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
	private RunoffBasis(int value, String name, String literal)
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
	
} //RunoffBasis

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Incident Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What went wrong.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getIncidentKind()
 * @model
 * @generated
 */
public enum IncidentKind implements Enumerator
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
	 * The '<em><b>Contamination</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The water was spoiled.
	 * <!-- end-model-doc -->
	 * @see #CONTAMINATION_VALUE
	 * @generated
	 * @ordered
	 */
	CONTAMINATION(1, "contamination", "contamination"),

	/**
	 * The '<em><b>Illness</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People fell ill and the water may be the cause.
	 * <!-- end-model-doc -->
	 * @see #ILLNESS_VALUE
	 * @generated
	 * @ordered
	 */
	ILLNESS(2, "illness", "illness"),

	/**
	 * The '<em><b>Burst</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A pipe or tank broke.
	 * <!-- end-model-doc -->
	 * @see #BURST_VALUE
	 * @generated
	 * @ordered
	 */
	BURST(3, "burst", "burst"),

	/**
	 * The '<em><b>Leak</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water was lost slowly.
	 * <!-- end-model-doc -->
	 * @see #LEAK_VALUE
	 * @generated
	 * @ordered
	 */
	LEAK(4, "leak", "leak"),

	/**
	 * The '<em><b>Tap Left Open</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tap ran unnoticed.
	 * <!-- end-model-doc -->
	 * @see #TAP_LEFT_OPEN_VALUE
	 * @generated
	 * @ordered
	 */
	TAP_LEFT_OPEN(5, "tapLeftOpen", "tapLeftOpen"),

	/**
	 * The '<em><b>Pump Failure</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The pump did not work.
	 * <!-- end-model-doc -->
	 * @see #PUMP_FAILURE_VALUE
	 * @generated
	 * @ordered
	 */
	PUMP_FAILURE(6, "pumpFailure", "pumpFailure"),

	/**
	 * The '<em><b>Power Failure</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * There was no power.
	 * <!-- end-model-doc -->
	 * @see #POWER_FAILURE_VALUE
	 * @generated
	 * @ordered
	 */
	POWER_FAILURE(7, "powerFailure", "powerFailure"),

	/**
	 * The '<em><b>Ran Dry</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tank was empty.
	 * <!-- end-model-doc -->
	 * @see #RAN_DRY_VALUE
	 * @generated
	 * @ordered
	 */
	RAN_DRY(8, "ranDry", "ranDry"),

	/**
	 * The '<em><b>Overflow Damage</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Spilled water did harm.
	 * <!-- end-model-doc -->
	 * @see #OVERFLOW_DAMAGE_VALUE
	 * @generated
	 * @ordered
	 */
	OVERFLOW_DAMAGE(9, "overflowDamage", "overflowDamage"),

	/**
	 * The '<em><b>Blockage</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A gutter, pipe or filter was blocked.
	 * <!-- end-model-doc -->
	 * @see #BLOCKAGE_VALUE
	 * @generated
	 * @ordered
	 */
	BLOCKAGE(10, "blockage", "blockage"),

	/**
	 * The '<em><b>Theft</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water or parts were taken.
	 * <!-- end-model-doc -->
	 * @see #THEFT_VALUE
	 * @generated
	 * @ordered
	 */
	THEFT(11, "theft", "theft"),

	/**
	 * The '<em><b>Injury</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A person was hurt.
	 * <!-- end-model-doc -->
	 * @see #INJURY_VALUE
	 * @generated
	 * @ordered
	 */
	INJURY(12, "injury", "injury"),

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
	OTHER(13, "other", "other");

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
	 * The '<em><b>Contamination</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The water was spoiled.
	 * <!-- end-model-doc -->
	 * @see #CONTAMINATION
	 * @model name="contamination"
	 * @generated
	 * @ordered
	 */
	public static final int CONTAMINATION_VALUE = 1;

	/**
	 * The '<em><b>Illness</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People fell ill and the water may be the cause.
	 * <!-- end-model-doc -->
	 * @see #ILLNESS
	 * @model name="illness"
	 * @generated
	 * @ordered
	 */
	public static final int ILLNESS_VALUE = 2;

	/**
	 * The '<em><b>Burst</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A pipe or tank broke.
	 * <!-- end-model-doc -->
	 * @see #BURST
	 * @model name="burst"
	 * @generated
	 * @ordered
	 */
	public static final int BURST_VALUE = 3;

	/**
	 * The '<em><b>Leak</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water was lost slowly.
	 * <!-- end-model-doc -->
	 * @see #LEAK
	 * @model name="leak"
	 * @generated
	 * @ordered
	 */
	public static final int LEAK_VALUE = 4;

	/**
	 * The '<em><b>Tap Left Open</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tap ran unnoticed.
	 * <!-- end-model-doc -->
	 * @see #TAP_LEFT_OPEN
	 * @model name="tapLeftOpen"
	 * @generated
	 * @ordered
	 */
	public static final int TAP_LEFT_OPEN_VALUE = 5;

	/**
	 * The '<em><b>Pump Failure</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The pump did not work.
	 * <!-- end-model-doc -->
	 * @see #PUMP_FAILURE
	 * @model name="pumpFailure"
	 * @generated
	 * @ordered
	 */
	public static final int PUMP_FAILURE_VALUE = 6;

	/**
	 * The '<em><b>Power Failure</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * There was no power.
	 * <!-- end-model-doc -->
	 * @see #POWER_FAILURE
	 * @model name="powerFailure"
	 * @generated
	 * @ordered
	 */
	public static final int POWER_FAILURE_VALUE = 7;

	/**
	 * The '<em><b>Ran Dry</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tank was empty.
	 * <!-- end-model-doc -->
	 * @see #RAN_DRY
	 * @model name="ranDry"
	 * @generated
	 * @ordered
	 */
	public static final int RAN_DRY_VALUE = 8;

	/**
	 * The '<em><b>Overflow Damage</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Spilled water did harm.
	 * <!-- end-model-doc -->
	 * @see #OVERFLOW_DAMAGE
	 * @model name="overflowDamage"
	 * @generated
	 * @ordered
	 */
	public static final int OVERFLOW_DAMAGE_VALUE = 9;

	/**
	 * The '<em><b>Blockage</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A gutter, pipe or filter was blocked.
	 * <!-- end-model-doc -->
	 * @see #BLOCKAGE
	 * @model name="blockage"
	 * @generated
	 * @ordered
	 */
	public static final int BLOCKAGE_VALUE = 10;

	/**
	 * The '<em><b>Theft</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water or parts were taken.
	 * <!-- end-model-doc -->
	 * @see #THEFT
	 * @model name="theft"
	 * @generated
	 * @ordered
	 */
	public static final int THEFT_VALUE = 11;

	/**
	 * The '<em><b>Injury</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A person was hurt.
	 * <!-- end-model-doc -->
	 * @see #INJURY
	 * @model name="injury"
	 * @generated
	 * @ordered
	 */
	public static final int INJURY_VALUE = 12;

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
	public static final int OTHER_VALUE = 13;

	/**
	 * An array of all the '<em><b>Incident Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final IncidentKind[] VALUES_ARRAY =
		new IncidentKind[]
		{
			UNSTATED,
			CONTAMINATION,
			ILLNESS,
			BURST,
			LEAK,
			TAP_LEFT_OPEN,
			PUMP_FAILURE,
			POWER_FAILURE,
			RAN_DRY,
			OVERFLOW_DAMAGE,
			BLOCKAGE,
			THEFT,
			INJURY,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Incident Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<IncidentKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Incident Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static IncidentKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			IncidentKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Incident Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static IncidentKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			IncidentKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Incident Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static IncidentKind get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case CONTAMINATION_VALUE: return CONTAMINATION;
			case ILLNESS_VALUE: return ILLNESS;
			case BURST_VALUE: return BURST;
			case LEAK_VALUE: return LEAK;
			case TAP_LEFT_OPEN_VALUE: return TAP_LEFT_OPEN;
			case PUMP_FAILURE_VALUE: return PUMP_FAILURE;
			case POWER_FAILURE_VALUE: return POWER_FAILURE;
			case RAN_DRY_VALUE: return RAN_DRY;
			case OVERFLOW_DAMAGE_VALUE: return OVERFLOW_DAMAGE;
			case BLOCKAGE_VALUE: return BLOCKAGE;
			case THEFT_VALUE: return THEFT;
			case INJURY_VALUE: return INJURY;
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
	private IncidentKind(int value, String name, String literal)
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
	
} //IncidentKind

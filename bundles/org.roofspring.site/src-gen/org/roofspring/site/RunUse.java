/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Run Use</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a run of pipe is for.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getRunUse()
 * @model
 * @generated
 */
public enum RunUse implements Enumerator
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
	 * The '<em><b>Rising Main</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a pump up to a tank.
	 * <!-- end-model-doc -->
	 * @see #RISING_MAIN_VALUE
	 * @generated
	 * @ordered
	 */
	RISING_MAIN(1, "risingMain", "risingMain"),

	/**
	 * The '<em><b>Suction</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a tank to a pump.
	 * <!-- end-model-doc -->
	 * @see #SUCTION_VALUE
	 * @generated
	 * @ordered
	 */
	SUCTION(2, "suction", "suction"),

	/**
	 * The '<em><b>Gravity Branch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a tank down to taps.
	 * <!-- end-model-doc -->
	 * @see #GRAVITY_BRANCH_VALUE
	 * @generated
	 * @ordered
	 */
	GRAVITY_BRANCH(3, "gravityBranch", "gravityBranch"),

	/**
	 * The '<em><b>Pressure Branch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a pump or pressure vessel to taps.
	 * <!-- end-model-doc -->
	 * @see #PRESSURE_BRANCH_VALUE
	 * @generated
	 * @ordered
	 */
	PRESSURE_BRANCH(4, "pressureBranch", "pressureBranch"),

	/**
	 * The '<em><b>Drain</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Overflow or drain away from the site's use.
	 * <!-- end-model-doc -->
	 * @see #DRAIN_VALUE
	 * @generated
	 * @ordered
	 */
	DRAIN(5, "drain", "drain");

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
	 * The '<em><b>Rising Main</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a pump up to a tank.
	 * <!-- end-model-doc -->
	 * @see #RISING_MAIN
	 * @model name="risingMain"
	 * @generated
	 * @ordered
	 */
	public static final int RISING_MAIN_VALUE = 1;

	/**
	 * The '<em><b>Suction</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a tank to a pump.
	 * <!-- end-model-doc -->
	 * @see #SUCTION
	 * @model name="suction"
	 * @generated
	 * @ordered
	 */
	public static final int SUCTION_VALUE = 2;

	/**
	 * The '<em><b>Gravity Branch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a tank down to taps.
	 * <!-- end-model-doc -->
	 * @see #GRAVITY_BRANCH
	 * @model name="gravityBranch"
	 * @generated
	 * @ordered
	 */
	public static final int GRAVITY_BRANCH_VALUE = 3;

	/**
	 * The '<em><b>Pressure Branch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From a pump or pressure vessel to taps.
	 * <!-- end-model-doc -->
	 * @see #PRESSURE_BRANCH
	 * @model name="pressureBranch"
	 * @generated
	 * @ordered
	 */
	public static final int PRESSURE_BRANCH_VALUE = 4;

	/**
	 * The '<em><b>Drain</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Overflow or drain away from the site's use.
	 * <!-- end-model-doc -->
	 * @see #DRAIN
	 * @model name="drain"
	 * @generated
	 * @ordered
	 */
	public static final int DRAIN_VALUE = 5;

	/**
	 * An array of all the '<em><b>Run Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RunUse[] VALUES_ARRAY =
		new RunUse[]
		{
			UNSTATED,
			RISING_MAIN,
			SUCTION,
			GRAVITY_BRANCH,
			PRESSURE_BRANCH,
			DRAIN,
		};

	/**
	 * A public read-only list of all the '<em><b>Run Use</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RunUse> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Run Use</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RunUse get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RunUse result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Run Use</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RunUse getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RunUse result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Run Use</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RunUse get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case RISING_MAIN_VALUE: return RISING_MAIN;
			case SUCTION_VALUE: return SUCTION;
			case GRAVITY_BRANCH_VALUE: return GRAVITY_BRANCH;
			case PRESSURE_BRANCH_VALUE: return PRESSURE_BRANCH;
			case DRAIN_VALUE: return DRAIN;
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
	private RunUse(int value, String name, String literal)
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
	
} //RunUse

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Energy Source</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What drives a pump or a lamp.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getEnergySource()
 * @model
 * @generated
 */
public enum EnergySource implements Enumerator
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
	 * The '<em><b>Grid</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mains electricity.
	 * <!-- end-model-doc -->
	 * @see #GRID_VALUE
	 * @generated
	 * @ordered
	 */
	GRID(1, "grid", "grid"),

	/**
	 * The '<em><b>Solar</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Solar panels without battery.
	 * <!-- end-model-doc -->
	 * @see #SOLAR_VALUE
	 * @generated
	 * @ordered
	 */
	SOLAR(2, "solar", "solar"),

	/**
	 * The '<em><b>Solar Battery</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Solar panels with battery.
	 * <!-- end-model-doc -->
	 * @see #SOLAR_BATTERY_VALUE
	 * @generated
	 * @ordered
	 */
	SOLAR_BATTERY(3, "solarBattery", "solarBattery"),

	/**
	 * The '<em><b>Generator</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Engine generator.
	 * <!-- end-model-doc -->
	 * @see #GENERATOR_VALUE
	 * @generated
	 * @ordered
	 */
	GENERATOR(4, "generator", "generator"),

	/**
	 * The '<em><b>Engine</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Engine on the shaft.
	 * <!-- end-model-doc -->
	 * @see #ENGINE_VALUE
	 * @generated
	 * @ordered
	 */
	ENGINE(5, "engine", "engine"),

	/**
	 * The '<em><b>Hand</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People.
	 * <!-- end-model-doc -->
	 * @see #HAND_VALUE
	 * @generated
	 * @ordered
	 */
	HAND(6, "hand", "hand");

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
	 * The '<em><b>Grid</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Mains electricity.
	 * <!-- end-model-doc -->
	 * @see #GRID
	 * @model name="grid"
	 * @generated
	 * @ordered
	 */
	public static final int GRID_VALUE = 1;

	/**
	 * The '<em><b>Solar</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Solar panels without battery.
	 * <!-- end-model-doc -->
	 * @see #SOLAR
	 * @model name="solar"
	 * @generated
	 * @ordered
	 */
	public static final int SOLAR_VALUE = 2;

	/**
	 * The '<em><b>Solar Battery</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Solar panels with battery.
	 * <!-- end-model-doc -->
	 * @see #SOLAR_BATTERY
	 * @model name="solarBattery"
	 * @generated
	 * @ordered
	 */
	public static final int SOLAR_BATTERY_VALUE = 3;

	/**
	 * The '<em><b>Generator</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Engine generator.
	 * <!-- end-model-doc -->
	 * @see #GENERATOR
	 * @model name="generator"
	 * @generated
	 * @ordered
	 */
	public static final int GENERATOR_VALUE = 4;

	/**
	 * The '<em><b>Engine</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Engine on the shaft.
	 * <!-- end-model-doc -->
	 * @see #ENGINE
	 * @model name="engine"
	 * @generated
	 * @ordered
	 */
	public static final int ENGINE_VALUE = 5;

	/**
	 * The '<em><b>Hand</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People.
	 * <!-- end-model-doc -->
	 * @see #HAND
	 * @model name="hand"
	 * @generated
	 * @ordered
	 */
	public static final int HAND_VALUE = 6;

	/**
	 * An array of all the '<em><b>Energy Source</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final EnergySource[] VALUES_ARRAY =
		new EnergySource[]
		{
			UNSTATED,
			GRID,
			SOLAR,
			SOLAR_BATTERY,
			GENERATOR,
			ENGINE,
			HAND,
		};

	/**
	 * A public read-only list of all the '<em><b>Energy Source</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<EnergySource> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Energy Source</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static EnergySource get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			EnergySource result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Energy Source</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static EnergySource getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			EnergySource result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Energy Source</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static EnergySource get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case GRID_VALUE: return GRID;
			case SOLAR_VALUE: return SOLAR;
			case SOLAR_BATTERY_VALUE: return SOLAR_BATTERY;
			case GENERATOR_VALUE: return GENERATOR;
			case ENGINE_VALUE: return ENGINE;
			case HAND_VALUE: return HAND;
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
	private EnergySource(int value, String name, String literal)
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
	
} //EnergySource

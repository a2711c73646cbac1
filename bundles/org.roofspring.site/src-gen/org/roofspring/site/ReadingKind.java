/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Reading Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What was read.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getReadingKind()
 * @model
 * @generated
 */
public enum ReadingKind implements Enumerator
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
	 * The '<em><b>Tank Level</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of water above the floor of a tank.
	 * <!-- end-model-doc -->
	 * @see #TANK_LEVEL_VALUE
	 * @generated
	 * @ordered
	 */
	TANK_LEVEL(1, "tankLevel", "tankLevel"),

	/**
	 * The '<em><b>Tank Volume</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of water in a tank.
	 * <!-- end-model-doc -->
	 * @see #TANK_VOLUME_VALUE
	 * @generated
	 * @ordered
	 */
	TANK_VOLUME(2, "tankVolume", "tankVolume"),

	/**
	 * The '<em><b>Water Meter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A meter's running total.
	 * <!-- end-model-doc -->
	 * @see #WATER_METER_VALUE
	 * @generated
	 * @ordered
	 */
	WATER_METER(3, "waterMeter", "waterMeter"),

	/**
	 * The '<em><b>Rain</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of rain in the day before.
	 * <!-- end-model-doc -->
	 * @see #RAIN_VALUE
	 * @generated
	 * @ordered
	 */
	RAIN(4, "rain", "rain"),

	/**
	 * The '<em><b>Free Chlorine</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Free chlorine.
	 * <!-- end-model-doc -->
	 * @see #FREE_CHLORINE_VALUE
	 * @generated
	 * @ordered
	 */
	FREE_CHLORINE(5, "freeChlorine", "freeChlorine"),

	/**
	 * The '<em><b>Turbidity</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Turbidity.
	 * <!-- end-model-doc -->
	 * @see #TURBIDITY_VALUE
	 * @generated
	 * @ordered
	 */
	TURBIDITY(6, "turbidity", "turbidity"),

	/**
	 * The '<em><b>Ph</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * pH of the water.
	 * <!-- end-model-doc -->
	 * @see #PH_VALUE
	 * @generated
	 * @ordered
	 */
	PH(7, "ph", "ph"),

	/**
	 * The '<em><b>Water Temperature</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Temperature of the water.
	 * <!-- end-model-doc -->
	 * @see #WATER_TEMPERATURE_VALUE
	 * @generated
	 * @ordered
	 */
	WATER_TEMPERATURE(8, "waterTemperature", "waterTemperature"),

	/**
	 * The '<em><b>Flow</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A flow, by bucket and stopwatch or meter.
	 * <!-- end-model-doc -->
	 * @see #FLOW_VALUE
	 * @generated
	 * @ordered
	 */
	FLOW(9, "flow", "flow"),

	/**
	 * The '<em><b>Pressure</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A pressure.
	 * <!-- end-model-doc -->
	 * @see #PRESSURE_VALUE
	 * @generated
	 * @ordered
	 */
	PRESSURE(10, "pressure", "pressure"),

	/**
	 * The '<em><b>Pump Hours</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Running hours of a pump, total.
	 * <!-- end-model-doc -->
	 * @see #PUMP_HOURS_VALUE
	 * @generated
	 * @ordered
	 */
	PUMP_HOURS(11, "pumpHours", "pumpHours"),

	/**
	 * The '<em><b>Energy Meter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An energy meter's running total.
	 * <!-- end-model-doc -->
	 * @see #ENERGY_METER_VALUE
	 * @generated
	 * @ordered
	 */
	ENERGY_METER(12, "energyMeter", "energyMeter"),

	/**
	 * The '<em><b>Leak Test Level</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Level during a leak test with all valves shut.
	 * <!-- end-model-doc -->
	 * @see #LEAK_TEST_LEVEL_VALUE
	 * @generated
	 * @ordered
	 */
	LEAK_TEST_LEVEL(13, "leakTestLevel", "leakTestLevel"),

	/**
	 * The '<em><b>Pressure Test</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure during a test of a pipe.
	 * <!-- end-model-doc -->
	 * @see #PRESSURE_TEST_VALUE
	 * @generated
	 * @ordered
	 */
	PRESSURE_TEST(14, "pressureTest", "pressureTest");

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
	 * The '<em><b>Tank Level</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of water above the floor of a tank.
	 * <!-- end-model-doc -->
	 * @see #TANK_LEVEL
	 * @model name="tankLevel"
	 * @generated
	 * @ordered
	 */
	public static final int TANK_LEVEL_VALUE = 1;

	/**
	 * The '<em><b>Tank Volume</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Volume of water in a tank.
	 * <!-- end-model-doc -->
	 * @see #TANK_VOLUME
	 * @model name="tankVolume"
	 * @generated
	 * @ordered
	 */
	public static final int TANK_VOLUME_VALUE = 2;

	/**
	 * The '<em><b>Water Meter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A meter's running total.
	 * <!-- end-model-doc -->
	 * @see #WATER_METER
	 * @model name="waterMeter"
	 * @generated
	 * @ordered
	 */
	public static final int WATER_METER_VALUE = 3;

	/**
	 * The '<em><b>Rain</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Depth of rain in the day before.
	 * <!-- end-model-doc -->
	 * @see #RAIN
	 * @model name="rain"
	 * @generated
	 * @ordered
	 */
	public static final int RAIN_VALUE = 4;

	/**
	 * The '<em><b>Free Chlorine</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Free chlorine.
	 * <!-- end-model-doc -->
	 * @see #FREE_CHLORINE
	 * @model name="freeChlorine"
	 * @generated
	 * @ordered
	 */
	public static final int FREE_CHLORINE_VALUE = 5;

	/**
	 * The '<em><b>Turbidity</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Turbidity.
	 * <!-- end-model-doc -->
	 * @see #TURBIDITY
	 * @model name="turbidity"
	 * @generated
	 * @ordered
	 */
	public static final int TURBIDITY_VALUE = 6;

	/**
	 * The '<em><b>Ph</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * pH of the water.
	 * <!-- end-model-doc -->
	 * @see #PH
	 * @model name="ph"
	 * @generated
	 * @ordered
	 */
	public static final int PH_VALUE = 7;

	/**
	 * The '<em><b>Water Temperature</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Temperature of the water.
	 * <!-- end-model-doc -->
	 * @see #WATER_TEMPERATURE
	 * @model name="waterTemperature"
	 * @generated
	 * @ordered
	 */
	public static final int WATER_TEMPERATURE_VALUE = 8;

	/**
	 * The '<em><b>Flow</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A flow, by bucket and stopwatch or meter.
	 * <!-- end-model-doc -->
	 * @see #FLOW
	 * @model name="flow"
	 * @generated
	 * @ordered
	 */
	public static final int FLOW_VALUE = 9;

	/**
	 * The '<em><b>Pressure</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A pressure.
	 * <!-- end-model-doc -->
	 * @see #PRESSURE
	 * @model name="pressure"
	 * @generated
	 * @ordered
	 */
	public static final int PRESSURE_VALUE = 10;

	/**
	 * The '<em><b>Pump Hours</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Running hours of a pump, total.
	 * <!-- end-model-doc -->
	 * @see #PUMP_HOURS
	 * @model name="pumpHours"
	 * @generated
	 * @ordered
	 */
	public static final int PUMP_HOURS_VALUE = 11;

	/**
	 * The '<em><b>Energy Meter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An energy meter's running total.
	 * <!-- end-model-doc -->
	 * @see #ENERGY_METER
	 * @model name="energyMeter"
	 * @generated
	 * @ordered
	 */
	public static final int ENERGY_METER_VALUE = 12;

	/**
	 * The '<em><b>Leak Test Level</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Level during a leak test with all valves shut.
	 * <!-- end-model-doc -->
	 * @see #LEAK_TEST_LEVEL
	 * @model name="leakTestLevel"
	 * @generated
	 * @ordered
	 */
	public static final int LEAK_TEST_LEVEL_VALUE = 13;

	/**
	 * The '<em><b>Pressure Test</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pressure during a test of a pipe.
	 * <!-- end-model-doc -->
	 * @see #PRESSURE_TEST
	 * @model name="pressureTest"
	 * @generated
	 * @ordered
	 */
	public static final int PRESSURE_TEST_VALUE = 14;

	/**
	 * An array of all the '<em><b>Reading Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final ReadingKind[] VALUES_ARRAY =
		new ReadingKind[]
		{
			UNSTATED,
			TANK_LEVEL,
			TANK_VOLUME,
			WATER_METER,
			RAIN,
			FREE_CHLORINE,
			TURBIDITY,
			PH,
			WATER_TEMPERATURE,
			FLOW,
			PRESSURE,
			PUMP_HOURS,
			ENERGY_METER,
			LEAK_TEST_LEVEL,
			PRESSURE_TEST,
		};

	/**
	 * A public read-only list of all the '<em><b>Reading Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<ReadingKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Reading Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ReadingKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			ReadingKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Reading Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ReadingKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			ReadingKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Reading Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static ReadingKind get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case TANK_LEVEL_VALUE: return TANK_LEVEL;
			case TANK_VOLUME_VALUE: return TANK_VOLUME;
			case WATER_METER_VALUE: return WATER_METER;
			case RAIN_VALUE: return RAIN;
			case FREE_CHLORINE_VALUE: return FREE_CHLORINE;
			case TURBIDITY_VALUE: return TURBIDITY;
			case PH_VALUE: return PH;
			case WATER_TEMPERATURE_VALUE: return WATER_TEMPERATURE;
			case FLOW_VALUE: return FLOW;
			case PRESSURE_VALUE: return PRESSURE;
			case PUMP_HOURS_VALUE: return PUMP_HOURS;
			case ENERGY_METER_VALUE: return ENERGY_METER;
			case LEAK_TEST_LEVEL_VALUE: return LEAK_TEST_LEVEL;
			case PRESSURE_TEST_VALUE: return PRESSURE_TEST;
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
	private ReadingKind(int value, String name, String literal)
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
	
} //ReadingKind

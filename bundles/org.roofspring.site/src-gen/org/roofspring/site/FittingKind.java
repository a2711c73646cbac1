/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Fitting Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * A fitting or change of section in a run of pipe.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getFittingKind()
 * @model
 * @generated
 */
public enum FittingKind implements Enumerator
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
	 * The '<em><b>Entrance Sharp</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Entrance flush with the wall, sharp edge.
	 * <!-- end-model-doc -->
	 * @see #ENTRANCE_SHARP_VALUE
	 * @generated
	 * @ordered
	 */
	ENTRANCE_SHARP(1, "entranceSharp", "entranceSharp"),

	/**
	 * The '<em><b>Entrance Projecting</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Entrance of a pipe that projects inward.
	 * <!-- end-model-doc -->
	 * @see #ENTRANCE_PROJECTING_VALUE
	 * @generated
	 * @ordered
	 */
	ENTRANCE_PROJECTING(2, "entranceProjecting", "entranceProjecting"),

	/**
	 * The '<em><b>Entrance Rounded</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Entrance with a rounded edge.
	 * <!-- end-model-doc -->
	 * @see #ENTRANCE_ROUNDED_VALUE
	 * @generated
	 * @ordered
	 */
	ENTRANCE_ROUNDED(3, "entranceRounded", "entranceRounded"),

	/**
	 * The '<em><b>Exit</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Exit into a tank or the air.
	 * <!-- end-model-doc -->
	 * @see #EXIT_VALUE
	 * @generated
	 * @ordered
	 */
	EXIT(4, "exit", "exit"),

	/**
	 * The '<em><b>Elbow90</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Elbow of 90 degrees.
	 * <!-- end-model-doc -->
	 * @see #ELBOW90_VALUE
	 * @generated
	 * @ordered
	 */
	ELBOW90(5, "elbow90", "elbow90"),

	/**
	 * The '<em><b>Elbow45</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Elbow of 45 degrees.
	 * <!-- end-model-doc -->
	 * @see #ELBOW45_VALUE
	 * @generated
	 * @ordered
	 */
	ELBOW45(6, "elbow45", "elbow45"),

	/**
	 * The '<em><b>Bend Long</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bend of large radius, 90 degrees.
	 * <!-- end-model-doc -->
	 * @see #BEND_LONG_VALUE
	 * @generated
	 * @ordered
	 */
	BEND_LONG(7, "bendLong", "bendLong"),

	/**
	 * The '<em><b>Return Bend</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bend of 180 degrees.
	 * <!-- end-model-doc -->
	 * @see #RETURN_BEND_VALUE
	 * @generated
	 * @ordered
	 */
	RETURN_BEND(8, "returnBend", "returnBend"),

	/**
	 * The '<em><b>Tee Through</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tee, straight through.
	 * <!-- end-model-doc -->
	 * @see #TEE_THROUGH_VALUE
	 * @generated
	 * @ordered
	 */
	TEE_THROUGH(9, "teeThrough", "teeThrough"),

	/**
	 * The '<em><b>Tee Branch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tee, into or out of the branch.
	 * <!-- end-model-doc -->
	 * @see #TEE_BRANCH_VALUE
	 * @generated
	 * @ordered
	 */
	TEE_BRANCH(10, "teeBranch", "teeBranch"),

	/**
	 * The '<em><b>Gate Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gate valve, open.
	 * <!-- end-model-doc -->
	 * @see #GATE_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	GATE_VALVE(11, "gateValve", "gateValve"),

	/**
	 * The '<em><b>Ball Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ball valve, full bore, open.
	 * <!-- end-model-doc -->
	 * @see #BALL_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	BALL_VALVE(12, "ballValve", "ballValve"),

	/**
	 * The '<em><b>Globe Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Globe valve, open.
	 * <!-- end-model-doc -->
	 * @see #GLOBE_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	GLOBE_VALVE(13, "globeValve", "globeValve"),

	/**
	 * The '<em><b>Angle Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Angle valve, open.
	 * <!-- end-model-doc -->
	 * @see #ANGLE_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	ANGLE_VALVE(14, "angleValve", "angleValve"),

	/**
	 * The '<em><b>Butterfly Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Butterfly valve, open.
	 * <!-- end-model-doc -->
	 * @see #BUTTERFLY_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	BUTTERFLY_VALVE(15, "butterflyValve", "butterflyValve"),

	/**
	 * The '<em><b>Check Swing</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Swing check valve.
	 * <!-- end-model-doc -->
	 * @see #CHECK_SWING_VALUE
	 * @generated
	 * @ordered
	 */
	CHECK_SWING(16, "checkSwing", "checkSwing"),

	/**
	 * The '<em><b>Check Lift</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lift or spring check valve.
	 * <!-- end-model-doc -->
	 * @see #CHECK_LIFT_VALUE
	 * @generated
	 * @ordered
	 */
	CHECK_LIFT(17, "checkLift", "checkLift"),

	/**
	 * The '<em><b>Foot Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Foot valve with strainer.
	 * <!-- end-model-doc -->
	 * @see #FOOT_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	FOOT_VALVE(18, "footValve", "footValve"),

	/**
	 * The '<em><b>Strainer</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Strainer, clean.
	 * <!-- end-model-doc -->
	 * @see #STRAINER_VALUE
	 * @generated
	 * @ordered
	 */
	STRAINER(19, "strainer", "strainer"),

	/**
	 * The '<em><b>Water Meter</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water meter.
	 * <!-- end-model-doc -->
	 * @see #WATER_METER_VALUE
	 * @generated
	 * @ordered
	 */
	WATER_METER(20, "waterMeter", "waterMeter"),

	/**
	 * The '<em><b>Float Valve</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Float valve, open.
	 * <!-- end-model-doc -->
	 * @see #FLOAT_VALVE_VALUE
	 * @generated
	 * @ordered
	 */
	FLOAT_VALVE(21, "floatValve", "floatValve"),

	/**
	 * The '<em><b>Reducer</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sudden or conical change to a smaller bore.
	 * <!-- end-model-doc -->
	 * @see #REDUCER_VALUE
	 * @generated
	 * @ordered
	 */
	REDUCER(22, "reducer", "reducer"),

	/**
	 * The '<em><b>Enlargement</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sudden or conical change to a larger bore.
	 * <!-- end-model-doc -->
	 * @see #ENLARGEMENT_VALUE
	 * @generated
	 * @ordered
	 */
	ENLARGEMENT(23, "enlargement", "enlargement"),

	/**
	 * The '<em><b>Coupling</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Straight coupling or union.
	 * <!-- end-model-doc -->
	 * @see #COUPLING_VALUE
	 * @generated
	 * @ordered
	 */
	COUPLING(24, "coupling", "coupling"),

	/**
	 * The '<em><b>Other</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Something else; its loss coefficient must be given.
	 * <!-- end-model-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(25, "other", "other");

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
	 * The '<em><b>Entrance Sharp</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Entrance flush with the wall, sharp edge.
	 * <!-- end-model-doc -->
	 * @see #ENTRANCE_SHARP
	 * @model name="entranceSharp"
	 * @generated
	 * @ordered
	 */
	public static final int ENTRANCE_SHARP_VALUE = 1;

	/**
	 * The '<em><b>Entrance Projecting</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Entrance of a pipe that projects inward.
	 * <!-- end-model-doc -->
	 * @see #ENTRANCE_PROJECTING
	 * @model name="entranceProjecting"
	 * @generated
	 * @ordered
	 */
	public static final int ENTRANCE_PROJECTING_VALUE = 2;

	/**
	 * The '<em><b>Entrance Rounded</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Entrance with a rounded edge.
	 * <!-- end-model-doc -->
	 * @see #ENTRANCE_ROUNDED
	 * @model name="entranceRounded"
	 * @generated
	 * @ordered
	 */
	public static final int ENTRANCE_ROUNDED_VALUE = 3;

	/**
	 * The '<em><b>Exit</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Exit into a tank or the air.
	 * <!-- end-model-doc -->
	 * @see #EXIT
	 * @model name="exit"
	 * @generated
	 * @ordered
	 */
	public static final int EXIT_VALUE = 4;

	/**
	 * The '<em><b>Elbow90</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Elbow of 90 degrees.
	 * <!-- end-model-doc -->
	 * @see #ELBOW90
	 * @model name="elbow90"
	 * @generated
	 * @ordered
	 */
	public static final int ELBOW90_VALUE = 5;

	/**
	 * The '<em><b>Elbow45</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Elbow of 45 degrees.
	 * <!-- end-model-doc -->
	 * @see #ELBOW45
	 * @model name="elbow45"
	 * @generated
	 * @ordered
	 */
	public static final int ELBOW45_VALUE = 6;

	/**
	 * The '<em><b>Bend Long</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bend of large radius, 90 degrees.
	 * <!-- end-model-doc -->
	 * @see #BEND_LONG
	 * @model name="bendLong"
	 * @generated
	 * @ordered
	 */
	public static final int BEND_LONG_VALUE = 7;

	/**
	 * The '<em><b>Return Bend</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bend of 180 degrees.
	 * <!-- end-model-doc -->
	 * @see #RETURN_BEND
	 * @model name="returnBend"
	 * @generated
	 * @ordered
	 */
	public static final int RETURN_BEND_VALUE = 8;

	/**
	 * The '<em><b>Tee Through</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tee, straight through.
	 * <!-- end-model-doc -->
	 * @see #TEE_THROUGH
	 * @model name="teeThrough"
	 * @generated
	 * @ordered
	 */
	public static final int TEE_THROUGH_VALUE = 9;

	/**
	 * The '<em><b>Tee Branch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tee, into or out of the branch.
	 * <!-- end-model-doc -->
	 * @see #TEE_BRANCH
	 * @model name="teeBranch"
	 * @generated
	 * @ordered
	 */
	public static final int TEE_BRANCH_VALUE = 10;

	/**
	 * The '<em><b>Gate Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Gate valve, open.
	 * <!-- end-model-doc -->
	 * @see #GATE_VALVE
	 * @model name="gateValve"
	 * @generated
	 * @ordered
	 */
	public static final int GATE_VALVE_VALUE = 11;

	/**
	 * The '<em><b>Ball Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ball valve, full bore, open.
	 * <!-- end-model-doc -->
	 * @see #BALL_VALVE
	 * @model name="ballValve"
	 * @generated
	 * @ordered
	 */
	public static final int BALL_VALVE_VALUE = 12;

	/**
	 * The '<em><b>Globe Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Globe valve, open.
	 * <!-- end-model-doc -->
	 * @see #GLOBE_VALVE
	 * @model name="globeValve"
	 * @generated
	 * @ordered
	 */
	public static final int GLOBE_VALVE_VALUE = 13;

	/**
	 * The '<em><b>Angle Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Angle valve, open.
	 * <!-- end-model-doc -->
	 * @see #ANGLE_VALVE
	 * @model name="angleValve"
	 * @generated
	 * @ordered
	 */
	public static final int ANGLE_VALVE_VALUE = 14;

	/**
	 * The '<em><b>Butterfly Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Butterfly valve, open.
	 * <!-- end-model-doc -->
	 * @see #BUTTERFLY_VALVE
	 * @model name="butterflyValve"
	 * @generated
	 * @ordered
	 */
	public static final int BUTTERFLY_VALVE_VALUE = 15;

	/**
	 * The '<em><b>Check Swing</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Swing check valve.
	 * <!-- end-model-doc -->
	 * @see #CHECK_SWING
	 * @model name="checkSwing"
	 * @generated
	 * @ordered
	 */
	public static final int CHECK_SWING_VALUE = 16;

	/**
	 * The '<em><b>Check Lift</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lift or spring check valve.
	 * <!-- end-model-doc -->
	 * @see #CHECK_LIFT
	 * @model name="checkLift"
	 * @generated
	 * @ordered
	 */
	public static final int CHECK_LIFT_VALUE = 17;

	/**
	 * The '<em><b>Foot Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Foot valve with strainer.
	 * <!-- end-model-doc -->
	 * @see #FOOT_VALVE
	 * @model name="footValve"
	 * @generated
	 * @ordered
	 */
	public static final int FOOT_VALVE_VALUE = 18;

	/**
	 * The '<em><b>Strainer</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Strainer, clean.
	 * <!-- end-model-doc -->
	 * @see #STRAINER
	 * @model name="strainer"
	 * @generated
	 * @ordered
	 */
	public static final int STRAINER_VALUE = 19;

	/**
	 * The '<em><b>Water Meter</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Water meter.
	 * <!-- end-model-doc -->
	 * @see #WATER_METER
	 * @model name="waterMeter"
	 * @generated
	 * @ordered
	 */
	public static final int WATER_METER_VALUE = 20;

	/**
	 * The '<em><b>Float Valve</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Float valve, open.
	 * <!-- end-model-doc -->
	 * @see #FLOAT_VALVE
	 * @model name="floatValve"
	 * @generated
	 * @ordered
	 */
	public static final int FLOAT_VALVE_VALUE = 21;

	/**
	 * The '<em><b>Reducer</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sudden or conical change to a smaller bore.
	 * <!-- end-model-doc -->
	 * @see #REDUCER
	 * @model name="reducer"
	 * @generated
	 * @ordered
	 */
	public static final int REDUCER_VALUE = 22;

	/**
	 * The '<em><b>Enlargement</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sudden or conical change to a larger bore.
	 * <!-- end-model-doc -->
	 * @see #ENLARGEMENT
	 * @model name="enlargement"
	 * @generated
	 * @ordered
	 */
	public static final int ENLARGEMENT_VALUE = 23;

	/**
	 * The '<em><b>Coupling</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Straight coupling or union.
	 * <!-- end-model-doc -->
	 * @see #COUPLING
	 * @model name="coupling"
	 * @generated
	 * @ordered
	 */
	public static final int COUPLING_VALUE = 24;

	/**
	 * The '<em><b>Other</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Something else; its loss coefficient must be given.
	 * <!-- end-model-doc -->
	 * @see #OTHER
	 * @model name="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 25;

	/**
	 * An array of all the '<em><b>Fitting Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final FittingKind[] VALUES_ARRAY =
		new FittingKind[]
		{
			UNSTATED,
			ENTRANCE_SHARP,
			ENTRANCE_PROJECTING,
			ENTRANCE_ROUNDED,
			EXIT,
			ELBOW90,
			ELBOW45,
			BEND_LONG,
			RETURN_BEND,
			TEE_THROUGH,
			TEE_BRANCH,
			GATE_VALVE,
			BALL_VALVE,
			GLOBE_VALVE,
			ANGLE_VALVE,
			BUTTERFLY_VALVE,
			CHECK_SWING,
			CHECK_LIFT,
			FOOT_VALVE,
			STRAINER,
			WATER_METER,
			FLOAT_VALVE,
			REDUCER,
			ENLARGEMENT,
			COUPLING,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Fitting Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<FittingKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Fitting Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FittingKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			FittingKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fitting Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FittingKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			FittingKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Fitting Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static FittingKind get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case ENTRANCE_SHARP_VALUE: return ENTRANCE_SHARP;
			case ENTRANCE_PROJECTING_VALUE: return ENTRANCE_PROJECTING;
			case ENTRANCE_ROUNDED_VALUE: return ENTRANCE_ROUNDED;
			case EXIT_VALUE: return EXIT;
			case ELBOW90_VALUE: return ELBOW90;
			case ELBOW45_VALUE: return ELBOW45;
			case BEND_LONG_VALUE: return BEND_LONG;
			case RETURN_BEND_VALUE: return RETURN_BEND;
			case TEE_THROUGH_VALUE: return TEE_THROUGH;
			case TEE_BRANCH_VALUE: return TEE_BRANCH;
			case GATE_VALVE_VALUE: return GATE_VALVE;
			case BALL_VALVE_VALUE: return BALL_VALVE;
			case GLOBE_VALVE_VALUE: return GLOBE_VALVE;
			case ANGLE_VALVE_VALUE: return ANGLE_VALVE;
			case BUTTERFLY_VALVE_VALUE: return BUTTERFLY_VALVE;
			case CHECK_SWING_VALUE: return CHECK_SWING;
			case CHECK_LIFT_VALUE: return CHECK_LIFT;
			case FOOT_VALVE_VALUE: return FOOT_VALVE;
			case STRAINER_VALUE: return STRAINER;
			case WATER_METER_VALUE: return WATER_METER;
			case FLOAT_VALVE_VALUE: return FLOAT_VALVE;
			case REDUCER_VALUE: return REDUCER;
			case ENLARGEMENT_VALUE: return ENLARGEMENT;
			case COUPLING_VALUE: return COUPLING;
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
	private FittingKind(int value, String name, String literal)
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
	
} //FittingKind

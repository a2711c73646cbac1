/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Tank Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What sort of tank it is.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getTankKind()
 * @model
 * @generated
 */
public enum TankKind implements Enumerator
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
	 * The '<em><b>Cistern</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A large tank in or on the ground, built in place.
	 * <!-- end-model-doc -->
	 * @see #CISTERN_VALUE
	 * @generated
	 * @ordered
	 */
	CISTERN(1, "cistern", "cistern"),

	/**
	 * The '<em><b>Overhead</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tank on a stand, filled by a pump, that feeds taps by gravity.
	 * <!-- end-model-doc -->
	 * @see #OVERHEAD_VALUE
	 * @generated
	 * @ordered
	 */
	OVERHEAD(2, "overhead", "overhead"),

	/**
	 * The '<em><b>Barrel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A barrel or drum.
	 * <!-- end-model-doc -->
	 * @see #BARREL_VALUE
	 * @generated
	 * @ordered
	 */
	BARREL(3, "barrel", "barrel"),

	/**
	 * The '<em><b>Tote</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A plastic container in a cage, about one cubic metre.
	 * <!-- end-model-doc -->
	 * @see #TOTE_VALUE
	 * @generated
	 * @ordered
	 */
	TOTE(4, "tote", "tote"),

	/**
	 * The '<em><b>Poly</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A moulded plastic tank.
	 * <!-- end-model-doc -->
	 * @see #POLY_VALUE
	 * @generated
	 * @ordered
	 */
	POLY(5, "poly", "poly"),

	/**
	 * The '<em><b>Bladder</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A flexible bag.
	 * <!-- end-model-doc -->
	 * @see #BLADDER_VALUE
	 * @generated
	 * @ordered
	 */
	BLADDER(6, "bladder", "bladder"),

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
	OTHER(7, "other", "other");

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
	 * The '<em><b>Cistern</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A large tank in or on the ground, built in place.
	 * <!-- end-model-doc -->
	 * @see #CISTERN
	 * @model name="cistern"
	 * @generated
	 * @ordered
	 */
	public static final int CISTERN_VALUE = 1;

	/**
	 * The '<em><b>Overhead</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tank on a stand, filled by a pump, that feeds taps by gravity.
	 * <!-- end-model-doc -->
	 * @see #OVERHEAD
	 * @model name="overhead"
	 * @generated
	 * @ordered
	 */
	public static final int OVERHEAD_VALUE = 2;

	/**
	 * The '<em><b>Barrel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A barrel or drum.
	 * <!-- end-model-doc -->
	 * @see #BARREL
	 * @model name="barrel"
	 * @generated
	 * @ordered
	 */
	public static final int BARREL_VALUE = 3;

	/**
	 * The '<em><b>Tote</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A plastic container in a cage, about one cubic metre.
	 * <!-- end-model-doc -->
	 * @see #TOTE
	 * @model name="tote"
	 * @generated
	 * @ordered
	 */
	public static final int TOTE_VALUE = 4;

	/**
	 * The '<em><b>Poly</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A moulded plastic tank.
	 * <!-- end-model-doc -->
	 * @see #POLY
	 * @model name="poly"
	 * @generated
	 * @ordered
	 */
	public static final int POLY_VALUE = 5;

	/**
	 * The '<em><b>Bladder</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A flexible bag.
	 * <!-- end-model-doc -->
	 * @see #BLADDER
	 * @model name="bladder"
	 * @generated
	 * @ordered
	 */
	public static final int BLADDER_VALUE = 6;

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
	public static final int OTHER_VALUE = 7;

	/**
	 * An array of all the '<em><b>Tank Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TankKind[] VALUES_ARRAY =
		new TankKind[]
		{
			UNSTATED,
			CISTERN,
			OVERHEAD,
			BARREL,
			TOTE,
			POLY,
			BLADDER,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Tank Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TankKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Tank Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TankKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TankKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tank Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TankKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TankKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tank Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TankKind get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case CISTERN_VALUE: return CISTERN;
			case OVERHEAD_VALUE: return OVERHEAD;
			case BARREL_VALUE: return BARREL;
			case TOTE_VALUE: return TOTE;
			case POLY_VALUE: return POLY;
			case BLADDER_VALUE: return BLADDER;
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
	private TankKind(int value, String name, String literal)
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
	
} //TankKind

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Tank Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What the wall of a tank is made of.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getTankMaterial()
 * @model
 * @generated
 */
public enum TankMaterial implements Enumerator
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
	 * The '<em><b>Concrete</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Reinforced concrete.
	 * <!-- end-model-doc -->
	 * @see #CONCRETE_VALUE
	 * @generated
	 * @ordered
	 */
	CONCRETE(1, "concrete", "concrete"),

	/**
	 * The '<em><b>Ferrocement</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ferrocement.
	 * <!-- end-model-doc -->
	 * @see #FERROCEMENT_VALUE
	 * @generated
	 * @ordered
	 */
	FERROCEMENT(2, "ferrocement", "ferrocement"),

	/**
	 * The '<em><b>Masonry</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Brick, block or stone with a lining.
	 * <!-- end-model-doc -->
	 * @see #MASONRY_VALUE
	 * @generated
	 * @ordered
	 */
	MASONRY(3, "masonry", "masonry"),

	/**
	 * The '<em><b>Polyethylene</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Polyethylene.
	 * <!-- end-model-doc -->
	 * @see #POLYETHYLENE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYETHYLENE(4, "polyethylene", "polyethylene"),

	/**
	 * The '<em><b>Galvanised Steel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Galvanised steel.
	 * <!-- end-model-doc -->
	 * @see #GALVANISED_STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	GALVANISED_STEEL(5, "galvanisedSteel", "galvanisedSteel"),

	/**
	 * The '<em><b>Lined Steel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steel with a liner.
	 * <!-- end-model-doc -->
	 * @see #LINED_STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	LINED_STEEL(6, "linedSteel", "linedSteel"),

	/**
	 * The '<em><b>Stainless Steel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stainless steel.
	 * <!-- end-model-doc -->
	 * @see #STAINLESS_STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	STAINLESS_STEEL(7, "stainlessSteel", "stainlessSteel"),

	/**
	 * The '<em><b>Glass Reinforced Plastic</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Glass-reinforced plastic.
	 * <!-- end-model-doc -->
	 * @see #GLASS_REINFORCED_PLASTIC_VALUE
	 * @generated
	 * @ordered
	 */
	GLASS_REINFORCED_PLASTIC(8, "glassReinforcedPlastic", "glassReinforcedPlastic"),

	/**
	 * The '<em><b>Timber</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Timber with a liner.
	 * <!-- end-model-doc -->
	 * @see #TIMBER_VALUE
	 * @generated
	 * @ordered
	 */
	TIMBER(9, "timber", "timber"),

	/**
	 * The '<em><b>Plastic Sheet</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flexible sheet.
	 * <!-- end-model-doc -->
	 * @see #PLASTIC_SHEET_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTIC_SHEET(10, "plasticSheet", "plasticSheet"),

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
	OTHER(11, "other", "other");

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
	 * The '<em><b>Concrete</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Reinforced concrete.
	 * <!-- end-model-doc -->
	 * @see #CONCRETE
	 * @model name="concrete"
	 * @generated
	 * @ordered
	 */
	public static final int CONCRETE_VALUE = 1;

	/**
	 * The '<em><b>Ferrocement</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Ferrocement.
	 * <!-- end-model-doc -->
	 * @see #FERROCEMENT
	 * @model name="ferrocement"
	 * @generated
	 * @ordered
	 */
	public static final int FERROCEMENT_VALUE = 2;

	/**
	 * The '<em><b>Masonry</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Brick, block or stone with a lining.
	 * <!-- end-model-doc -->
	 * @see #MASONRY
	 * @model name="masonry"
	 * @generated
	 * @ordered
	 */
	public static final int MASONRY_VALUE = 3;

	/**
	 * The '<em><b>Polyethylene</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Polyethylene.
	 * <!-- end-model-doc -->
	 * @see #POLYETHYLENE
	 * @model name="polyethylene"
	 * @generated
	 * @ordered
	 */
	public static final int POLYETHYLENE_VALUE = 4;

	/**
	 * The '<em><b>Galvanised Steel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Galvanised steel.
	 * <!-- end-model-doc -->
	 * @see #GALVANISED_STEEL
	 * @model name="galvanisedSteel"
	 * @generated
	 * @ordered
	 */
	public static final int GALVANISED_STEEL_VALUE = 5;

	/**
	 * The '<em><b>Lined Steel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steel with a liner.
	 * <!-- end-model-doc -->
	 * @see #LINED_STEEL
	 * @model name="linedSteel"
	 * @generated
	 * @ordered
	 */
	public static final int LINED_STEEL_VALUE = 6;

	/**
	 * The '<em><b>Stainless Steel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Stainless steel.
	 * <!-- end-model-doc -->
	 * @see #STAINLESS_STEEL
	 * @model name="stainlessSteel"
	 * @generated
	 * @ordered
	 */
	public static final int STAINLESS_STEEL_VALUE = 7;

	/**
	 * The '<em><b>Glass Reinforced Plastic</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Glass-reinforced plastic.
	 * <!-- end-model-doc -->
	 * @see #GLASS_REINFORCED_PLASTIC
	 * @model name="glassReinforcedPlastic"
	 * @generated
	 * @ordered
	 */
	public static final int GLASS_REINFORCED_PLASTIC_VALUE = 8;

	/**
	 * The '<em><b>Timber</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Timber with a liner.
	 * <!-- end-model-doc -->
	 * @see #TIMBER
	 * @model name="timber"
	 * @generated
	 * @ordered
	 */
	public static final int TIMBER_VALUE = 9;

	/**
	 * The '<em><b>Plastic Sheet</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flexible sheet.
	 * <!-- end-model-doc -->
	 * @see #PLASTIC_SHEET
	 * @model name="plasticSheet"
	 * @generated
	 * @ordered
	 */
	public static final int PLASTIC_SHEET_VALUE = 10;

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
	public static final int OTHER_VALUE = 11;

	/**
	 * An array of all the '<em><b>Tank Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TankMaterial[] VALUES_ARRAY =
		new TankMaterial[]
		{
			UNSTATED,
			CONCRETE,
			FERROCEMENT,
			MASONRY,
			POLYETHYLENE,
			GALVANISED_STEEL,
			LINED_STEEL,
			STAINLESS_STEEL,
			GLASS_REINFORCED_PLASTIC,
			TIMBER,
			PLASTIC_SHEET,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Tank Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TankMaterial> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Tank Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TankMaterial get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TankMaterial result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tank Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TankMaterial getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TankMaterial result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tank Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TankMaterial get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case CONCRETE_VALUE: return CONCRETE;
			case FERROCEMENT_VALUE: return FERROCEMENT;
			case MASONRY_VALUE: return MASONRY;
			case POLYETHYLENE_VALUE: return POLYETHYLENE;
			case GALVANISED_STEEL_VALUE: return GALVANISED_STEEL;
			case LINED_STEEL_VALUE: return LINED_STEEL;
			case STAINLESS_STEEL_VALUE: return STAINLESS_STEEL;
			case GLASS_REINFORCED_PLASTIC_VALUE: return GLASS_REINFORCED_PLASTIC;
			case TIMBER_VALUE: return TIMBER;
			case PLASTIC_SHEET_VALUE: return PLASTIC_SHEET;
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
	private TankMaterial(int value, String name, String literal)
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
	
} //TankMaterial

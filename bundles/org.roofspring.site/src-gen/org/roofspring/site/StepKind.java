/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Step Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a step of a treatment train does.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getStepKind()
 * @model
 * @generated
 */
public enum StepKind implements Enumerator
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
	 * The '<em><b>Mesh Screen</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A mesh screen or leaf guard.
	 * <!-- end-model-doc -->
	 * @see #MESH_SCREEN_VALUE
	 * @generated
	 * @ordered
	 */
	MESH_SCREEN(1, "meshScreen", "meshScreen"),

	/**
	 * The '<em><b>Settling</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Still water in which dirt sinks.
	 * <!-- end-model-doc -->
	 * @see #SETTLING_VALUE
	 * @generated
	 * @ordered
	 */
	SETTLING(2, "settling", "settling"),

	/**
	 * The '<em><b>Sediment Cartridge</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A string-wound, spun or pleated cartridge that holds dirt.
	 * <!-- end-model-doc -->
	 * @see #SEDIMENT_CARTRIDGE_VALUE
	 * @generated
	 * @ordered
	 */
	SEDIMENT_CARTRIDGE(3, "sedimentCartridge", "sedimentCartridge"),

	/**
	 * The '<em><b>Ceramic</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A ceramic candle or block.
	 * <!-- end-model-doc -->
	 * @see #CERAMIC_VALUE
	 * @generated
	 * @ordered
	 */
	CERAMIC(4, "ceramic", "ceramic"),

	/**
	 * The '<em><b>Ceramic Silver</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A ceramic candle or block with silver.
	 * <!-- end-model-doc -->
	 * @see #CERAMIC_SILVER_VALUE
	 * @generated
	 * @ordered
	 */
	CERAMIC_SILVER(5, "ceramicSilver", "ceramicSilver"),

	/**
	 * The '<em><b>Granular Carbon</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A bed or cartridge of granular activated carbon.
	 * <!-- end-model-doc -->
	 * @see #GRANULAR_CARBON_VALUE
	 * @generated
	 * @ordered
	 */
	GRANULAR_CARBON(6, "granularCarbon", "granularCarbon"),

	/**
	 * The '<em><b>Carbon Block</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A block of activated carbon.
	 * <!-- end-model-doc -->
	 * @see #CARBON_BLOCK_VALUE
	 * @generated
	 * @ordered
	 */
	CARBON_BLOCK(7, "carbonBlock", "carbonBlock"),

	/**
	 * The '<em><b>Slow Sand</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A slow sand filter.
	 * <!-- end-model-doc -->
	 * @see #SLOW_SAND_VALUE
	 * @generated
	 * @ordered
	 */
	SLOW_SAND(8, "slowSand", "slowSand"),

	/**
	 * The '<em><b>Rapid Sand</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A rapid sand or multimedia filter.
	 * <!-- end-model-doc -->
	 * @see #RAPID_SAND_VALUE
	 * @generated
	 * @ordered
	 */
	RAPID_SAND(9, "rapidSand", "rapidSand"),

	/**
	 * The '<em><b>Microfiltration</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A microfiltration membrane.
	 * <!-- end-model-doc -->
	 * @see #MICROFILTRATION_VALUE
	 * @generated
	 * @ordered
	 */
	MICROFILTRATION(10, "microfiltration", "microfiltration"),

	/**
	 * The '<em><b>Ultrafiltration</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An ultrafiltration membrane.
	 * <!-- end-model-doc -->
	 * @see #ULTRAFILTRATION_VALUE
	 * @generated
	 * @ordered
	 */
	ULTRAFILTRATION(11, "ultrafiltration", "ultrafiltration"),

	/**
	 * The '<em><b>Reverse Osmosis</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A reverse osmosis membrane.
	 * <!-- end-model-doc -->
	 * @see #REVERSE_OSMOSIS_VALUE
	 * @generated
	 * @ordered
	 */
	REVERSE_OSMOSIS(12, "reverseOsmosis", "reverseOsmosis"),

	/**
	 * The '<em><b>Uv Lamp</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An ultraviolet lamp.
	 * <!-- end-model-doc -->
	 * @see #UV_LAMP_VALUE
	 * @generated
	 * @ordered
	 */
	UV_LAMP(13, "uvLamp", "uvLamp"),

	/**
	 * The '<em><b>Boiling</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Boiling.
	 * <!-- end-model-doc -->
	 * @see #BOILING_VALUE
	 * @generated
	 * @ordered
	 */
	BOILING(14, "boiling", "boiling"),

	/**
	 * The '<em><b>Solar</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bottles in the sun.
	 * <!-- end-model-doc -->
	 * @see #SOLAR_VALUE
	 * @generated
	 * @ordered
	 */
	SOLAR(15, "solar", "solar"),

	/**
	 * The '<em><b>Chlorination</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Chlorine.
	 * <!-- end-model-doc -->
	 * @see #CHLORINATION_VALUE
	 * @generated
	 * @ordered
	 */
	CHLORINATION(16, "chlorination", "chlorination"),

	/**
	 * The '<em><b>Calcite Contact</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Limestone or calcite that hardens soft water.
	 * <!-- end-model-doc -->
	 * @see #CALCITE_CONTACT_VALUE
	 * @generated
	 * @ordered
	 */
	CALCITE_CONTACT(17, "calciteContact", "calciteContact"),

	/**
	 * The '<em><b>Safe Storage</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A closed vessel with a tap.
	 * <!-- end-model-doc -->
	 * @see #SAFE_STORAGE_VALUE
	 * @generated
	 * @ordered
	 */
	SAFE_STORAGE(18, "safeStorage", "safeStorage"),

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
	OTHER(19, "other", "other");

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
	 * The '<em><b>Mesh Screen</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A mesh screen or leaf guard.
	 * <!-- end-model-doc -->
	 * @see #MESH_SCREEN
	 * @model name="meshScreen"
	 * @generated
	 * @ordered
	 */
	public static final int MESH_SCREEN_VALUE = 1;

	/**
	 * The '<em><b>Settling</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Still water in which dirt sinks.
	 * <!-- end-model-doc -->
	 * @see #SETTLING
	 * @model name="settling"
	 * @generated
	 * @ordered
	 */
	public static final int SETTLING_VALUE = 2;

	/**
	 * The '<em><b>Sediment Cartridge</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A string-wound, spun or pleated cartridge that holds dirt.
	 * <!-- end-model-doc -->
	 * @see #SEDIMENT_CARTRIDGE
	 * @model name="sedimentCartridge"
	 * @generated
	 * @ordered
	 */
	public static final int SEDIMENT_CARTRIDGE_VALUE = 3;

	/**
	 * The '<em><b>Ceramic</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A ceramic candle or block.
	 * <!-- end-model-doc -->
	 * @see #CERAMIC
	 * @model name="ceramic"
	 * @generated
	 * @ordered
	 */
	public static final int CERAMIC_VALUE = 4;

	/**
	 * The '<em><b>Ceramic Silver</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A ceramic candle or block with silver.
	 * <!-- end-model-doc -->
	 * @see #CERAMIC_SILVER
	 * @model name="ceramicSilver"
	 * @generated
	 * @ordered
	 */
	public static final int CERAMIC_SILVER_VALUE = 5;

	/**
	 * The '<em><b>Granular Carbon</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A bed or cartridge of granular activated carbon.
	 * <!-- end-model-doc -->
	 * @see #GRANULAR_CARBON
	 * @model name="granularCarbon"
	 * @generated
	 * @ordered
	 */
	public static final int GRANULAR_CARBON_VALUE = 6;

	/**
	 * The '<em><b>Carbon Block</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A block of activated carbon.
	 * <!-- end-model-doc -->
	 * @see #CARBON_BLOCK
	 * @model name="carbonBlock"
	 * @generated
	 * @ordered
	 */
	public static final int CARBON_BLOCK_VALUE = 7;

	/**
	 * The '<em><b>Slow Sand</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A slow sand filter.
	 * <!-- end-model-doc -->
	 * @see #SLOW_SAND
	 * @model name="slowSand"
	 * @generated
	 * @ordered
	 */
	public static final int SLOW_SAND_VALUE = 8;

	/**
	 * The '<em><b>Rapid Sand</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A rapid sand or multimedia filter.
	 * <!-- end-model-doc -->
	 * @see #RAPID_SAND
	 * @model name="rapidSand"
	 * @generated
	 * @ordered
	 */
	public static final int RAPID_SAND_VALUE = 9;

	/**
	 * The '<em><b>Microfiltration</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A microfiltration membrane.
	 * <!-- end-model-doc -->
	 * @see #MICROFILTRATION
	 * @model name="microfiltration"
	 * @generated
	 * @ordered
	 */
	public static final int MICROFILTRATION_VALUE = 10;

	/**
	 * The '<em><b>Ultrafiltration</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An ultrafiltration membrane.
	 * <!-- end-model-doc -->
	 * @see #ULTRAFILTRATION
	 * @model name="ultrafiltration"
	 * @generated
	 * @ordered
	 */
	public static final int ULTRAFILTRATION_VALUE = 11;

	/**
	 * The '<em><b>Reverse Osmosis</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A reverse osmosis membrane.
	 * <!-- end-model-doc -->
	 * @see #REVERSE_OSMOSIS
	 * @model name="reverseOsmosis"
	 * @generated
	 * @ordered
	 */
	public static final int REVERSE_OSMOSIS_VALUE = 12;

	/**
	 * The '<em><b>Uv Lamp</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * An ultraviolet lamp.
	 * <!-- end-model-doc -->
	 * @see #UV_LAMP
	 * @model name="uvLamp"
	 * @generated
	 * @ordered
	 */
	public static final int UV_LAMP_VALUE = 13;

	/**
	 * The '<em><b>Boiling</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Boiling.
	 * <!-- end-model-doc -->
	 * @see #BOILING
	 * @model name="boiling"
	 * @generated
	 * @ordered
	 */
	public static final int BOILING_VALUE = 14;

	/**
	 * The '<em><b>Solar</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bottles in the sun.
	 * <!-- end-model-doc -->
	 * @see #SOLAR
	 * @model name="solar"
	 * @generated
	 * @ordered
	 */
	public static final int SOLAR_VALUE = 15;

	/**
	 * The '<em><b>Chlorination</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Chlorine.
	 * <!-- end-model-doc -->
	 * @see #CHLORINATION
	 * @model name="chlorination"
	 * @generated
	 * @ordered
	 */
	public static final int CHLORINATION_VALUE = 16;

	/**
	 * The '<em><b>Calcite Contact</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Limestone or calcite that hardens soft water.
	 * <!-- end-model-doc -->
	 * @see #CALCITE_CONTACT
	 * @model name="calciteContact"
	 * @generated
	 * @ordered
	 */
	public static final int CALCITE_CONTACT_VALUE = 17;

	/**
	 * The '<em><b>Safe Storage</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A closed vessel with a tap.
	 * <!-- end-model-doc -->
	 * @see #SAFE_STORAGE
	 * @model name="safeStorage"
	 * @generated
	 * @ordered
	 */
	public static final int SAFE_STORAGE_VALUE = 18;

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
	public static final int OTHER_VALUE = 19;

	/**
	 * An array of all the '<em><b>Step Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final StepKind[] VALUES_ARRAY =
		new StepKind[]
		{
			UNSTATED,
			MESH_SCREEN,
			SETTLING,
			SEDIMENT_CARTRIDGE,
			CERAMIC,
			CERAMIC_SILVER,
			GRANULAR_CARBON,
			CARBON_BLOCK,
			SLOW_SAND,
			RAPID_SAND,
			MICROFILTRATION,
			ULTRAFILTRATION,
			REVERSE_OSMOSIS,
			UV_LAMP,
			BOILING,
			SOLAR,
			CHLORINATION,
			CALCITE_CONTACT,
			SAFE_STORAGE,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Step Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<StepKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Step Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StepKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			StepKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Step Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StepKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			StepKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Step Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static StepKind get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case MESH_SCREEN_VALUE: return MESH_SCREEN;
			case SETTLING_VALUE: return SETTLING;
			case SEDIMENT_CARTRIDGE_VALUE: return SEDIMENT_CARTRIDGE;
			case CERAMIC_VALUE: return CERAMIC;
			case CERAMIC_SILVER_VALUE: return CERAMIC_SILVER;
			case GRANULAR_CARBON_VALUE: return GRANULAR_CARBON;
			case CARBON_BLOCK_VALUE: return CARBON_BLOCK;
			case SLOW_SAND_VALUE: return SLOW_SAND;
			case RAPID_SAND_VALUE: return RAPID_SAND;
			case MICROFILTRATION_VALUE: return MICROFILTRATION;
			case ULTRAFILTRATION_VALUE: return ULTRAFILTRATION;
			case REVERSE_OSMOSIS_VALUE: return REVERSE_OSMOSIS;
			case UV_LAMP_VALUE: return UV_LAMP;
			case BOILING_VALUE: return BOILING;
			case SOLAR_VALUE: return SOLAR;
			case CHLORINATION_VALUE: return CHLORINATION;
			case CALCITE_CONTACT_VALUE: return CALCITE_CONTACT;
			case SAFE_STORAGE_VALUE: return SAFE_STORAGE;
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
	private StepKind(int value, String name, String literal)
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
	
} //StepKind

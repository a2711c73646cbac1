/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Water Parameter</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a laboratory or a kit found.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getWaterParameter()
 * @model
 * @generated
 */
public enum WaterParameter implements Enumerator
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
	 * The '<em><b>EColi</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * E. coli in 100 mL.
	 * <!-- end-model-doc -->
	 * @see #ECOLI_VALUE
	 * @generated
	 * @ordered
	 */
	ECOLI(1, "eColi", "eColi"),

	/**
	 * The '<em><b>Total Coliforms</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Coliform bacteria in 100 mL.
	 * <!-- end-model-doc -->
	 * @see #TOTAL_COLIFORMS_VALUE
	 * @generated
	 * @ordered
	 */
	TOTAL_COLIFORMS(2, "totalColiforms", "totalColiforms"),

	/**
	 * The '<em><b>Hydrogen Sulphide Strip</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hydrogen-sulphide strip: 1 black, 0 clear.
	 * <!-- end-model-doc -->
	 * @see #HYDROGEN_SULPHIDE_STRIP_VALUE
	 * @generated
	 * @ordered
	 */
	HYDROGEN_SULPHIDE_STRIP(3, "hydrogenSulphideStrip", "hydrogenSulphideStrip"),

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
	TURBIDITY(4, "turbidity", "turbidity"),

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
	PH(5, "ph", "ph"),

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
	FREE_CHLORINE(6, "freeChlorine", "freeChlorine"),

	/**
	 * The '<em><b>Conductivity</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Electrical conductivity.
	 * <!-- end-model-doc -->
	 * @see #CONDUCTIVITY_VALUE
	 * @generated
	 * @ordered
	 */
	CONDUCTIVITY(7, "conductivity", "conductivity"),

	/**
	 * The '<em><b>Hardness</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hardness as calcium carbonate.
	 * <!-- end-model-doc -->
	 * @see #HARDNESS_VALUE
	 * @generated
	 * @ordered
	 */
	HARDNESS(8, "hardness", "hardness"),

	/**
	 * The '<em><b>Alkalinity</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Alkalinity as calcium carbonate.
	 * <!-- end-model-doc -->
	 * @see #ALKALINITY_VALUE
	 * @generated
	 * @ordered
	 */
	ALKALINITY(9, "alkalinity", "alkalinity"),

	/**
	 * The '<em><b>Lead</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lead.
	 * <!-- end-model-doc -->
	 * @see #LEAD_VALUE
	 * @generated
	 * @ordered
	 */
	LEAD(10, "lead", "lead"),

	/**
	 * The '<em><b>Copper</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Copper.
	 * <!-- end-model-doc -->
	 * @see #COPPER_VALUE
	 * @generated
	 * @ordered
	 */
	COPPER(11, "copper", "copper"),

	/**
	 * The '<em><b>Zinc</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Zinc.
	 * <!-- end-model-doc -->
	 * @see #ZINC_VALUE
	 * @generated
	 * @ordered
	 */
	ZINC(12, "zinc", "zinc"),

	/**
	 * The '<em><b>Iron</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Iron.
	 * <!-- end-model-doc -->
	 * @see #IRON_VALUE
	 * @generated
	 * @ordered
	 */
	IRON(13, "iron", "iron"),

	/**
	 * The '<em><b>Aluminium</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Aluminium.
	 * <!-- end-model-doc -->
	 * @see #ALUMINIUM_VALUE
	 * @generated
	 * @ordered
	 */
	ALUMINIUM(14, "aluminium", "aluminium"),

	/**
	 * The '<em><b>Arsenic</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Arsenic.
	 * <!-- end-model-doc -->
	 * @see #ARSENIC_VALUE
	 * @generated
	 * @ordered
	 */
	ARSENIC(15, "arsenic", "arsenic"),

	/**
	 * The '<em><b>Nitrate</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Nitrate.
	 * <!-- end-model-doc -->
	 * @see #NITRATE_VALUE
	 * @generated
	 * @ordered
	 */
	NITRATE(16, "nitrate", "nitrate"),

	/**
	 * The '<em><b>Pesticides</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pesticides, sum or named in the note.
	 * <!-- end-model-doc -->
	 * @see #PESTICIDES_VALUE
	 * @generated
	 * @ordered
	 */
	PESTICIDES(17, "pesticides", "pesticides"),

	/**
	 * The '<em><b>Hydrocarbons</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hydrocarbons, sum or named in the note.
	 * <!-- end-model-doc -->
	 * @see #HYDROCARBONS_VALUE
	 * @generated
	 * @ordered
	 */
	HYDROCARBONS(18, "hydrocarbons", "hydrocarbons"),

	/**
	 * The '<em><b>Asbestos Fibres</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Asbestos fibres.
	 * <!-- end-model-doc -->
	 * @see #ASBESTOS_FIBRES_VALUE
	 * @generated
	 * @ordered
	 */
	ASBESTOS_FIBRES(19, "asbestosFibres", "asbestosFibres"),

	/**
	 * The '<em><b>Other</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Something else, named in the note.
	 * <!-- end-model-doc -->
	 * @see #OTHER_VALUE
	 * @generated
	 * @ordered
	 */
	OTHER(20, "other", "other");

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
	 * The '<em><b>EColi</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * E. coli in 100 mL.
	 * <!-- end-model-doc -->
	 * @see #ECOLI
	 * @model name="eColi"
	 * @generated
	 * @ordered
	 */
	public static final int ECOLI_VALUE = 1;

	/**
	 * The '<em><b>Total Coliforms</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Coliform bacteria in 100 mL.
	 * <!-- end-model-doc -->
	 * @see #TOTAL_COLIFORMS
	 * @model name="totalColiforms"
	 * @generated
	 * @ordered
	 */
	public static final int TOTAL_COLIFORMS_VALUE = 2;

	/**
	 * The '<em><b>Hydrogen Sulphide Strip</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hydrogen-sulphide strip: 1 black, 0 clear.
	 * <!-- end-model-doc -->
	 * @see #HYDROGEN_SULPHIDE_STRIP
	 * @model name="hydrogenSulphideStrip"
	 * @generated
	 * @ordered
	 */
	public static final int HYDROGEN_SULPHIDE_STRIP_VALUE = 3;

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
	public static final int TURBIDITY_VALUE = 4;

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
	public static final int PH_VALUE = 5;

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
	public static final int FREE_CHLORINE_VALUE = 6;

	/**
	 * The '<em><b>Conductivity</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Electrical conductivity.
	 * <!-- end-model-doc -->
	 * @see #CONDUCTIVITY
	 * @model name="conductivity"
	 * @generated
	 * @ordered
	 */
	public static final int CONDUCTIVITY_VALUE = 7;

	/**
	 * The '<em><b>Hardness</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hardness as calcium carbonate.
	 * <!-- end-model-doc -->
	 * @see #HARDNESS
	 * @model name="hardness"
	 * @generated
	 * @ordered
	 */
	public static final int HARDNESS_VALUE = 8;

	/**
	 * The '<em><b>Alkalinity</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Alkalinity as calcium carbonate.
	 * <!-- end-model-doc -->
	 * @see #ALKALINITY
	 * @model name="alkalinity"
	 * @generated
	 * @ordered
	 */
	public static final int ALKALINITY_VALUE = 9;

	/**
	 * The '<em><b>Lead</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lead.
	 * <!-- end-model-doc -->
	 * @see #LEAD
	 * @model name="lead"
	 * @generated
	 * @ordered
	 */
	public static final int LEAD_VALUE = 10;

	/**
	 * The '<em><b>Copper</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Copper.
	 * <!-- end-model-doc -->
	 * @see #COPPER
	 * @model name="copper"
	 * @generated
	 * @ordered
	 */
	public static final int COPPER_VALUE = 11;

	/**
	 * The '<em><b>Zinc</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Zinc.
	 * <!-- end-model-doc -->
	 * @see #ZINC
	 * @model name="zinc"
	 * @generated
	 * @ordered
	 */
	public static final int ZINC_VALUE = 12;

	/**
	 * The '<em><b>Iron</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Iron.
	 * <!-- end-model-doc -->
	 * @see #IRON
	 * @model name="iron"
	 * @generated
	 * @ordered
	 */
	public static final int IRON_VALUE = 13;

	/**
	 * The '<em><b>Aluminium</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Aluminium.
	 * <!-- end-model-doc -->
	 * @see #ALUMINIUM
	 * @model name="aluminium"
	 * @generated
	 * @ordered
	 */
	public static final int ALUMINIUM_VALUE = 14;

	/**
	 * The '<em><b>Arsenic</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Arsenic.
	 * <!-- end-model-doc -->
	 * @see #ARSENIC
	 * @model name="arsenic"
	 * @generated
	 * @ordered
	 */
	public static final int ARSENIC_VALUE = 15;

	/**
	 * The '<em><b>Nitrate</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Nitrate.
	 * <!-- end-model-doc -->
	 * @see #NITRATE
	 * @model name="nitrate"
	 * @generated
	 * @ordered
	 */
	public static final int NITRATE_VALUE = 16;

	/**
	 * The '<em><b>Pesticides</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Pesticides, sum or named in the note.
	 * <!-- end-model-doc -->
	 * @see #PESTICIDES
	 * @model name="pesticides"
	 * @generated
	 * @ordered
	 */
	public static final int PESTICIDES_VALUE = 17;

	/**
	 * The '<em><b>Hydrocarbons</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hydrocarbons, sum or named in the note.
	 * <!-- end-model-doc -->
	 * @see #HYDROCARBONS
	 * @model name="hydrocarbons"
	 * @generated
	 * @ordered
	 */
	public static final int HYDROCARBONS_VALUE = 18;

	/**
	 * The '<em><b>Asbestos Fibres</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Asbestos fibres.
	 * <!-- end-model-doc -->
	 * @see #ASBESTOS_FIBRES
	 * @model name="asbestosFibres"
	 * @generated
	 * @ordered
	 */
	public static final int ASBESTOS_FIBRES_VALUE = 19;

	/**
	 * The '<em><b>Other</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Something else, named in the note.
	 * <!-- end-model-doc -->
	 * @see #OTHER
	 * @model name="other"
	 * @generated
	 * @ordered
	 */
	public static final int OTHER_VALUE = 20;

	/**
	 * An array of all the '<em><b>Water Parameter</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final WaterParameter[] VALUES_ARRAY =
		new WaterParameter[]
		{
			UNSTATED,
			ECOLI,
			TOTAL_COLIFORMS,
			HYDROGEN_SULPHIDE_STRIP,
			TURBIDITY,
			PH,
			FREE_CHLORINE,
			CONDUCTIVITY,
			HARDNESS,
			ALKALINITY,
			LEAD,
			COPPER,
			ZINC,
			IRON,
			ALUMINIUM,
			ARSENIC,
			NITRATE,
			PESTICIDES,
			HYDROCARBONS,
			ASBESTOS_FIBRES,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Water Parameter</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<WaterParameter> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Water Parameter</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterParameter get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			WaterParameter result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Water Parameter</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterParameter getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			WaterParameter result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Water Parameter</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static WaterParameter get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case ECOLI_VALUE: return ECOLI;
			case TOTAL_COLIFORMS_VALUE: return TOTAL_COLIFORMS;
			case HYDROGEN_SULPHIDE_STRIP_VALUE: return HYDROGEN_SULPHIDE_STRIP;
			case TURBIDITY_VALUE: return TURBIDITY;
			case PH_VALUE: return PH;
			case FREE_CHLORINE_VALUE: return FREE_CHLORINE;
			case CONDUCTIVITY_VALUE: return CONDUCTIVITY;
			case HARDNESS_VALUE: return HARDNESS;
			case ALKALINITY_VALUE: return ALKALINITY;
			case LEAD_VALUE: return LEAD;
			case COPPER_VALUE: return COPPER;
			case ZINC_VALUE: return ZINC;
			case IRON_VALUE: return IRON;
			case ALUMINIUM_VALUE: return ALUMINIUM;
			case ARSENIC_VALUE: return ARSENIC;
			case NITRATE_VALUE: return NITRATE;
			case PESTICIDES_VALUE: return PESTICIDES;
			case HYDROCARBONS_VALUE: return HYDROCARBONS;
			case ASBESTOS_FIBRES_VALUE: return ASBESTOS_FIBRES;
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
	private WaterParameter(int value, String name, String literal)
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
	
} //WaterParameter

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Hazard</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Something near or on a roof that spoils the water or the catchment.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getHazard()
 * @model
 * @generated
 */
public enum Hazard implements Enumerator
{
	/**
	 * The '<em><b>Overhanging Trees</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Trees or branches above the roof.
	 * <!-- end-model-doc -->
	 * @see #OVERHANGING_TREES_VALUE
	 * @generated
	 * @ordered
	 */
	OVERHANGING_TREES(0, "overhangingTrees", "overhangingTrees"),

	/**
	 * The '<em><b>Birds</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Birds perch or nest on the roof.
	 * <!-- end-model-doc -->
	 * @see #BIRDS_VALUE
	 * @generated
	 * @ordered
	 */
	BIRDS(1, "birds", "birds"),

	/**
	 * The '<em><b>Animals</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rats, possums, monkeys or other animals reach the roof or gutters.
	 * <!-- end-model-doc -->
	 * @see #ANIMALS_VALUE
	 * @generated
	 * @ordered
	 */
	ANIMALS(2, "animals", "animals"),

	/**
	 * The '<em><b>Spray Drift</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Crop spraying near by.
	 * <!-- end-model-doc -->
	 * @see #SPRAY_DRIFT_VALUE
	 * @generated
	 * @ordered
	 */
	SPRAY_DRIFT(3, "sprayDrift", "sprayDrift"),

	/**
	 * The '<em><b>Wood Smoke</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Smoke or soot of a stove or flue settles on the roof.
	 * <!-- end-model-doc -->
	 * @see #WOOD_SMOKE_VALUE
	 * @generated
	 * @ordered
	 */
	WOOD_SMOKE(4, "woodSmoke", "woodSmoke"),

	/**
	 * The '<em><b>Traffic</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heavy road traffic near by.
	 * <!-- end-model-doc -->
	 * @see #TRAFFIC_VALUE
	 * @generated
	 * @ordered
	 */
	TRAFFIC(5, "traffic", "traffic"),

	/**
	 * The '<em><b>Industry</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Smelter, mine, kiln or factory near by.
	 * <!-- end-model-doc -->
	 * @see #INDUSTRY_VALUE
	 * @generated
	 * @ordered
	 */
	INDUSTRY(6, "industry", "industry"),

	/**
	 * The '<em><b>Dust</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Much dust from roads or fields.
	 * <!-- end-model-doc -->
	 * @see #DUST_VALUE
	 * @generated
	 * @ordered
	 */
	DUST(7, "dust", "dust"),

	/**
	 * The '<em><b>Sea</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Salt spray.
	 * <!-- end-model-doc -->
	 * @see #SEA_VALUE
	 * @generated
	 * @ordered
	 */
	SEA(8, "sea", "sea"),

	/**
	 * The '<em><b>Lead Flashing</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lead flashing or lead-headed nails.
	 * <!-- end-model-doc -->
	 * @see #LEAD_FLASHING_VALUE
	 * @generated
	 * @ordered
	 */
	LEAD_FLASHING(9, "leadFlashing", "leadFlashing"),

	/**
	 * The '<em><b>Lead Paint</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Paint that holds or may hold lead.
	 * <!-- end-model-doc -->
	 * @see #LEAD_PAINT_VALUE
	 * @generated
	 * @ordered
	 */
	LEAD_PAINT(10, "leadPaint", "leadPaint"),

	/**
	 * The '<em><b>Treated Timber</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Timber treated with arsenic, copper or tar in touch with the water.
	 * <!-- end-model-doc -->
	 * @see #TREATED_TIMBER_VALUE
	 * @generated
	 * @ordered
	 */
	TREATED_TIMBER(11, "treatedTimber", "treatedTimber"),

	/**
	 * The '<em><b>Bitumen Coating</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bitumen paint or felt patches.
	 * <!-- end-model-doc -->
	 * @see #BITUMEN_COATING_VALUE
	 * @generated
	 * @ordered
	 */
	BITUMEN_COATING(12, "bitumenCoating", "bitumenCoating"),

	/**
	 * The '<em><b>Flue Outlet</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A stove pipe or gas flue ends on the roof.
	 * <!-- end-model-doc -->
	 * @see #FLUE_OUTLET_VALUE
	 * @generated
	 * @ordered
	 */
	FLUE_OUTLET(13, "flueOutlet", "flueOutlet"),

	/**
	 * The '<em><b>Public Access</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People walk, sleep or dry goods on the roof.
	 * <!-- end-model-doc -->
	 * @see #PUBLIC_ACCESS_VALUE
	 * @generated
	 * @ordered
	 */
	PUBLIC_ACCESS(14, "publicAccess", "publicAccess");

	/**
	 * The '<em><b>Overhanging Trees</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Trees or branches above the roof.
	 * <!-- end-model-doc -->
	 * @see #OVERHANGING_TREES
	 * @model name="overhangingTrees"
	 * @generated
	 * @ordered
	 */
	public static final int OVERHANGING_TREES_VALUE = 0;

	/**
	 * The '<em><b>Birds</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Birds perch or nest on the roof.
	 * <!-- end-model-doc -->
	 * @see #BIRDS
	 * @model name="birds"
	 * @generated
	 * @ordered
	 */
	public static final int BIRDS_VALUE = 1;

	/**
	 * The '<em><b>Animals</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Rats, possums, monkeys or other animals reach the roof or gutters.
	 * <!-- end-model-doc -->
	 * @see #ANIMALS
	 * @model name="animals"
	 * @generated
	 * @ordered
	 */
	public static final int ANIMALS_VALUE = 2;

	/**
	 * The '<em><b>Spray Drift</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Crop spraying near by.
	 * <!-- end-model-doc -->
	 * @see #SPRAY_DRIFT
	 * @model name="sprayDrift"
	 * @generated
	 * @ordered
	 */
	public static final int SPRAY_DRIFT_VALUE = 3;

	/**
	 * The '<em><b>Wood Smoke</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Smoke or soot of a stove or flue settles on the roof.
	 * <!-- end-model-doc -->
	 * @see #WOOD_SMOKE
	 * @model name="woodSmoke"
	 * @generated
	 * @ordered
	 */
	public static final int WOOD_SMOKE_VALUE = 4;

	/**
	 * The '<em><b>Traffic</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Heavy road traffic near by.
	 * <!-- end-model-doc -->
	 * @see #TRAFFIC
	 * @model name="traffic"
	 * @generated
	 * @ordered
	 */
	public static final int TRAFFIC_VALUE = 5;

	/**
	 * The '<em><b>Industry</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Smelter, mine, kiln or factory near by.
	 * <!-- end-model-doc -->
	 * @see #INDUSTRY
	 * @model name="industry"
	 * @generated
	 * @ordered
	 */
	public static final int INDUSTRY_VALUE = 6;

	/**
	 * The '<em><b>Dust</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Much dust from roads or fields.
	 * <!-- end-model-doc -->
	 * @see #DUST
	 * @model name="dust"
	 * @generated
	 * @ordered
	 */
	public static final int DUST_VALUE = 7;

	/**
	 * The '<em><b>Sea</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Salt spray.
	 * <!-- end-model-doc -->
	 * @see #SEA
	 * @model name="sea"
	 * @generated
	 * @ordered
	 */
	public static final int SEA_VALUE = 8;

	/**
	 * The '<em><b>Lead Flashing</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lead flashing or lead-headed nails.
	 * <!-- end-model-doc -->
	 * @see #LEAD_FLASHING
	 * @model name="leadFlashing"
	 * @generated
	 * @ordered
	 */
	public static final int LEAD_FLASHING_VALUE = 9;

	/**
	 * The '<em><b>Lead Paint</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Paint that holds or may hold lead.
	 * <!-- end-model-doc -->
	 * @see #LEAD_PAINT
	 * @model name="leadPaint"
	 * @generated
	 * @ordered
	 */
	public static final int LEAD_PAINT_VALUE = 10;

	/**
	 * The '<em><b>Treated Timber</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Timber treated with arsenic, copper or tar in touch with the water.
	 * <!-- end-model-doc -->
	 * @see #TREATED_TIMBER
	 * @model name="treatedTimber"
	 * @generated
	 * @ordered
	 */
	public static final int TREATED_TIMBER_VALUE = 11;

	/**
	 * The '<em><b>Bitumen Coating</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bitumen paint or felt patches.
	 * <!-- end-model-doc -->
	 * @see #BITUMEN_COATING
	 * @model name="bitumenCoating"
	 * @generated
	 * @ordered
	 */
	public static final int BITUMEN_COATING_VALUE = 12;

	/**
	 * The '<em><b>Flue Outlet</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A stove pipe or gas flue ends on the roof.
	 * <!-- end-model-doc -->
	 * @see #FLUE_OUTLET
	 * @model name="flueOutlet"
	 * @generated
	 * @ordered
	 */
	public static final int FLUE_OUTLET_VALUE = 13;

	/**
	 * The '<em><b>Public Access</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * People walk, sleep or dry goods on the roof.
	 * <!-- end-model-doc -->
	 * @see #PUBLIC_ACCESS
	 * @model name="publicAccess"
	 * @generated
	 * @ordered
	 */
	public static final int PUBLIC_ACCESS_VALUE = 14;

	/**
	 * An array of all the '<em><b>Hazard</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final Hazard[] VALUES_ARRAY =
		new Hazard[]
		{
			OVERHANGING_TREES,
			BIRDS,
			ANIMALS,
			SPRAY_DRIFT,
			WOOD_SMOKE,
			TRAFFIC,
			INDUSTRY,
			DUST,
			SEA,
			LEAD_FLASHING,
			LEAD_PAINT,
			TREATED_TIMBER,
			BITUMEN_COATING,
			FLUE_OUTLET,
			PUBLIC_ACCESS,
		};

	/**
	 * A public read-only list of all the '<em><b>Hazard</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<Hazard> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Hazard</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Hazard get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			Hazard result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hazard</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Hazard getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			Hazard result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Hazard</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static Hazard get(int value)
	{
		switch (value)
		{
			case OVERHANGING_TREES_VALUE: return OVERHANGING_TREES;
			case BIRDS_VALUE: return BIRDS;
			case ANIMALS_VALUE: return ANIMALS;
			case SPRAY_DRIFT_VALUE: return SPRAY_DRIFT;
			case WOOD_SMOKE_VALUE: return WOOD_SMOKE;
			case TRAFFIC_VALUE: return TRAFFIC;
			case INDUSTRY_VALUE: return INDUSTRY;
			case DUST_VALUE: return DUST;
			case SEA_VALUE: return SEA;
			case LEAD_FLASHING_VALUE: return LEAD_FLASHING;
			case LEAD_PAINT_VALUE: return LEAD_PAINT;
			case TREATED_TIMBER_VALUE: return TREATED_TIMBER;
			case BITUMEN_COATING_VALUE: return BITUMEN_COATING;
			case FLUE_OUTLET_VALUE: return FLUE_OUTLET;
			case PUBLIC_ACCESS_VALUE: return PUBLIC_ACCESS;
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
	private Hazard(int value, String name, String literal)
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
	
} //Hazard

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Roof Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a roof is covered with.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getRoofMaterial()
 * @model
 * @generated
 */
public enum RoofMaterial implements Enumerator
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
	 * The '<em><b>Galvanised Steel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Galvanised corrugated or flat steel sheet.
	 * <!-- end-model-doc -->
	 * @see #GALVANISED_STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	GALVANISED_STEEL(1, "galvanisedSteel", "galvanisedSteel"),

	/**
	 * The '<em><b>Coated Steel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steel sheet with an aluminium-zinc or painted coating.
	 * <!-- end-model-doc -->
	 * @see #COATED_STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	COATED_STEEL(2, "coatedSteel", "coatedSteel"),

	/**
	 * The '<em><b>Aluminium</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Aluminium sheet.
	 * <!-- end-model-doc -->
	 * @see #ALUMINIUM_VALUE
	 * @generated
	 * @ordered
	 */
	ALUMINIUM(3, "aluminium", "aluminium"),

	/**
	 * The '<em><b>Clay Tile</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clay tiles.
	 * <!-- end-model-doc -->
	 * @see #CLAY_TILE_VALUE
	 * @generated
	 * @ordered
	 */
	CLAY_TILE(4, "clayTile", "clayTile"),

	/**
	 * The '<em><b>Concrete Tile</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Concrete tiles.
	 * <!-- end-model-doc -->
	 * @see #CONCRETE_TILE_VALUE
	 * @generated
	 * @ordered
	 */
	CONCRETE_TILE(5, "concreteTile", "concreteTile"),

	/**
	 * The '<em><b>Slate</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Slate.
	 * <!-- end-model-doc -->
	 * @see #SLATE_VALUE
	 * @generated
	 * @ordered
	 */
	SLATE(6, "slate", "slate"),

	/**
	 * The '<em><b>Concrete Slab</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flat concrete slab.
	 * <!-- end-model-doc -->
	 * @see #CONCRETE_SLAB_VALUE
	 * @generated
	 * @ordered
	 */
	CONCRETE_SLAB(7, "concreteSlab", "concreteSlab"),

	/**
	 * The '<em><b>Bitumen</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bitumen felt or shingles.
	 * <!-- end-model-doc -->
	 * @see #BITUMEN_VALUE
	 * @generated
	 * @ordered
	 */
	BITUMEN(8, "bitumen", "bitumen"),

	/**
	 * The '<em><b>Asbestos Cement</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sheet of asbestos-cement. Do not cut, drill or brush it; ask a licensed remover.
	 * <!-- end-model-doc -->
	 * @see #ASBESTOS_CEMENT_VALUE
	 * @generated
	 * @ordered
	 */
	ASBESTOS_CEMENT(9, "asbestosCement", "asbestosCement"),

	/**
	 * The '<em><b>Fibre Cement</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fibre-cement sheet without asbestos.
	 * <!-- end-model-doc -->
	 * @see #FIBRE_CEMENT_VALUE
	 * @generated
	 * @ordered
	 */
	FIBRE_CEMENT(10, "fibreCement", "fibreCement"),

	/**
	 * The '<em><b>Plastic Sheet</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Plastic sheet or membrane.
	 * <!-- end-model-doc -->
	 * @see #PLASTIC_SHEET_VALUE
	 * @generated
	 * @ordered
	 */
	PLASTIC_SHEET(11, "plasticSheet", "plasticSheet"),

	/**
	 * The '<em><b>Thatch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thatch.
	 * <!-- end-model-doc -->
	 * @see #THATCH_VALUE
	 * @generated
	 * @ordered
	 */
	THATCH(12, "thatch", "thatch"),

	/**
	 * The '<em><b>Timber</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Timber shingles.
	 * <!-- end-model-doc -->
	 * @see #TIMBER_VALUE
	 * @generated
	 * @ordered
	 */
	TIMBER(13, "timber", "timber"),

	/**
	 * The '<em><b>Copper</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Copper sheet.
	 * <!-- end-model-doc -->
	 * @see #COPPER_VALUE
	 * @generated
	 * @ordered
	 */
	COPPER(14, "copper", "copper"),

	/**
	 * The '<em><b>Zinc</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Zinc sheet.
	 * <!-- end-model-doc -->
	 * @see #ZINC_VALUE
	 * @generated
	 * @ordered
	 */
	ZINC(15, "zinc", "zinc"),

	/**
	 * The '<em><b>Lead Sheet</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lead sheet. Water from it is not for drinking.
	 * <!-- end-model-doc -->
	 * @see #LEAD_SHEET_VALUE
	 * @generated
	 * @ordered
	 */
	LEAD_SHEET(16, "leadSheet", "leadSheet"),

	/**
	 * The '<em><b>Green Roof</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Planted roof.
	 * <!-- end-model-doc -->
	 * @see #GREEN_ROOF_VALUE
	 * @generated
	 * @ordered
	 */
	GREEN_ROOF(17, "greenRoof", "greenRoof"),

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
	OTHER(18, "other", "other");

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
	 * The '<em><b>Galvanised Steel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Galvanised corrugated or flat steel sheet.
	 * <!-- end-model-doc -->
	 * @see #GALVANISED_STEEL
	 * @model name="galvanisedSteel"
	 * @generated
	 * @ordered
	 */
	public static final int GALVANISED_STEEL_VALUE = 1;

	/**
	 * The '<em><b>Coated Steel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Steel sheet with an aluminium-zinc or painted coating.
	 * <!-- end-model-doc -->
	 * @see #COATED_STEEL
	 * @model name="coatedSteel"
	 * @generated
	 * @ordered
	 */
	public static final int COATED_STEEL_VALUE = 2;

	/**
	 * The '<em><b>Aluminium</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Aluminium sheet.
	 * <!-- end-model-doc -->
	 * @see #ALUMINIUM
	 * @model name="aluminium"
	 * @generated
	 * @ordered
	 */
	public static final int ALUMINIUM_VALUE = 3;

	/**
	 * The '<em><b>Clay Tile</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Clay tiles.
	 * <!-- end-model-doc -->
	 * @see #CLAY_TILE
	 * @model name="clayTile"
	 * @generated
	 * @ordered
	 */
	public static final int CLAY_TILE_VALUE = 4;

	/**
	 * The '<em><b>Concrete Tile</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Concrete tiles.
	 * <!-- end-model-doc -->
	 * @see #CONCRETE_TILE
	 * @model name="concreteTile"
	 * @generated
	 * @ordered
	 */
	public static final int CONCRETE_TILE_VALUE = 5;

	/**
	 * The '<em><b>Slate</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Slate.
	 * <!-- end-model-doc -->
	 * @see #SLATE
	 * @model name="slate"
	 * @generated
	 * @ordered
	 */
	public static final int SLATE_VALUE = 6;

	/**
	 * The '<em><b>Concrete Slab</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flat concrete slab.
	 * <!-- end-model-doc -->
	 * @see #CONCRETE_SLAB
	 * @model name="concreteSlab"
	 * @generated
	 * @ordered
	 */
	public static final int CONCRETE_SLAB_VALUE = 7;

	/**
	 * The '<em><b>Bitumen</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bitumen felt or shingles.
	 * <!-- end-model-doc -->
	 * @see #BITUMEN
	 * @model name="bitumen"
	 * @generated
	 * @ordered
	 */
	public static final int BITUMEN_VALUE = 8;

	/**
	 * The '<em><b>Asbestos Cement</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Sheet of asbestos-cement. Do not cut, drill or brush it; ask a licensed remover.
	 * <!-- end-model-doc -->
	 * @see #ASBESTOS_CEMENT
	 * @model name="asbestosCement"
	 * @generated
	 * @ordered
	 */
	public static final int ASBESTOS_CEMENT_VALUE = 9;

	/**
	 * The '<em><b>Fibre Cement</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Fibre-cement sheet without asbestos.
	 * <!-- end-model-doc -->
	 * @see #FIBRE_CEMENT
	 * @model name="fibreCement"
	 * @generated
	 * @ordered
	 */
	public static final int FIBRE_CEMENT_VALUE = 10;

	/**
	 * The '<em><b>Plastic Sheet</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Plastic sheet or membrane.
	 * <!-- end-model-doc -->
	 * @see #PLASTIC_SHEET
	 * @model name="plasticSheet"
	 * @generated
	 * @ordered
	 */
	public static final int PLASTIC_SHEET_VALUE = 11;

	/**
	 * The '<em><b>Thatch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Thatch.
	 * <!-- end-model-doc -->
	 * @see #THATCH
	 * @model name="thatch"
	 * @generated
	 * @ordered
	 */
	public static final int THATCH_VALUE = 12;

	/**
	 * The '<em><b>Timber</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Timber shingles.
	 * <!-- end-model-doc -->
	 * @see #TIMBER
	 * @model name="timber"
	 * @generated
	 * @ordered
	 */
	public static final int TIMBER_VALUE = 13;

	/**
	 * The '<em><b>Copper</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Copper sheet.
	 * <!-- end-model-doc -->
	 * @see #COPPER
	 * @model name="copper"
	 * @generated
	 * @ordered
	 */
	public static final int COPPER_VALUE = 14;

	/**
	 * The '<em><b>Zinc</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Zinc sheet.
	 * <!-- end-model-doc -->
	 * @see #ZINC
	 * @model name="zinc"
	 * @generated
	 * @ordered
	 */
	public static final int ZINC_VALUE = 15;

	/**
	 * The '<em><b>Lead Sheet</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lead sheet. Water from it is not for drinking.
	 * <!-- end-model-doc -->
	 * @see #LEAD_SHEET
	 * @model name="leadSheet"
	 * @generated
	 * @ordered
	 */
	public static final int LEAD_SHEET_VALUE = 16;

	/**
	 * The '<em><b>Green Roof</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Planted roof.
	 * <!-- end-model-doc -->
	 * @see #GREEN_ROOF
	 * @model name="greenRoof"
	 * @generated
	 * @ordered
	 */
	public static final int GREEN_ROOF_VALUE = 17;

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
	public static final int OTHER_VALUE = 18;

	/**
	 * An array of all the '<em><b>Roof Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final RoofMaterial[] VALUES_ARRAY =
		new RoofMaterial[]
		{
			UNSTATED,
			GALVANISED_STEEL,
			COATED_STEEL,
			ALUMINIUM,
			CLAY_TILE,
			CONCRETE_TILE,
			SLATE,
			CONCRETE_SLAB,
			BITUMEN,
			ASBESTOS_CEMENT,
			FIBRE_CEMENT,
			PLASTIC_SHEET,
			THATCH,
			TIMBER,
			COPPER,
			ZINC,
			LEAD_SHEET,
			GREEN_ROOF,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Roof Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<RoofMaterial> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Roof Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoofMaterial get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RoofMaterial result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Roof Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoofMaterial getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			RoofMaterial result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Roof Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static RoofMaterial get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case GALVANISED_STEEL_VALUE: return GALVANISED_STEEL;
			case COATED_STEEL_VALUE: return COATED_STEEL;
			case ALUMINIUM_VALUE: return ALUMINIUM;
			case CLAY_TILE_VALUE: return CLAY_TILE;
			case CONCRETE_TILE_VALUE: return CONCRETE_TILE;
			case SLATE_VALUE: return SLATE;
			case CONCRETE_SLAB_VALUE: return CONCRETE_SLAB;
			case BITUMEN_VALUE: return BITUMEN;
			case ASBESTOS_CEMENT_VALUE: return ASBESTOS_CEMENT;
			case FIBRE_CEMENT_VALUE: return FIBRE_CEMENT;
			case PLASTIC_SHEET_VALUE: return PLASTIC_SHEET;
			case THATCH_VALUE: return THATCH;
			case TIMBER_VALUE: return TIMBER;
			case COPPER_VALUE: return COPPER;
			case ZINC_VALUE: return ZINC;
			case LEAD_SHEET_VALUE: return LEAD_SHEET;
			case GREEN_ROOF_VALUE: return GREEN_ROOF;
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
	private RoofMaterial(int value, String name, String literal)
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
	
} //RoofMaterial

/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Pipe Material</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What a pipe is made of.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getPipeMaterial()
 * @model
 * @generated
 */
public enum PipeMaterial implements Enumerator
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
	 * The '<em><b>Pvc</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unplasticised PVC.
	 * <!-- end-model-doc -->
	 * @see #PVC_VALUE
	 * @generated
	 * @ordered
	 */
	PVC(1, "pvc", "pvc"),

	/**
	 * The '<em><b>Polyethylene</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Polyethylene (HDPE).
	 * <!-- end-model-doc -->
	 * @see #POLYETHYLENE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYETHYLENE(2, "polyethylene", "polyethylene"),

	/**
	 * The '<em><b>Polypropylene</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Polypropylene (PPR).
	 * <!-- end-model-doc -->
	 * @see #POLYPROPYLENE_VALUE
	 * @generated
	 * @ordered
	 */
	POLYPROPYLENE(3, "polypropylene", "polypropylene"),

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
	GALVANISED_STEEL(4, "galvanisedSteel", "galvanisedSteel"),

	/**
	 * The '<em><b>Steel</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Plain steel.
	 * <!-- end-model-doc -->
	 * @see #STEEL_VALUE
	 * @generated
	 * @ordered
	 */
	STEEL(5, "steel", "steel"),

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
	STAINLESS_STEEL(6, "stainlessSteel", "stainlessSteel"),

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
	COPPER(7, "copper", "copper"),

	/**
	 * The '<em><b>Cast Iron</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cast or ductile iron.
	 * <!-- end-model-doc -->
	 * @see #CAST_IRON_VALUE
	 * @generated
	 * @ordered
	 */
	CAST_IRON(8, "castIron", "castIron"),

	/**
	 * The '<em><b>Hose</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flexible hose.
	 * <!-- end-model-doc -->
	 * @see #HOSE_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE(9, "hose", "hose"),

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
	OTHER(10, "other", "other");

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
	 * The '<em><b>Pvc</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Unplasticised PVC.
	 * <!-- end-model-doc -->
	 * @see #PVC
	 * @model name="pvc"
	 * @generated
	 * @ordered
	 */
	public static final int PVC_VALUE = 1;

	/**
	 * The '<em><b>Polyethylene</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Polyethylene (HDPE).
	 * <!-- end-model-doc -->
	 * @see #POLYETHYLENE
	 * @model name="polyethylene"
	 * @generated
	 * @ordered
	 */
	public static final int POLYETHYLENE_VALUE = 2;

	/**
	 * The '<em><b>Polypropylene</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Polypropylene (PPR).
	 * <!-- end-model-doc -->
	 * @see #POLYPROPYLENE
	 * @model name="polypropylene"
	 * @generated
	 * @ordered
	 */
	public static final int POLYPROPYLENE_VALUE = 3;

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
	public static final int GALVANISED_STEEL_VALUE = 4;

	/**
	 * The '<em><b>Steel</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Plain steel.
	 * <!-- end-model-doc -->
	 * @see #STEEL
	 * @model name="steel"
	 * @generated
	 * @ordered
	 */
	public static final int STEEL_VALUE = 5;

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
	public static final int STAINLESS_STEEL_VALUE = 6;

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
	public static final int COPPER_VALUE = 7;

	/**
	 * The '<em><b>Cast Iron</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cast or ductile iron.
	 * <!-- end-model-doc -->
	 * @see #CAST_IRON
	 * @model name="castIron"
	 * @generated
	 * @ordered
	 */
	public static final int CAST_IRON_VALUE = 8;

	/**
	 * The '<em><b>Hose</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Flexible hose.
	 * <!-- end-model-doc -->
	 * @see #HOSE
	 * @model name="hose"
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_VALUE = 9;

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
	public static final int OTHER_VALUE = 10;

	/**
	 * An array of all the '<em><b>Pipe Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PipeMaterial[] VALUES_ARRAY =
		new PipeMaterial[]
		{
			UNSTATED,
			PVC,
			POLYETHYLENE,
			POLYPROPYLENE,
			GALVANISED_STEEL,
			STEEL,
			STAINLESS_STEEL,
			COPPER,
			CAST_IRON,
			HOSE,
			OTHER,
		};

	/**
	 * A public read-only list of all the '<em><b>Pipe Material</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PipeMaterial> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Pipe Material</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PipeMaterial get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			PipeMaterial result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pipe Material</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PipeMaterial getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			PipeMaterial result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pipe Material</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PipeMaterial get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case PVC_VALUE: return PVC;
			case POLYETHYLENE_VALUE: return POLYETHYLENE;
			case POLYPROPYLENE_VALUE: return POLYPROPYLENE;
			case GALVANISED_STEEL_VALUE: return GALVANISED_STEEL;
			case STEEL_VALUE: return STEEL;
			case STAINLESS_STEEL_VALUE: return STAINLESS_STEEL;
			case COPPER_VALUE: return COPPER;
			case CAST_IRON_VALUE: return CAST_IRON;
			case HOSE_VALUE: return HOSE;
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
	private PipeMaterial(int value, String name, String literal)
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
	
} //PipeMaterial

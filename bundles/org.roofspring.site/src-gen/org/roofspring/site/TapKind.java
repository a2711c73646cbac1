/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Tap Kind</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * What kind of outlet water is drawn at.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getTapKind()
 * @model
 * @generated
 */
public enum TapKind implements Enumerator
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
	 * The '<em><b>Tap</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tap at a sink or wall.
	 * <!-- end-model-doc -->
	 * @see #TAP_VALUE
	 * @generated
	 * @ordered
	 */
	TAP(1, "tap", "tap"),

	/**
	 * The '<em><b>Standpost</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A public tap stand.
	 * <!-- end-model-doc -->
	 * @see #STANDPOST_VALUE
	 * @generated
	 * @ordered
	 */
	STANDPOST(2, "standpost", "standpost"),

	/**
	 * The '<em><b>Self Closing</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A self-closing push tap.
	 * <!-- end-model-doc -->
	 * @see #SELF_CLOSING_VALUE
	 * @generated
	 * @ordered
	 */
	SELF_CLOSING(3, "selfClosing", "selfClosing"),

	/**
	 * The '<em><b>Shower</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A shower.
	 * <!-- end-model-doc -->
	 * @see #SHOWER_VALUE
	 * @generated
	 * @ordered
	 */
	SHOWER(4, "shower", "shower"),

	/**
	 * The '<em><b>Flush</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A cistern of a toilet.
	 * <!-- end-model-doc -->
	 * @see #FLUSH_VALUE
	 * @generated
	 * @ordered
	 */
	FLUSH(5, "flush", "flush"),

	/**
	 * The '<em><b>Hose</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A hose connection.
	 * <!-- end-model-doc -->
	 * @see #HOSE_VALUE
	 * @generated
	 * @ordered
	 */
	HOSE(6, "hose", "hose"),

	/**
	 * The '<em><b>Drinking Fountain</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A drinking fountain.
	 * <!-- end-model-doc -->
	 * @see #DRINKING_FOUNTAIN_VALUE
	 * @generated
	 * @ordered
	 */
	DRINKING_FOUNTAIN(7, "drinkingFountain", "drinkingFountain"),

	/**
	 * The '<em><b>Barrel Tap</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tap at the foot of a barrel.
	 * <!-- end-model-doc -->
	 * @see #BARREL_TAP_VALUE
	 * @generated
	 * @ordered
	 */
	BARREL_TAP(8, "barrelTap", "barrelTap"),

	/**
	 * The '<em><b>Storage Inlet</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A float valve that fills another container.
	 * <!-- end-model-doc -->
	 * @see #STORAGE_INLET_VALUE
	 * @generated
	 * @ordered
	 */
	STORAGE_INLET(9, "storageInlet", "storageInlet");

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
	 * The '<em><b>Tap</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tap at a sink or wall.
	 * <!-- end-model-doc -->
	 * @see #TAP
	 * @model name="tap"
	 * @generated
	 * @ordered
	 */
	public static final int TAP_VALUE = 1;

	/**
	 * The '<em><b>Standpost</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A public tap stand.
	 * <!-- end-model-doc -->
	 * @see #STANDPOST
	 * @model name="standpost"
	 * @generated
	 * @ordered
	 */
	public static final int STANDPOST_VALUE = 2;

	/**
	 * The '<em><b>Self Closing</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A self-closing push tap.
	 * <!-- end-model-doc -->
	 * @see #SELF_CLOSING
	 * @model name="selfClosing"
	 * @generated
	 * @ordered
	 */
	public static final int SELF_CLOSING_VALUE = 3;

	/**
	 * The '<em><b>Shower</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A shower.
	 * <!-- end-model-doc -->
	 * @see #SHOWER
	 * @model name="shower"
	 * @generated
	 * @ordered
	 */
	public static final int SHOWER_VALUE = 4;

	/**
	 * The '<em><b>Flush</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A cistern of a toilet.
	 * <!-- end-model-doc -->
	 * @see #FLUSH
	 * @model name="flush"
	 * @generated
	 * @ordered
	 */
	public static final int FLUSH_VALUE = 5;

	/**
	 * The '<em><b>Hose</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A hose connection.
	 * <!-- end-model-doc -->
	 * @see #HOSE
	 * @model name="hose"
	 * @generated
	 * @ordered
	 */
	public static final int HOSE_VALUE = 6;

	/**
	 * The '<em><b>Drinking Fountain</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A drinking fountain.
	 * <!-- end-model-doc -->
	 * @see #DRINKING_FOUNTAIN
	 * @model name="drinkingFountain"
	 * @generated
	 * @ordered
	 */
	public static final int DRINKING_FOUNTAIN_VALUE = 7;

	/**
	 * The '<em><b>Barrel Tap</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A tap at the foot of a barrel.
	 * <!-- end-model-doc -->
	 * @see #BARREL_TAP
	 * @model name="barrelTap"
	 * @generated
	 * @ordered
	 */
	public static final int BARREL_TAP_VALUE = 8;

	/**
	 * The '<em><b>Storage Inlet</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A float valve that fills another container.
	 * <!-- end-model-doc -->
	 * @see #STORAGE_INLET
	 * @model name="storageInlet"
	 * @generated
	 * @ordered
	 */
	public static final int STORAGE_INLET_VALUE = 9;

	/**
	 * An array of all the '<em><b>Tap Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final TapKind[] VALUES_ARRAY =
		new TapKind[]
		{
			UNSTATED,
			TAP,
			STANDPOST,
			SELF_CLOSING,
			SHOWER,
			FLUSH,
			HOSE,
			DRINKING_FOUNTAIN,
			BARREL_TAP,
			STORAGE_INLET,
		};

	/**
	 * A public read-only list of all the '<em><b>Tap Kind</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<TapKind> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Tap Kind</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TapKind get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TapKind result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tap Kind</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TapKind getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			TapKind result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Tap Kind</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static TapKind get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case TAP_VALUE: return TAP;
			case STANDPOST_VALUE: return STANDPOST;
			case SELF_CLOSING_VALUE: return SELF_CLOSING;
			case SHOWER_VALUE: return SHOWER;
			case FLUSH_VALUE: return FLUSH;
			case HOSE_VALUE: return HOSE;
			case DRINKING_FOUNTAIN_VALUE: return DRINKING_FOUNTAIN;
			case BARREL_TAP_VALUE: return BARREL_TAP;
			case STORAGE_INLET_VALUE: return STORAGE_INLET;
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
	private TapKind(int value, String name, String literal)
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
	
} //TapKind

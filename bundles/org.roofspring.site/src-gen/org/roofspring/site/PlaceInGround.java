/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Place In Ground</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How a tank stands.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getPlaceInGround()
 * @model
 * @generated
 */
public enum PlaceInGround implements Enumerator
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
	 * The '<em><b>On Ground</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On a base at ground level.
	 * <!-- end-model-doc -->
	 * @see #ON_GROUND_VALUE
	 * @generated
	 * @ordered
	 */
	ON_GROUND(1, "onGround", "onGround"),

	/**
	 * The '<em><b>Buried</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wholly below ground.
	 * <!-- end-model-doc -->
	 * @see #BURIED_VALUE
	 * @generated
	 * @ordered
	 */
	BURIED(2, "buried", "buried"),

	/**
	 * The '<em><b>Partly Buried</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Partly below ground.
	 * <!-- end-model-doc -->
	 * @see #PARTLY_BURIED_VALUE
	 * @generated
	 * @ordered
	 */
	PARTLY_BURIED(3, "partlyBuried", "partlyBuried"),

	/**
	 * The '<em><b>On Stand</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On a stand above ground.
	 * <!-- end-model-doc -->
	 * @see #ON_STAND_VALUE
	 * @generated
	 * @ordered
	 */
	ON_STAND(4, "onStand", "onStand");

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
	 * The '<em><b>On Ground</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On a base at ground level.
	 * <!-- end-model-doc -->
	 * @see #ON_GROUND
	 * @model name="onGround"
	 * @generated
	 * @ordered
	 */
	public static final int ON_GROUND_VALUE = 1;

	/**
	 * The '<em><b>Buried</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Wholly below ground.
	 * <!-- end-model-doc -->
	 * @see #BURIED
	 * @model name="buried"
	 * @generated
	 * @ordered
	 */
	public static final int BURIED_VALUE = 2;

	/**
	 * The '<em><b>Partly Buried</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Partly below ground.
	 * <!-- end-model-doc -->
	 * @see #PARTLY_BURIED
	 * @model name="partlyBuried"
	 * @generated
	 * @ordered
	 */
	public static final int PARTLY_BURIED_VALUE = 3;

	/**
	 * The '<em><b>On Stand</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * On a stand above ground.
	 * <!-- end-model-doc -->
	 * @see #ON_STAND
	 * @model name="onStand"
	 * @generated
	 * @ordered
	 */
	public static final int ON_STAND_VALUE = 4;

	/**
	 * An array of all the '<em><b>Place In Ground</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PlaceInGround[] VALUES_ARRAY =
		new PlaceInGround[]
		{
			UNSTATED,
			ON_GROUND,
			BURIED,
			PARTLY_BURIED,
			ON_STAND,
		};

	/**
	 * A public read-only list of all the '<em><b>Place In Ground</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PlaceInGround> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Place In Ground</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlaceInGround get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			PlaceInGround result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Place In Ground</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlaceInGround getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			PlaceInGround result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Place In Ground</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PlaceInGround get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case ON_GROUND_VALUE: return ON_GROUND;
			case BURIED_VALUE: return BURIED;
			case PARTLY_BURIED_VALUE: return PARTLY_BURIED;
			case ON_STAND_VALUE: return ON_STAND;
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
	private PlaceInGround(int value, String name, String literal)
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
	
} //PlaceInGround

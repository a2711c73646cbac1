/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Gutter Profile</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Shape of the cross-section of a gutter.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getGutterProfile()
 * @model
 * @generated
 */
public enum GutterProfile implements Enumerator
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
	 * The '<em><b>Half Round</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Half a circle; the width is the diameter.
	 * <!-- end-model-doc -->
	 * @see #HALF_ROUND_VALUE
	 * @generated
	 * @ordered
	 */
	HALF_ROUND(1, "halfRound", "halfRound"),

	/**
	 * The '<em><b>Rectangular</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A rectangle of width and depth.
	 * <!-- end-model-doc -->
	 * @see #RECTANGULAR_VALUE
	 * @generated
	 * @ordered
	 */
	RECTANGULAR(2, "rectangular", "rectangular"),

	/**
	 * The '<em><b>Trapezoidal</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A trapezium of top width, sole width and depth.
	 * <!-- end-model-doc -->
	 * @see #TRAPEZOIDAL_VALUE
	 * @generated
	 * @ordered
	 */
	TRAPEZOIDAL(3, "trapezoidal", "trapezoidal"),

	/**
	 * The '<em><b>Triangular</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A triangle (valley) of width and depth.
	 * <!-- end-model-doc -->
	 * @see #TRIANGULAR_VALUE
	 * @generated
	 * @ordered
	 */
	TRIANGULAR(4, "triangular", "triangular");

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
	 * The '<em><b>Half Round</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Half a circle; the width is the diameter.
	 * <!-- end-model-doc -->
	 * @see #HALF_ROUND
	 * @model name="halfRound"
	 * @generated
	 * @ordered
	 */
	public static final int HALF_ROUND_VALUE = 1;

	/**
	 * The '<em><b>Rectangular</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A rectangle of width and depth.
	 * <!-- end-model-doc -->
	 * @see #RECTANGULAR
	 * @model name="rectangular"
	 * @generated
	 * @ordered
	 */
	public static final int RECTANGULAR_VALUE = 2;

	/**
	 * The '<em><b>Trapezoidal</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A trapezium of top width, sole width and depth.
	 * <!-- end-model-doc -->
	 * @see #TRAPEZOIDAL
	 * @model name="trapezoidal"
	 * @generated
	 * @ordered
	 */
	public static final int TRAPEZOIDAL_VALUE = 3;

	/**
	 * The '<em><b>Triangular</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A triangle (valley) of width and depth.
	 * <!-- end-model-doc -->
	 * @see #TRIANGULAR
	 * @model name="triangular"
	 * @generated
	 * @ordered
	 */
	public static final int TRIANGULAR_VALUE = 4;

	/**
	 * An array of all the '<em><b>Gutter Profile</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final GutterProfile[] VALUES_ARRAY =
		new GutterProfile[]
		{
			UNSTATED,
			HALF_ROUND,
			RECTANGULAR,
			TRAPEZOIDAL,
			TRIANGULAR,
		};

	/**
	 * A public read-only list of all the '<em><b>Gutter Profile</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<GutterProfile> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Gutter Profile</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GutterProfile get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			GutterProfile result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Gutter Profile</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GutterProfile getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			GutterProfile result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Gutter Profile</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static GutterProfile get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case HALF_ROUND_VALUE: return HALF_ROUND;
			case RECTANGULAR_VALUE: return RECTANGULAR;
			case TRAPEZOIDAL_VALUE: return TRAPEZOIDAL;
			case TRIANGULAR_VALUE: return TRIANGULAR;
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
	private GutterProfile(int value, String name, String literal)
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
	
} //GutterProfile

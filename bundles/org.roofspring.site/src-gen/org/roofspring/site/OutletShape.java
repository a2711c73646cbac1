/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Outlet Shape</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * How water leaves a gutter.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getOutletShape()
 * @model
 * @generated
 */
public enum OutletShape implements Enumerator
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
	 * The '<em><b>Sharp</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A hole with a sharp edge.
	 * <!-- end-model-doc -->
	 * @see #SHARP_VALUE
	 * @generated
	 * @ordered
	 */
	SHARP(1, "sharp", "sharp"),

	/**
	 * The '<em><b>Rounded</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A hole with a rounded edge.
	 * <!-- end-model-doc -->
	 * @see #ROUNDED_VALUE
	 * @generated
	 * @ordered
	 */
	ROUNDED(2, "rounded", "rounded"),

	/**
	 * The '<em><b>Hopper</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A box or funnel below the gutter.
	 * <!-- end-model-doc -->
	 * @see #HOPPER_VALUE
	 * @generated
	 * @ordered
	 */
	HOPPER(3, "hopper", "hopper"),

	/**
	 * The '<em><b>Free End</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The open end of the gutter.
	 * <!-- end-model-doc -->
	 * @see #FREE_END_VALUE
	 * @generated
	 * @ordered
	 */
	FREE_END(4, "freeEnd", "freeEnd");

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
	 * The '<em><b>Sharp</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A hole with a sharp edge.
	 * <!-- end-model-doc -->
	 * @see #SHARP
	 * @model name="sharp"
	 * @generated
	 * @ordered
	 */
	public static final int SHARP_VALUE = 1;

	/**
	 * The '<em><b>Rounded</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A hole with a rounded edge.
	 * <!-- end-model-doc -->
	 * @see #ROUNDED
	 * @model name="rounded"
	 * @generated
	 * @ordered
	 */
	public static final int ROUNDED_VALUE = 2;

	/**
	 * The '<em><b>Hopper</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * A box or funnel below the gutter.
	 * <!-- end-model-doc -->
	 * @see #HOPPER
	 * @model name="hopper"
	 * @generated
	 * @ordered
	 */
	public static final int HOPPER_VALUE = 3;

	/**
	 * The '<em><b>Free End</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The open end of the gutter.
	 * <!-- end-model-doc -->
	 * @see #FREE_END
	 * @model name="freeEnd"
	 * @generated
	 * @ordered
	 */
	public static final int FREE_END_VALUE = 4;

	/**
	 * An array of all the '<em><b>Outlet Shape</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final OutletShape[] VALUES_ARRAY =
		new OutletShape[]
		{
			UNSTATED,
			SHARP,
			ROUNDED,
			HOPPER,
			FREE_END,
		};

	/**
	 * A public read-only list of all the '<em><b>Outlet Shape</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<OutletShape> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Outlet Shape</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OutletShape get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			OutletShape result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Outlet Shape</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OutletShape getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			OutletShape result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Outlet Shape</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static OutletShape get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case SHARP_VALUE: return SHARP;
			case ROUNDED_VALUE: return ROUNDED;
			case HOPPER_VALUE: return HOPPER;
			case FREE_END_VALUE: return FREE_END;
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
	private OutletShape(int value, String name, String literal)
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
	
} //OutletShape

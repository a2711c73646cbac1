/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Depth Unit</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Unit of the depths in a rain file.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getDepthUnit()
 * @model
 * @generated
 */
public enum DepthUnit implements Enumerator
{
	/**
	 * The '<em><b>Auto</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Found from the header of the column or from the format.
	 * <!-- end-model-doc -->
	 * @see #AUTO_VALUE
	 * @generated
	 * @ordered
	 */
	AUTO(0, "auto", "auto"),

	/**
	 * The '<em><b>Millimetre</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Millimetres.
	 * <!-- end-model-doc -->
	 * @see #MILLIMETRE_VALUE
	 * @generated
	 * @ordered
	 */
	MILLIMETRE(1, "millimetre", "millimetre"),

	/**
	 * The '<em><b>Tenth Millimetre</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tenths of a millimetre.
	 * <!-- end-model-doc -->
	 * @see #TENTH_MILLIMETRE_VALUE
	 * @generated
	 * @ordered
	 */
	TENTH_MILLIMETRE(2, "tenthMillimetre", "tenthMillimetre"),

	/**
	 * The '<em><b>Inch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inches.
	 * <!-- end-model-doc -->
	 * @see #INCH_VALUE
	 * @generated
	 * @ordered
	 */
	INCH(3, "inch", "inch"),

	/**
	 * The '<em><b>Hundredth Inch</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hundredths of an inch.
	 * <!-- end-model-doc -->
	 * @see #HUNDREDTH_INCH_VALUE
	 * @generated
	 * @ordered
	 */
	HUNDREDTH_INCH(4, "hundredthInch", "hundredthInch");

	/**
	 * The '<em><b>Auto</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Found from the header of the column or from the format.
	 * <!-- end-model-doc -->
	 * @see #AUTO
	 * @model name="auto"
	 * @generated
	 * @ordered
	 */
	public static final int AUTO_VALUE = 0;

	/**
	 * The '<em><b>Millimetre</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Millimetres.
	 * <!-- end-model-doc -->
	 * @see #MILLIMETRE
	 * @model name="millimetre"
	 * @generated
	 * @ordered
	 */
	public static final int MILLIMETRE_VALUE = 1;

	/**
	 * The '<em><b>Tenth Millimetre</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Tenths of a millimetre.
	 * <!-- end-model-doc -->
	 * @see #TENTH_MILLIMETRE
	 * @model name="tenthMillimetre"
	 * @generated
	 * @ordered
	 */
	public static final int TENTH_MILLIMETRE_VALUE = 2;

	/**
	 * The '<em><b>Inch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Inches.
	 * <!-- end-model-doc -->
	 * @see #INCH
	 * @model name="inch"
	 * @generated
	 * @ordered
	 */
	public static final int INCH_VALUE = 3;

	/**
	 * The '<em><b>Hundredth Inch</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Hundredths of an inch.
	 * <!-- end-model-doc -->
	 * @see #HUNDREDTH_INCH
	 * @model name="hundredthInch"
	 * @generated
	 * @ordered
	 */
	public static final int HUNDREDTH_INCH_VALUE = 4;

	/**
	 * An array of all the '<em><b>Depth Unit</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final DepthUnit[] VALUES_ARRAY =
		new DepthUnit[]
		{
			AUTO,
			MILLIMETRE,
			TENTH_MILLIMETRE,
			INCH,
			HUNDREDTH_INCH,
		};

	/**
	 * A public read-only list of all the '<em><b>Depth Unit</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<DepthUnit> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Depth Unit</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DepthUnit get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			DepthUnit result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Depth Unit</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DepthUnit getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			DepthUnit result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Depth Unit</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static DepthUnit get(int value)
	{
		switch (value)
		{
			case AUTO_VALUE: return AUTO;
			case MILLIMETRE_VALUE: return MILLIMETRE;
			case TENTH_MILLIMETRE_VALUE: return TENTH_MILLIMETRE;
			case INCH_VALUE: return INCH;
			case HUNDREDTH_INCH_VALUE: return HUNDREDTH_INCH;
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
	private DepthUnit(int value, String name, String literal)
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
	
} //DepthUnit

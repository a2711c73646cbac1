/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Pathogen Group</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * A group of germs that a step removes or kills together.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getPathogenGroup()
 * @model
 * @generated
 */
public enum PathogenGroup implements Enumerator
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
	 * The '<em><b>Bacteria</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bacteria, such as E. coli and Campylobacter.
	 * <!-- end-model-doc -->
	 * @see #BACTERIA_VALUE
	 * @generated
	 * @ordered
	 */
	BACTERIA(1, "bacteria", "bacteria"),

	/**
	 * The '<em><b>Viruses</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Viruses, such as rotavirus.
	 * <!-- end-model-doc -->
	 * @see #VIRUSES_VALUE
	 * @generated
	 * @ordered
	 */
	VIRUSES(2, "viruses", "viruses"),

	/**
	 * The '<em><b>Giardia</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Giardia cysts.
	 * <!-- end-model-doc -->
	 * @see #GIARDIA_VALUE
	 * @generated
	 * @ordered
	 */
	GIARDIA(3, "giardia", "giardia"),

	/**
	 * The '<em><b>Cryptosporidium</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cryptosporidium oocysts.
	 * <!-- end-model-doc -->
	 * @see #CRYPTOSPORIDIUM_VALUE
	 * @generated
	 * @ordered
	 */
	CRYPTOSPORIDIUM(4, "cryptosporidium", "cryptosporidium"),

	/**
	 * The '<em><b>Helminths</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Eggs of worms.
	 * <!-- end-model-doc -->
	 * @see #HELMINTHS_VALUE
	 * @generated
	 * @ordered
	 */
	HELMINTHS(5, "helminths", "helminths");

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
	 * The '<em><b>Bacteria</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Bacteria, such as E. coli and Campylobacter.
	 * <!-- end-model-doc -->
	 * @see #BACTERIA
	 * @model name="bacteria"
	 * @generated
	 * @ordered
	 */
	public static final int BACTERIA_VALUE = 1;

	/**
	 * The '<em><b>Viruses</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Viruses, such as rotavirus.
	 * <!-- end-model-doc -->
	 * @see #VIRUSES
	 * @model name="viruses"
	 * @generated
	 * @ordered
	 */
	public static final int VIRUSES_VALUE = 2;

	/**
	 * The '<em><b>Giardia</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Giardia cysts.
	 * <!-- end-model-doc -->
	 * @see #GIARDIA
	 * @model name="giardia"
	 * @generated
	 * @ordered
	 */
	public static final int GIARDIA_VALUE = 3;

	/**
	 * The '<em><b>Cryptosporidium</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cryptosporidium oocysts.
	 * <!-- end-model-doc -->
	 * @see #CRYPTOSPORIDIUM
	 * @model name="cryptosporidium"
	 * @generated
	 * @ordered
	 */
	public static final int CRYPTOSPORIDIUM_VALUE = 4;

	/**
	 * The '<em><b>Helminths</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Eggs of worms.
	 * <!-- end-model-doc -->
	 * @see #HELMINTHS
	 * @model name="helminths"
	 * @generated
	 * @ordered
	 */
	public static final int HELMINTHS_VALUE = 5;

	/**
	 * An array of all the '<em><b>Pathogen Group</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final PathogenGroup[] VALUES_ARRAY =
		new PathogenGroup[]
		{
			UNSTATED,
			BACTERIA,
			VIRUSES,
			GIARDIA,
			CRYPTOSPORIDIUM,
			HELMINTHS,
		};

	/**
	 * A public read-only list of all the '<em><b>Pathogen Group</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<PathogenGroup> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Pathogen Group</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PathogenGroup get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			PathogenGroup result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pathogen Group</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PathogenGroup getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			PathogenGroup result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Pathogen Group</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static PathogenGroup get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case BACTERIA_VALUE: return BACTERIA;
			case VIRUSES_VALUE: return VIRUSES;
			case GIARDIA_VALUE: return GIARDIA;
			case CRYPTOSPORIDIUM_VALUE: return CRYPTOSPORIDIUM;
			case HELMINTHS_VALUE: return HELMINTHS;
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
	private PathogenGroup(int value, String name, String literal)
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
	
} //PathogenGroup

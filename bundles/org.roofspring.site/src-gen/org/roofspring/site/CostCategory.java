/**
 */
package org.roofspring.site;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;

import org.eclipse.emf.common.util.Enumerator;

/**
 * <!-- begin-user-doc -->
 * A representation of the literals of the enumeration '<em><b>Cost Category</b></em>',
 * and utility methods for working with them.
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Category of a cost over the life of a service.
 * <!-- end-model-doc -->
 * @see org.roofspring.site.SitePackage#getCostCategory()
 * @model
 * @generated
 */
public enum CostCategory implements Enumerator
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
	 * The '<em><b>Capital</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First building and buying (CapEx).
	 * <!-- end-model-doc -->
	 * @see #CAPITAL_VALUE
	 * @generated
	 * @ordered
	 */
	CAPITAL(1, "capital", "capital"),

	/**
	 * The '<em><b>Operation</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Operation and minor maintenance, labour among it (OpEx).
	 * <!-- end-model-doc -->
	 * @see #OPERATION_VALUE
	 * @generated
	 * @ordered
	 */
	OPERATION(2, "operation", "operation"),

	/**
	 * The '<em><b>Energy</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Energy; part of operation, shown apart.
	 * <!-- end-model-doc -->
	 * @see #ENERGY_VALUE
	 * @generated
	 * @ordered
	 */
	ENERGY(3, "energy", "energy"),

	/**
	 * The '<em><b>Consumables</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cartridges, chlorine, tests; part of operation, shown apart.
	 * <!-- end-model-doc -->
	 * @see #CONSUMABLES_VALUE
	 * @generated
	 * @ordered
	 */
	CONSUMABLES(4, "consumables", "consumables"),

	/**
	 * The '<em><b>Capital Maintenance</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Renewal and replacement (CapManEx).
	 * <!-- end-model-doc -->
	 * @see #CAPITAL_MAINTENANCE_VALUE
	 * @generated
	 * @ordered
	 */
	CAPITAL_MAINTENANCE(5, "capitalMaintenance", "capitalMaintenance"),

	/**
	 * The '<em><b>Cost Of Capital</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Interest and fees (CoC).
	 * <!-- end-model-doc -->
	 * @see #COST_OF_CAPITAL_VALUE
	 * @generated
	 * @ordered
	 */
	COST_OF_CAPITAL(6, "costOfCapital", "costOfCapital"),

	/**
	 * The '<em><b>Direct Support</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Support by those near by: training, visits (ExpDS).
	 * <!-- end-model-doc -->
	 * @see #DIRECT_SUPPORT_VALUE
	 * @generated
	 * @ordered
	 */
	DIRECT_SUPPORT(7, "directSupport", "directSupport"),

	/**
	 * The '<em><b>Indirect Support</b></em>' literal object.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Support by those further off: planning, policy (ExpIDS).
	 * <!-- end-model-doc -->
	 * @see #INDIRECT_SUPPORT_VALUE
	 * @generated
	 * @ordered
	 */
	INDIRECT_SUPPORT(8, "indirectSupport", "indirectSupport");

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
	 * The '<em><b>Capital</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * First building and buying (CapEx).
	 * <!-- end-model-doc -->
	 * @see #CAPITAL
	 * @model name="capital"
	 * @generated
	 * @ordered
	 */
	public static final int CAPITAL_VALUE = 1;

	/**
	 * The '<em><b>Operation</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Operation and minor maintenance, labour among it (OpEx).
	 * <!-- end-model-doc -->
	 * @see #OPERATION
	 * @model name="operation"
	 * @generated
	 * @ordered
	 */
	public static final int OPERATION_VALUE = 2;

	/**
	 * The '<em><b>Energy</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Energy; part of operation, shown apart.
	 * <!-- end-model-doc -->
	 * @see #ENERGY
	 * @model name="energy"
	 * @generated
	 * @ordered
	 */
	public static final int ENERGY_VALUE = 3;

	/**
	 * The '<em><b>Consumables</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Cartridges, chlorine, tests; part of operation, shown apart.
	 * <!-- end-model-doc -->
	 * @see #CONSUMABLES
	 * @model name="consumables"
	 * @generated
	 * @ordered
	 */
	public static final int CONSUMABLES_VALUE = 4;

	/**
	 * The '<em><b>Capital Maintenance</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Renewal and replacement (CapManEx).
	 * <!-- end-model-doc -->
	 * @see #CAPITAL_MAINTENANCE
	 * @model name="capitalMaintenance"
	 * @generated
	 * @ordered
	 */
	public static final int CAPITAL_MAINTENANCE_VALUE = 5;

	/**
	 * The '<em><b>Cost Of Capital</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Interest and fees (CoC).
	 * <!-- end-model-doc -->
	 * @see #COST_OF_CAPITAL
	 * @model name="costOfCapital"
	 * @generated
	 * @ordered
	 */
	public static final int COST_OF_CAPITAL_VALUE = 6;

	/**
	 * The '<em><b>Direct Support</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Support by those near by: training, visits (ExpDS).
	 * <!-- end-model-doc -->
	 * @see #DIRECT_SUPPORT
	 * @model name="directSupport"
	 * @generated
	 * @ordered
	 */
	public static final int DIRECT_SUPPORT_VALUE = 7;

	/**
	 * The '<em><b>Indirect Support</b></em>' literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Support by those further off: planning, policy (ExpIDS).
	 * <!-- end-model-doc -->
	 * @see #INDIRECT_SUPPORT
	 * @model name="indirectSupport"
	 * @generated
	 * @ordered
	 */
	public static final int INDIRECT_SUPPORT_VALUE = 8;

	/**
	 * An array of all the '<em><b>Cost Category</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	private static final CostCategory[] VALUES_ARRAY =
		new CostCategory[]
		{
			UNSTATED,
			CAPITAL,
			OPERATION,
			ENERGY,
			CONSUMABLES,
			CAPITAL_MAINTENANCE,
			COST_OF_CAPITAL,
			DIRECT_SUPPORT,
			INDIRECT_SUPPORT,
		};

	/**
	 * A public read-only list of all the '<em><b>Cost Category</b></em>' enumerators.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public static final List<CostCategory> VALUES = Collections.unmodifiableList(Arrays.asList(VALUES_ARRAY));

	/**
	 * Returns the '<em><b>Cost Category</b></em>' literal with the specified literal value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param literal the literal.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CostCategory get(String literal)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			CostCategory result = VALUES_ARRAY[i];
			if (result.toString().equals(literal))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cost Category</b></em>' literal with the specified name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param name the name.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CostCategory getByName(String name)
	{
		for (int i = 0; i < VALUES_ARRAY.length; ++i)
		{
			CostCategory result = VALUES_ARRAY[i];
			if (result.getName().equals(name))
			{
				return result;
			}
		}
		return null;
	}

	/**
	 * Returns the '<em><b>Cost Category</b></em>' literal with the specified integer value.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the integer value.
	 * @return the matching enumerator or <code>null</code>.
	 * @generated
	 */
	public static CostCategory get(int value)
	{
		switch (value)
		{
			case UNSTATED_VALUE: return UNSTATED;
			case CAPITAL_VALUE: return CAPITAL;
			case OPERATION_VALUE: return OPERATION;
			case ENERGY_VALUE: return ENERGY;
			case CONSUMABLES_VALUE: return CONSUMABLES;
			case CAPITAL_MAINTENANCE_VALUE: return CAPITAL_MAINTENANCE;
			case COST_OF_CAPITAL_VALUE: return COST_OF_CAPITAL;
			case DIRECT_SUPPORT_VALUE: return DIRECT_SUPPORT;
			case INDIRECT_SUPPORT_VALUE: return INDIRECT_SUPPORT;
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
	private CostCategory(int value, String name, String literal)
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
	
} //CostCategory

package org.roofspring.economy.lifecycle;

/**
 * Kinds of cost over the life of a water service. The six life-cycle cost components follow C. Fonseca et al.,
 * Life-cycle costs approach: glossary and cost components, WASHCost, IRC, 2010, as quoted; operating cost is parted
 * further, because energy, consumables, work and water brought in answer to different prices.
 */
public enum CostCategory {
    CAPITAL("Capital", "CapEx"),
    CAPITAL_MAINTENANCE("Replacement", "CapManEx"),
    ENERGY("Energy", "OpEx"),
    CONSUMABLES("Consumables", "OpEx"),
    LABOUR("Work", "OpEx"),
    WATER_BOUGHT("Water brought in", "OpEx"),
    OPERATION("Other operation", "OpEx"),
    COST_OF_CAPITAL("Cost of capital", "CoC"),
    DIRECT_SUPPORT("Direct support", "ExpDS"),
    INDIRECT_SUPPORT("Indirect support", "ExpIDS");

    private final String words;
    private final String component;

    CostCategory(String words, String component) {
        this.words = words;
        this.component = component;
    }

    /** In plain words. */
    public String words() {
        return words;
    }

    /** Abbreviation of the life-cycle cost component that it belongs to. */
    public String component() {
        return component;
    }
}

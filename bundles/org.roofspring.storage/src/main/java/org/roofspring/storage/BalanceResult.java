package org.roofspring.storage;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roofspring.storage.internal.FixedVolume;

/**
 * Outcome of a run over a record: totals, counts, spells, and the level day by day. Days are counted from 0.
 *
 * <p>A day is <i>full</i> when there was demand and all of it was supplied; days without demand are not counted.
 */
public final class BalanceResult {

    private final BalanceTotals totals;
    private final DayCounts counts;
    private final BalanceSpells spells;
    private final long[] endVolume;
    private final long[] demand;
    private final long[] supplied;

    BalanceResult(BalanceTotals totals, DayCounts counts, BalanceSpells spells, long[] endVolume, long[] demand,
            long[] supplied) {
        this.totals = totals;
        this.counts = counts;
        this.spells = spells;
        this.endVolume = endVolume;
        this.demand = demand;
        this.supplied = supplied;
    }

    /** Where the water went. */
    public BalanceTotals totals() {
        return totals;
    }

    /** Days in the run, with demand, met in full, and ending with the tank empty. */
    public DayCounts counts() {
        return counts;
    }

    /** Share of the demand that was supplied [-]; empty when there was no demand. */
    public OptionalDouble volumetricReliability() {
        return totals.volumetricReliability();
    }

    /** Share of the days with demand that were met in full [-]; empty when there was no demand. */
    public OptionalDouble timeReliability() {
        return counts.timeReliability();
    }

    /** The shortage that lasted longest; the first of equals; empty when there was none. */
    public Optional<ShortageSpell> longestShortage() {
        return Optional.ofNullable(spells.longestShortage());
    }

    /** The shortage that missed most water; the first of equals; empty when there was none. */
    public Optional<ShortageSpell> deepestShortage() {
        return Optional.ofNullable(spells.deepestShortage());
    }

    /** The longest run of days without inflow; empty when every day had some. */
    public Optional<DaySpell> longestDrySpell() {
        return Optional.ofNullable(spells.longestDrySpell());
    }

    /** The longest whole run of days without inflow through which demand was met every day; empty when none was. */
    public Optional<DaySpell> worstDrySpellSurvived() {
        return Optional.ofNullable(spells.worstDrySpellSurvived());
    }

    /** Volume in store as the day ends [m&sup3;]. */
    public double endVolumeM3(int day) {
        return FixedVolume.toM3(endVolume[day]);
    }

    /** Volume in store as each day ends [m&sup3;]; a new array. */
    public double[] endVolumesM3() {
        return FixedVolume.toM3(endVolume);
    }

    /** Supplied on the day [m&sup3;]. */
    public double suppliedM3(int day) {
        return FixedVolume.toM3(supplied[day]);
    }

    /** Supplied on each day [m&sup3;]; a new array. */
    public double[] suppliedM3() {
        return FixedVolume.toM3(supplied);
    }

    /** Demand not supplied on the day [m&sup3;]. */
    public double missingM3(int day) {
        return FixedVolume.toM3(demand[day] - supplied[day]);
    }

    /**
     * Shortage by calendar month.
     *
     * @param firstDate date of day 0
     */
    public ShortageMap shortageMap(LocalDate firstDate) {
        return ShortageMap.of(firstDate, demand, supplied);
    }
}

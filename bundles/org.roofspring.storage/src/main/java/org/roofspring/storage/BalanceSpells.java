package org.roofspring.storage;

/** The notable spells of a run; a part that is null did not happen. */
record BalanceSpells(ShortageSpell longestShortage, ShortageSpell deepestShortage, DaySpell longestDrySpell,
        DaySpell worstDrySpellSurvived) {
}

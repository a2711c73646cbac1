package org.roofspring.storage;

import org.roofspring.storage.internal.FixedVolume;

/** Follows shortages and dry spells through a run. */
final class SpellWatch {

    private int shortFirst;
    private int shortLast;
    private int shortDays;
    private long shortMissing;
    private int longestDays;
    private long deepestMissing;
    private ShortageSpell longest;
    private ShortageSpell deepest;

    private int dryFirst;
    private int dryDays;
    private boolean dryMet;
    private DaySpell longestDry;
    private DaySpell survived;

    void day(int day, long inflow, long asked, long missing) {
        if (missing > 0) {
            if (shortDays == 0) {
                shortFirst = day;
            }
            shortDays++;
            shortLast = day;
            shortMissing += missing;
        } else if (asked > 0) {
            closeShortage();
        }
        if (inflow > 0) {
            closeDrySpell();
            return;
        }
        if (dryDays == 0) {
            dryFirst = day;
            dryMet = true;
        }
        dryDays++;
        dryMet &= missing == 0;
    }

    BalanceSpells close() {
        closeShortage();
        closeDrySpell();
        return new BalanceSpells(longest, deepest, longestDry, survived);
    }

    private void closeShortage() {
        if (shortDays == 0) {
            return;
        }
        ShortageSpell spell = new ShortageSpell(shortFirst, shortLast, shortDays, FixedVolume.toM3(shortMissing));
        if (shortDays > longestDays) {
            longestDays = shortDays;
            longest = spell;
        }
        if (shortMissing > deepestMissing) {
            deepestMissing = shortMissing;
            deepest = spell;
        }
        shortDays = 0;
        shortMissing = 0;
    }

    private void closeDrySpell() {
        if (dryDays == 0) {
            return;
        }
        DaySpell spell = new DaySpell(dryFirst, dryDays);
        longestDry = longer(longestDry, spell);
        if (dryMet) {
            survived = longer(survived, spell);
        }
        dryDays = 0;
    }

    private static DaySpell longer(DaySpell before, DaySpell spell) {
        return before == null || spell.days() > before.days() ? spell : before;
    }
}

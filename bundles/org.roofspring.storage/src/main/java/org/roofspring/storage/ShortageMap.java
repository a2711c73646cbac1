package org.roofspring.storage;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roofspring.storage.internal.FixedVolume;

/**
 * Shortage month by month, in order of time; every calendar month that the run touches has a cell.
 *
 * @param months the cells
 */
public record ShortageMap(List<MonthCell> months) {

    /**
     * One calendar month.
     *
     * @param month which
     * @param days days of the month inside the run [d]
     * @param demandDays of them, with demand [d]
     * @param shortDays of them, not met in full [d]
     * @param demandM3 asked for [m&sup3;]
     * @param missingM3 not supplied [m&sup3;]
     */
    public record MonthCell(YearMonth month, int days, int demandDays, int shortDays, double demandM3,
            double missingM3) {
    }

    /** Copies the list. */
    public ShortageMap {
        months = List.copyOf(months);
    }

    /** The cell of a month; empty when the run does not touch it. */
    public Optional<MonthCell> month(YearMonth month) {
        return months.stream().filter(cell -> cell.month().equals(month)).findFirst();
    }

    static ShortageMap of(LocalDate firstDate, long[] demand, long[] supplied) {
        List<MonthCell> cells = new ArrayList<>();
        LocalDate date = firstDate;
        for (int day = 0; day < demand.length;) {
            YearMonth month = YearMonth.from(date);
            int end = Math.min(demand.length, day + month.lengthOfMonth() - date.getDayOfMonth() + 1);
            int demandDays = 0;
            int shortDays = 0;
            long asked = 0;
            long missing = 0;
            for (int i = day; i < end; i++) {
                demandDays += demand[i] > 0 ? 1 : 0;
                shortDays += supplied[i] < demand[i] ? 1 : 0;
                asked += demand[i];
                missing += demand[i] - supplied[i];
            }
            cells.add(new MonthCell(month, end - day, demandDays, shortDays, FixedVolume.toM3(asked),
                    FixedVolume.toM3(missing)));
            date = date.plusDays(end - day);
            day = end;
        }
        return new ShortageMap(cells);
    }
}

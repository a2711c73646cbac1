package org.roofspring.calc.standard.storage;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import org.roofspring.calc.standard.water.CalendarFactors;
import org.roofspring.calc.standard.water.ServedUses;
import org.roofspring.calc.standard.water.UseDemand;
import org.roofspring.site.Pump;
import org.roofspring.site.Site;
import org.roofspring.site.SupplyTime;
import org.roofspring.site.Use;
import org.roofspring.site.UsePeak;
import org.roofspring.storage.withinday.DayPattern;
import org.roofspring.storage.withinday.DayPattern.Stretch;

/**
 * The busiest day of the uses that an overhead tank serves, hour by hour.
 *
 * @param date     the first such day of the calendars
 * @param uses     that are served
 * @param volumeM3 of each on that day
 */
record OverheadUse(LocalDate date, List<Use> uses, List<Double> volumeM3) {
    /** Twenty-eight years, in which every date falls on every day of the week. */
    private static final LocalDate FIRST = LocalDate.of(2024, 1, 1);
    private static final LocalDate END = LocalDate.of(2052, 1, 1);
    /** Use that has no peak of its own is spread over the daytime; common practice, no source. */
    static final LocalTime DAY_BEGINS = LocalTime.of(6, 0);
    static final LocalTime DAY_ENDS = LocalTime.of(20, 0);

    /** The uses beyond the pumps that fill a tank, on their busiest day. */
    static OverheadUse of(Site site, List<Pump> pumps) {
        Set<Use> served = new LinkedHashSet<>();
        pumps.forEach(pump -> served.addAll(ServedUses.of(site, pump).uses()));
        List<Use> uses = List.copyOf(served);
        List<CalendarFactors> factors = uses.stream().map(use -> CalendarFactors.of(use.getCalendar())).toList();
        double[] fullM3 = uses.stream().mapToDouble(UseDemand::fullM3PerDay).toArray();
        LocalDate busiest = FIRST;
        double most = -1;
        for (LocalDate date = FIRST; date.isBefore(END); date = date.plusDays(1)) {
            double sum = 0;
            for (int use = 0; use < fullM3.length; use++) {
                sum += fullM3[use] * factors.get(use).on(date);
            }
            if (sum > most) {
                most = sum;
                busiest = date;
            }
        }
        List<Double> volumes = new ArrayList<>();
        for (int use = 0; use < fullM3.length; use++) {
            volumes.add(fullM3[use] * factors.get(use).on(busiest));
        }
        return new OverheadUse(busiest, uses, volumes);
    }

    double totalM3() {
        return volumeM3.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** What the taps ask for through the day: the peaks as entered, the rest over the daytime. */
    DayPattern draw() {
        List<Stretch> stretches = new ArrayList<>();
        for (int use = 0; use < uses.size(); use++) {
            double left = volumeM3.get(use);
            List<UsePeak> peaks = uses.get(use).getPeaks().stream().filter(peak -> peak.getFrom() != null
                    && peak.getTo() != null && peak.getShare() != null).toList();
            double shares = Math.max(1, peaks.stream().mapToDouble(peak -> peak.getShare().si()).sum());
            for (UsePeak peak : peaks) {
                double peakM3 = volumeM3.get(use) * peak.getShare().si() / shares;
                stretches.add(Stretch.ofVolume(peak.getFrom().toSecondOfDay(), peak.getTo().toSecondOfDay(), peakM3));
                left -= peakM3;
            }
            if (left > 0) {
                stretches.add(Stretch.ofVolume(DAY_BEGINS.toSecondOfDay(), DAY_ENDS.toSecondOfDay(), left));
            }
        }
        return DayPattern.of(stretches);
    }

    /** What the pumps lift through the day: their flows in the hours of power of that weekday. */
    static DayPattern lift(List<Pump> pumps, List<Double> flowM3PerS, DayOfWeek weekday) {
        List<Stretch> stretches = new ArrayList<>();
        for (int pump = 0; pump < pumps.size(); pump++) {
            double flow = flowM3PerS.get(pump);
            List<SupplyTime> times = pumps.get(pump).getSupplyTimes();
            if (times.isEmpty()) {
                stretches.add(new Stretch(0, DayPattern.DAY_S, flow));
            }
            for (SupplyTime time : times) {
                boolean today = time.getWeekdays().isEmpty()
                        || time.getWeekdays().stream().anyMatch(day -> day.ordinal() == weekday.ordinal());
                if (today && time.getFrom() != null && time.getTo() != null) {
                    stretches.add(new Stretch(time.getFrom().toSecondOfDay(), time.getTo().toSecondOfDay(), flow));
                }
            }
        }
        return DayPattern.of(stretches);
    }
}

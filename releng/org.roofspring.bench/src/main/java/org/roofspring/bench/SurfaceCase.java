package org.roofspring.bench;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.EnumSet;
import java.util.List;
import java.util.stream.IntStream;
import org.roofspring.rain.RainReader;
import org.roofspring.rain.RainRecord;
import org.roofspring.storage.CatchmentInflow;
import org.roofspring.storage.DemandCalendar;
import org.roofspring.storage.ReliabilitySurface;
import org.roofspring.storage.Season;
import org.roofspring.storage.SweepSettings;
import org.roofspring.storage.YieldRule;

/**
 * 64 roofs by 64 tanks over a record, under yield after spillage from empty.
 *
 * @param roofs what each roof sends
 * @param capacityM3 of each tank
 * @param depthMm rain of each day
 * @param demandM3 of each day
 */
record SurfaceCase(List<CatchmentInflow> roofs, double[] capacityM3, double[] depthMm, double[] demandM3) {

    /** Designs on one side. */
    static final int SIDE = 64;

    private static final SweepSettings SETTINGS = SweepSettings.empty(YieldRule.YAS);

    /** The demonstration record with a demand by name: {@code constant} or {@code calendar}. */
    static SurfaceCase demo(Path root, String demand) throws IOException {
        RainRecord record = RainReader.read(root.resolve("demo-data/rain/upland-40y.csv")).record();
        return of(record.firstDay(), record.completeDepthsMm(), demand);
    }

    /** Sixty years: the demonstration record, gone on with its own first twenty years. */
    static SurfaceCase sixtyYears(Path root) throws IOException {
        RainRecord record = RainReader.read(root.resolve("demo-data/rain/upland-40y.csv")).record();
        double[] depth = record.completeDepthsMm();
        int days = (int) (record.firstDay().plusYears(60).toEpochDay() - record.firstDay().toEpochDay());
        double[] longer = new double[days];
        for (int day = 0; day < days; day++) {
            longer[day] = depth[day % depth.length];
        }
        return of(record.firstDay(), longer, "constant");
    }

    private static SurfaceCase of(LocalDate firstDay, double[] depthMm, String demand) {
        DemandCalendar calendar = demand.equals("constant") ? DemandCalendar.everyDay(0.2)
                : new DemandCalendar(0.28, EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY),
                        List.of(new Season(MonthDay.of(1, 10), MonthDay.of(4, 5)),
                                new Season(MonthDay.of(5, 2), MonthDay.of(7, 25)),
                                new Season(MonthDay.of(9, 1), MonthDay.of(12, 10))),
                        List.of(), 0.12, List.of());
        return new SurfaceCase(
                IntStream.range(0, SIDE).mapToObj(i -> new CatchmentInflow(20.0 + 5 * i, 0.8, 0)).toList(),
                IntStream.range(0, SIDE).mapToDouble(i -> 0.5 + 0.5 * i).toArray(), depthMm,
                calendar.seriesM3(firstDay, depthMm.length));
    }

    ReliabilitySurface run() {
        return ReliabilitySurface.of(roofs, depthMm, demandM3, capacityM3, SETTINGS, () -> false);
    }

    double designDays() {
        return (double) roofs.size() * capacityM3.length * depthMm.length;
    }

    /** Writes the case as the compared programs read it. */
    void write(Path file) throws IOException {
        try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(file))) {
            out.println(depthMm.length + " " + roofs.size() + " " + capacityM3.length);
            roofs.forEach(roof -> out.println(roof.m3PerMm()));
            for (double capacity : capacityM3) {
                out.println(capacity);
            }
            for (int day = 0; day < depthMm.length; day++) {
                out.println(depthMm[day] + " " + demandM3[day]);
            }
        }
    }
}

package org.roofspring.report.internal.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.report.Block;
import org.roofspring.site.Component;
import org.roofspring.site.Downpipe;
import org.roofspring.site.FirstFlushDiverter;
import org.roofspring.site.Fitting;
import org.roofspring.site.Gutter;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.Roof;
import org.roofspring.site.Screen;
import org.roofspring.site.Site;
import org.roofspring.site.Tank;
import org.roofspring.site.Tap;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;

/** Parts in use, added up by what a supplier needs to know. Lengths are net: cutting and laps are the builder's. */
final class BillOfQuantities {
    private final Words words;
    private final Map<List<String>, Amount> items = new LinkedHashMap<>();

    /** A sum; {@code unit} is null for pieces. */
    private record Amount(double si, Unit unit, int parts) {
        Amount plus(double more) {
            return new Amount(si + more, unit, parts + 1);
        }
    }

    BillOfQuantities(Words words) {
        this.words = words;
    }

    List<Block> of(Site site) {
        for (Roof roof : inUse(site.getRoofs())) {
            add("Roofs", "Roof, plan area", words.of(roof.getMaterial()), roof.getPlanArea(), Units.M2);
        }
        for (Gutter gutter : inUse(site.getGutters())) {
            add("Roof to tank", "Gutter", described(gutter.getProfile(), gutter.getWidth(), gutter.getDepth()),
                    gutter.getLength(), Units.M);
            gutter.getOutlets().forEach(outlet -> pieces("Roof to tank", "Gutter outlet",
                    described(outlet.getShape(), outlet.getDiameter()), 1));
        }
        for (Downpipe downpipe : inUse(site.getDownpipes())) {
            add("Roof to tank", "Downpipe", "bore " + words.of(downpipe.getBore()), downpipe.getLength(), Units.M);
        }
        for (Screen screen : inUse(site.getScreens())) {
            pieces("Roof to tank", "Screen", described("mesh", screen.getMesh(), screen.getArea()), 1);
        }
        for (FirstFlushDiverter diverter : inUse(site.getDiverters())) {
            pieces("Roof to tank", "First-flush diverter", described("depth", diverter.getDepth()), 1);
        }
        for (Tank tank : inUse(site.getTanks())) {
            pieces("Storage", "Tank", described(words.name(tank), tank.getMaterial(), tank.getCapacity()), 1);
        }
        for (PipeRun run : inUse(site.getPipeRuns())) {
            add("Pipes", "Pipe, " + words.of(run.getUse()), described(run.getMaterial(), "bore "
                    + words.of(run.getBore())), run.getLength(), Units.M);
        }
        for (PipeRun run : inUse(site.getPipeRuns())) {
            for (Fitting fitting : run.getFittings()) {
                pieces("Pipes", "Fitting", described(fitting.getKind(), "bore " + words.of(run.getBore())),
                        fitting.getCount());
            }
        }
        for (Pump pump : inUse(site.getPumps())) {
            String chosen = pump.getCandidates().stream()
                    .filter(PumpCandidate::isChosen).map(words::name).findFirst().orElse("");
            pieces("Pumps", "Pump", described(words.name(pump), pump.getKind(), chosen), Math.max(1, pump.getCount()));
        }
        inUse(site.getPressureVessels()).forEach(vessel -> pieces("Pumps", "Pressure vessel", words.name(vessel), 1));
        for (TreatmentTrain train : inUse(site.getTrains())) {
            for (TreatmentStep step : train.getSteps()) {
                pieces("Treatment", "Step", described(step.getKind(), step.getRating(), words.name(step)), 1);
            }
        }
        for (Tap tap : inUse(site.getTaps())) {
            pieces("Taps", "Tap", described(tap.getKind(), words.name(tap)), Math.max(1, tap.getCount()));
        }
        return table();
    }

    private static <C extends Component> List<C> inUse(List<C> parts) {
        return parts.stream().filter(Component::isInUse).toList();
    }

    private String described(Object... properties) {
        return String.join(", ", Stream.of(properties).map(words::of).filter(text -> !text.isBlank()).toList());
    }

    private void add(String group, String item, String description, Quantity amount, Unit unit) {
        Amount sum = items.computeIfAbsent(List.of(group, item, description), k -> new Amount(0, unit, 0));
        items.put(List.of(group, item, description), sum.plus(amount == null ? 0 : amount.si()));
    }

    private void pieces(String group, String item, String description, int count) {
        Amount sum = items.computeIfAbsent(List.of(group, item, description), k -> new Amount(0, null, 0));
        items.put(List.of(group, item, description), sum.plus(count));
    }

    private List<Block> table() {
        List<List<Object>> rows = new ArrayList<>();
        items.forEach((key, amount) -> {
            List<Object> row = new ArrayList<>(key);
            row.add(amount.unit() == null ? words.format().number(amount.si()) : words.of(Quantity.ofSi(amount.si(),
                    amount.unit())));
            row.add(amount.unit() == null ? "pieces" : "in " + amount.parts() + (amount.parts() == 1 ? " part"
                    : " parts"));
            rows.add(row);
        });
        return rows.isEmpty() ? List.of(new Block.Paragraph("The site has no parts yet."))
                : new Tables(words).of("table/bill-of-quantities", "Parts in use, net", List.of("Group", "Item",
                        "Description", "Amount", ""),
                        rows, "Lengths and areas are net; what is lost in cutting, lapping and breaking comes on"
                                + " top.", "");
    }
}

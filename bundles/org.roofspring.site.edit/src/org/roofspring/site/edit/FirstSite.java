package org.roofspring.site.edit;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Downpipe;
import org.roofspring.site.Gutter;
import org.roofspring.site.GutterOutlet;
import org.roofspring.site.GutterProfile;
import org.roofspring.site.Ids;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.OutletShape;
import org.roofspring.site.PipeMaterial;
import org.roofspring.site.PipeRun;
import org.roofspring.site.PlaceInGround;
import org.roofspring.site.Pump;
import org.roofspring.site.PumpKind;
import org.roofspring.site.Purpose;
import org.roofspring.site.RainSource;
import org.roofspring.site.RawWater;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.RunUse;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.Screen;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TankKind;
import org.roofspring.site.Tap;
import org.roofspring.site.TapKind;
import org.roofspring.site.Target;
import org.roofspring.site.Use;

/**
 * A first site from eight answers: enough to be calculated at once, and every value of it can be edited afterwards.
 *
 * @param name        of the site
 * @param people      who live on it, at least 1
 * @param uses        what the water is for; at least one
 * @param roofM2      seen from above [m2], above 0
 * @param material    of the roof
 * @param rainFile    record of the place, as a path from the folder of the site; empty where there are only normals
 * @param normalsMm   mean rain of the twelve months [mm], January first; empty where there is a record
 * @param wetDays     mean wet days of the twelve months, beside the normals
 * @param tankM3      of the main tank [m3], above 0
 * @param liftM       from the main tank to an overhead tank [m]; 0 where taps run from the main tank
 * @param reliability share of days to be met in full, above 0, at most 1
 * @param budget      in the currency of the site; empty where there is no limit
 */
public record FirstSite(String name, int people, List<Purpose> uses, double roofM2, RoofMaterial material,
        Optional<String> rainFile, List<Double> normalsMm, List<Double> wetDays, double tankM3, double liftM,
        double reliability, Optional<Double> budget) {
    /** Litres that a person uses in a day, offered as a beginning. */
    private static final Map<Purpose, Double> LITRES = litres();
    private static final String LITRES_SOURCE = "From memory, verify against The Sphere Handbook, 2018 edition, basic survival "
            + "water needs; count your own use and edit this.";
    private static final String UNTESTED = "Never tested. Not for drinking or cooking without treatment.";
    private static final double OVERHEAD_SHARE = 0.05;
    private static final double LEAST_OVERHEAD_M3 = 0.2;
    private static final SiteFactory MODEL = SiteFactory.eINSTANCE;

    public FirstSite {
        uses = List.copyOf(uses);
        normalsMm = List.copyOf(normalsMm);
        wetDays = List.copyOf(wetDays);
        check(name != null && !name.isBlank(), "The site needs a name.");
        check(people >= 1 && people <= 1_000_000, "People is " + people + "; 1 to 1 000 000 are accepted.");
        check(!uses.isEmpty(), "Choose at least one use of the water.");
        check(roofM2 > 0 && roofM2 <= 100_000, "The roof is " + roofM2 + " m\u00b2; above 0 to 100 000 m\u00b2 are accepted.");
        check(tankM3 > 0 && tankM3 <= 100_000, "The tank is " + tankM3 + " m\u00b3; above 0 to 100 000 m\u00b3 are accepted.");
        check(liftM >= 0 && liftM <= 500, "The lift is " + liftM + " m; 0 to 500 m are accepted.");
        check(reliability > 0 && reliability <= 1, "The target is " + reliability + "; above 0 to 100 % are accepted.");
        check(budget.isEmpty() || budget.get() >= 0, "The budget is " + budget.orElse(0.0) + "; zero or more is accepted.");
        check(rainFile.isPresent() || normalsMm.size() == 12 && wetDays.size() == 12,
                "Name a rain file, or enter rain and wet days of all twelve months.");
    }

    private static void check(boolean holds, String sentence) {
        if (!holds) {
            throw new IllegalArgumentException(sentence);
        }
    }

    private static Map<Purpose, Double> litres() {
        Map<Purpose, Double> litres = new EnumMap<>(Purpose.class);
        litres.put(Purpose.DRINKING, 3.0);
        litres.put(Purpose.COOKING, 6.0);
        litres.put(Purpose.WASHING, 6.0);
        litres.put(Purpose.LAUNDRY, 10.0);
        litres.put(Purpose.FLUSHING, 15.0);
        litres.put(Purpose.CLEANING, 2.0);
        litres.put(Purpose.GARDEN, 10.0);
        litres.put(Purpose.LIVESTOCK, 10.0);
        return litres;
    }

    /** Purposes that can be asked for, the most vital first. */
    public static List<Purpose> purposes() {
        return List.of(Purpose.DRINKING, Purpose.COOKING, Purpose.WASHING, Purpose.LAUNDRY, Purpose.CLEANING, Purpose.FLUSHING,
                Purpose.LIVESTOCK, Purpose.GARDEN);
    }

    /** Litres for a person and a day that a purpose begins with. */
    public static double litresEach(Purpose purpose) {
        return LITRES.get(purpose);
    }

    /** Makes the site. */
    public Site build() {
        Site site = MODEL.createSite();
        site.setName(name.trim());
        site.setRain(rain());
        site.setTarget(target());
        Tank main = tank();
        site.getTanks().add(main);
        wayIn(site, main);
        Tap tap = tap();
        site.getTaps().add(tap);
        if (liftM > 0) {
            lift(site, main, tap);
        } else {
            site.getPipeRuns().add(run("To the tap", RunUse.GRAVITY_BRANCH, main, tap, 5));
        }
        for (Purpose purpose : purposes()) {
            if (uses.contains(purpose)) {
                site.getUses().add(use(purpose, site.getUses().size() + 1, tap));
            }
        }
        RawWater water = MODEL.createRawWater();
        water.setSource(UNTESTED);
        site.setRawWater(water);
        Ids.assignMissing(site);
        return site;
    }

    private RainSource rain() {
        RainSource rain = MODEL.createRainSource();
        rain.setName(rainFile.isPresent() ? "Rain record" : "Monthly normals");
        rainFile.ifPresent(rain::setFile);
        for (int month = 1; month <= normalsMm.size(); month++) {
            MonthlyNormal normal = MODEL.createMonthlyNormal();
            normal.setMonth(month);
            normal.setDepth(Quantity.of(normalsMm.get(month - 1), Units.MM));
            normal.setWetDays(Quantity.of(wetDays.get(month - 1)));
            rain.getNormals().add(normal);
        }
        return rain;
    }

    private Target target() {
        Target target = MODEL.createTarget();
        target.setTimeReliability(Quantity.ofSi(reliability, Units.PERCENT));
        budget.ifPresent(amount -> target.setBudget(Quantity.of(amount, Units.MONEY)));
        return target;
    }

    private Tank tank() {
        Tank tank = MODEL.createTank();
        tank.setName(liftM > 0 ? "Cistern" : "Tank");
        tank.setKind(liftM > 0 ? TankKind.CISTERN : TankKind.POLY);
        tank.setCapacity(Quantity.of(tankM3, Units.M3));
        // as tall as it is wide, and no taller than a roof's eaves let water in
        double heightM = Math.min(2, Math.cbrt(4 * tankM3 / Math.PI));
        tank.setHeight(Quantity.of(heightM, Units.M));
        tank.setBaseLevel(Quantity.of(0, Units.M));
        tank.setOutletHeight(Quantity.of(0.05 * heightM, Units.M));
        tank.setOverflowHeight(Quantity.of(0.95 * heightM, Units.M));
        tank.setCover(TankCover.SCREENED);
        tank.setPlaceInGround(PlaceInGround.ON_GROUND);
        return tank;
    }

    private void wayIn(Site site, Tank main) {
        double sideM = Math.sqrt(roofM2);
        Roof roof = MODEL.createRoof();
        roof.setName("Roof");
        roof.setPlanArea(Quantity.of(roofM2, Units.M2));
        roof.setMaterial(material);
        roof.setRunoffBasis(RunoffBasis.EVENT);
        roof.setEavesLength(Quantity.of(sideM, Units.M));
        Gutter gutter = MODEL.createGutter();
        gutter.setName("Gutter");
        gutter.setProfile(GutterProfile.HALF_ROUND);
        gutter.setWidth(Quantity.of(125, Units.MM));
        gutter.setLength(Quantity.of(sideM, Units.M));
        gutter.setSlope(Quantity.ofSi(0.005, Units.PERCENT));
        GutterOutlet outlet = MODEL.createGutterOutlet();
        outlet.setName("Outlet");
        outlet.setShape(OutletShape.SHARP);
        outlet.setDiameter(Quantity.of(90, Units.MM));
        Downpipe downpipe = MODEL.createDownpipe();
        downpipe.setName("Downpipe");
        downpipe.setBore(Quantity.of(90, Units.MM));
        downpipe.setLength(Quantity.of(3, Units.M));
        Screen screen = MODEL.createScreen();
        screen.setName("Inlet screen");
        screen.setMesh(Quantity.of(1, Units.MM));
        screen.setArea(Quantity.of(900, Units.CM2));
        screen.setOpenShare(Quantity.ofSi(0.6, Units.PERCENT));
        RoofDrain drain = MODEL.createRoofDrain();
        drain.setTo(gutter);
        roof.getDrains().add(drain);
        gutter.getOutlets().add(outlet);
        outlet.setTo(downpipe);
        downpipe.setDrainsTo(screen);
        screen.setDrainsTo(main);
        site.getRoofs().add(roof);
        site.getGutters().add(gutter);
        site.getDownpipes().add(downpipe);
        site.getScreens().add(screen);
    }

    private static Tap tap() {
        Tap tap = MODEL.createTap();
        tap.setName("Tap");
        tap.setKind(TapKind.TAP);
        tap.setLevel(Quantity.of(0, Units.M));
        tap.setDesignFlow(Quantity.of(6, Units.L_PER_MIN));
        tap.setMinimumHead(Quantity.of(0.5, Units.M_HEAD));
        return tap;
    }

    /** A pump without a curve: which one it is to be, the engineer decides by its points. */
    private void lift(Site site, Tank main, Tap tap) {
        Tank overhead = MODEL.createTank();
        overhead.setName("Overhead tank");
        overhead.setKind(TankKind.OVERHEAD);
        overhead.setCapacity(Quantity.of(Math.min(tankM3, Math.max(LEAST_OVERHEAD_M3, OVERHEAD_SHARE * tankM3)), Units.M3));
        overhead.setBaseLevel(Quantity.of(liftM, Units.M));
        overhead.setHeight(Quantity.of(1.2, Units.M));
        overhead.setOutletHeight(Quantity.of(0.05, Units.M));
        overhead.setOverflowHeight(Quantity.of(1.1, Units.M));
        overhead.setStartHeight(Quantity.of(0.5, Units.M));
        overhead.setStopHeight(Quantity.of(1.05, Units.M));
        overhead.setCover(TankCover.SCREENED);
        overhead.setPlaceInGround(PlaceInGround.ON_STAND);
        Pump pump = MODEL.createPump();
        pump.setName("Pump (enter its points)");
        pump.setKind(PumpKind.SURFACE);
        pump.setLevel(Quantity.of(0.3, Units.M));
        site.getTanks().add(overhead);
        site.getPumps().add(pump);
        site.getPipeRuns().add(run("Suction", RunUse.SUCTION, main, pump, 2));
        site.getPipeRuns().add(run("Rising main", RunUse.RISING_MAIN, pump, overhead, liftM + 5));
        site.getPipeRuns().add(run("To the tap", RunUse.GRAVITY_BRANCH, overhead, tap, liftM + 5));
    }

    private static PipeRun run(String name, RunUse use, org.roofspring.site.PipeNode from, org.roofspring.site.PipeNode to,
            double lengthM) {
        PipeRun run = MODEL.createPipeRun();
        run.setName(name);
        run.setUse(use);
        run.setFrom(from);
        run.setTo(to);
        run.setBore(Quantity.of(use == RunUse.GRAVITY_BRANCH ? 21 : 35, Units.MM));
        run.setLength(Quantity.of(lengthM, Units.M));
        run.setMaterial(PipeMaterial.PVC);
        return run;
    }

    private Use use(Purpose purpose, int priority, Tap tap) {
        Use use = MODEL.createUse();
        use.setName(Words.choice(purpose));
        use.setPurpose(purpose);
        use.setConsumers("people");
        use.setCount(Quantity.of(people));
        use.setAmountEach(Quantity.of(litresEach(purpose), Units.L_PER_D));
        use.setPriority(priority);
        use.setNote(LITRES_SOURCE);
        use.getTaps().add(tap);
        return use;
    }

    /** What is still to be entered before everything can be calculated. */
    public List<String> stillOpen() {
        List<String> open = new ArrayList<>();
        if (liftM > 0) {
            open.add("Enter the points of the pump, or compare candidates on the pump board.");
        }
        if (rainFile.isEmpty()) {
            open.add("Find a daily rain record: rain invented from normals has too few long droughts.");
        }
        return open;
    }
}

package org.roofspring.calc.standard.water;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

import org.roofspring.quantity.Units;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.Pump;
import org.roofspring.site.RationingRule;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.site.TankCover;
import org.roofspring.site.TopUp;
import org.roofspring.site.Use;
import org.roofspring.storage.YieldRule;
import org.roofspring.storage.system.Leak;
import org.roofspring.storage.system.RationStep;
import org.roofspring.storage.system.Stage;
import org.roofspring.storage.system.StorageSystem;
import org.roofspring.storage.system.SystemBalance;
import org.roofspring.storage.system.SystemResult;
import org.roofspring.storage.system.SystemSeries;
import org.roofspring.storage.system.Transfer;

/**
 * The whole site as the storage kernel sees it: a chain of stages, uses, losses and top-ups, with inflow and demand of
 * every day. The state is warmed up: a first pass over the record from empty tanks gives the volumes that the counted
 * pass begins with.
 */
public final class WholeSystem {
    private final Site site;
    private final TankChain chain;
    private final RoofInflow roofs;
    private final SystemSeries series;
    private final List<Use> uses;

    private WholeSystem(Site site, TankChain chain, RoofInflow roofs, SystemSeries series, List<Use> uses) {
        this.site = site;
        this.chain = chain;
        this.roofs = roofs;
        this.series = series;
        this.uses = uses;
    }

    /**
     * @param site         with at least one tank and one use with an amount
     * @param firstDay     of the rain
     * @param depthMm      of each day, without gaps
     * @param pumpM3PerDay what each pump can lift in a day, where it is known
     * @param efficiency   share of each roof's runoff that gets past its gutters
     */
    public static WholeSystem of(Site site, LocalDate firstDay, double[] depthMm,
            Function<Pump, OptionalDouble> pumpM3PerDay, ToDoubleFunction<Roof> efficiency) {
        TankChain chain = TankChain.of(site, pumpM3PerDay);
        RoofInflow roofs = RoofInflow.of(site, depthMm, efficiency);
        List<double[]> inflow = new ArrayList<>();
        for (List<Tank> stage : chain.stages()) {
            double[] sum = new double[depthMm.length];
            for (Tank tank : stage) {
                double[] toTank = roofs.toTank(tank);
                for (int day = 0; toTank != null && day < sum.length; day++) {
                    sum[day] += toTank[day];
                }
            }
            inflow.add(sum);
        }
        List<Use> uses = site.getUses().stream().filter(use -> use.isInUse() && use.getAmountEach() != null).toList();
        List<double[]> demand = uses.stream().map(use -> UseDemand.seriesM3(use, firstDay, depthMm.length)).toList();
        return new WholeSystem(site, chain, roofs, new SystemSeries(inflow, demand, evaporation(site, firstDay, depthMm.length)), uses);
    }

    private static double[] evaporation(Site site, LocalDate firstDay, int days) {
        double[] byMonth = new double[13];
        boolean any = false;
        if (site.getRain() != null) {
            for (MonthlyNormal normal : site.getRain().getNormals()) {
                if (normal.getEvaporation() != null && normal.getMonth() >= 1 && normal.getMonth() <= 12) {
                    byMonth[normal.getMonth()] = normal.getEvaporation().in(Units.MM);
                    any = true;
                }
            }
        }
        if (!any) {
            return new double[0];
        }
        double[] evaporationMm = new double[days];
        for (int day = 0; day < days; day++) {
            LocalDate date = firstDay.plusDays(day);
            evaporationMm[day] = byMonth[date.getMonthValue()] / YearMonth.from(date).lengthOfMonth();
        }
        return evaporationMm;
    }

    /** Runs the record with the state warmed up. */
    public SystemResult run(YieldRule rule, BooleanSupplier cancelled) {
        return SystemBalance.run(system(rule, warmStartM3(rule, cancelled)), series, List.of(), cancelled);
    }

    /** Volume of each stage after a pass over the record from empty tanks [m3]. */
    public double[] warmStartM3(YieldRule rule, BooleanSupplier cancelled) {
        double[] start = new double[chain.stages().size()];
        SystemResult warmUp = SystemBalance.run(system(rule, start), series, List.of(), cancelled);
        for (int stage = 0; stage < start.length; stage++) {
            double[] volumes = warmUp.stageVolumesM3(stage);
            start[stage] = volumes[volumes.length - 1];
        }
        return start;
    }

    /**
     * The system with given volumes at the start.
     *
     * @param startM3 volume of each stage, dead volume included [m3]; shared among joined tanks by capacity
     */
    public StorageSystem system(YieldRule rule, double[] startM3) {
        List<Stage> stages = new ArrayList<>();
        List<Transfer> transfers = new ArrayList<>();
        for (int i = 0; i < chain.stages().size(); i++) {
            List<Tank> tanks = chain.stages().get(i);
            double capacityM3 = tanks.stream().mapToDouble(tank -> tank.getCapacity().si()).sum();
            double filled = capacityM3 > 0 ? Math.min(1, startM3[i] / capacityM3) : 0;
            String name = String.join(" + ", tanks.stream().map(WholeSystem::name).toList());
            boolean overflowsOn = i + 1 < chain.stages().size() && tanks.stream().anyMatch(t -> chain.stages().get(chain.stageOf(tanks.get(0)) + 1).contains(t.getOverflowsTo()));
            stages.add(new Stage(name, tanks.stream().map(tank -> kernelTank(tank, filled)).toList(), Stage.Joint.OPEN,
                    overflowsOn ? Stage.Overflow.NEXT_STAGE : Stage.Overflow.AWAY));
            if (i > 0) {
                TankChain.Way way = chain.ways().get(i - 1);
                transfers.add(new Transfer(way.maxM3PerDay(), 0, way.pumped()));
            }
        }
        return new StorageSystem(stages, transfers, uses.stream().map(this::kernelUse).toList(), topUp(), rule);
    }

    private static org.roofspring.storage.system.Tank kernelTank(Tank tank, double filled) {
        double capacityM3 = tank.getCapacity().si();
        double deadM3 = Math.min(capacityM3, Given.si(tank, SitePackage.Literals.TANK__DEAD_VOLUME, 0));
        double openM2 = tank.getOpenArea() != null ? tank.getOpenArea().si()
                : tank.getCover() == TankCover.OPEN ? surfaceM2(tank) : 0;
        double factor = Given.si(tank, SitePackage.Literals.TANK__EVAPORATION_FACTOR, 1);
        double leakM3PerDay = tank.getLeakage() == null ? 0 : tank.getLeakage().in(Units.M3_PER_D);
        // leakage is given at half full; it grows with the depth, so with the volume of an upright tank
        Leak leak = leakM3PerDay > 0 ? new Leak(Math.min(1, leakM3PerDay / (capacityM3 / 2)), 0, 0) : Leak.NONE;
        return new org.roofspring.storage.system.Tank(name(tank), capacityM3, deadM3, filled * capacityM3, openM2 * factor, leak);
    }

    private static double surfaceM2(Tank tank) {
        if (tank.getDiameter() != null) {
            return Math.PI * tank.getDiameter().si() * tank.getDiameter().si() / 4;
        }
        if (tank.getLength() != null && tank.getWidth() != null) {
            return tank.getLength().si() * tank.getWidth().si();
        }
        return tank.getHeight() == null ? 0 : tank.getCapacity().si() / tank.getHeight().si();
    }

    private org.roofspring.storage.system.Use kernelUse(Use use) {
        int stage = stageOf(use);
        double stageM3 = chain.stages().get(stage).stream().mapToDouble(tank -> tank.getCapacity().si()).sum();
        List<RationStep> steps = new ArrayList<>();
        for (RationingRule rule : site.getRationing()) {
            boolean concerns = rule.isInUse() && (rule.getUses().isEmpty() || rule.getUses().contains(use));
            if (concerns && rule.getBelow() != null && rule.getAllowed() != null) {
                double ofM3 = rule.getTank() != null && rule.getTank().getCapacity() != null ? rule.getTank().getCapacity().si() : usableM3();
                steps.add(new RationStep(Math.max(0, rule.getBelow().si() * ofM3), rule.getAllowed().si()));
            }
        }
        double reserveM3 = use.getPriority() > 1 ? chain.stages().get(stage).stream()
                .filter(tank -> tank.getReserveVolume() != null)
                .mapToDouble(tank -> tank.getReserveVolume().si() + Given.si(tank, SitePackage.Literals.TANK__DEAD_VOLUME, 0)).sum() : 0;
        return new org.roofspring.storage.system.Use(name(use), stage, use.getPriority(), Math.min(reserveM3, stageM3), false, steps);
    }

    /** The stage of the tank named, else of the tank that feeds its taps, else the last one. */
    private int stageOf(Use use) {
        int stage = use.getTank() == null ? -1 : chain.stageOf(use.getTank());
        if (stage < 0) {
            PipePaths paths = new PipePaths(site);
            stage = use.getTaps().stream().map(paths::feedingTank).flatMap(Optional::stream).mapToInt(chain::stageOf)
                    .filter(s -> s >= 0).findFirst().orElse(chain.stages().size() - 1);
        }
        return stage;
    }

    private Optional<org.roofspring.storage.system.TopUp> topUp() {
        for (TopUp topUp : site.getTopUps()) {
            if (topUp.isInUse() && topUp.getLoad() != null && topUp.getLoad().si() > 0) {
                int stage = topUp.getTank() == null || chain.stageOf(topUp.getTank()) < 0 ? 0 : chain.stageOf(topUp.getTank());
                double stageM3 = chain.stages().get(stage).stream().mapToDouble(tank -> tank.getCapacity().si()).sum();
                double below = topUp.getOrderBelow() == null ? 0.1 : topUp.getOrderBelow().si();
                int delay = topUp.getDelay() == null ? 1 : (int) Math.round(topUp.getDelay().in(Units.D));
                double price = topUp.getPrice() == null ? 0 : topUp.getPrice().si();
                return Optional.of(new org.roofspring.storage.system.TopUp(stage, topUp.getLoad().si(), below * stageM3, topUp.getLoad().si(), delay, price));
            }
        }
        return Optional.empty();
    }

    /** Volume of all tanks that can be drawn [m3]. */
    public double usableM3() {
        return chain.stages().stream().flatMap(List::stream)
                .mapToDouble(tank -> Math.max(0, tank.getCapacity().si() - Given.si(tank, SitePackage.Literals.TANK__DEAD_VOLUME, 0))).sum();
    }

    private static String name(org.roofspring.site.NamedElement element) {
        return element.getName() == null ? element.getId() : element.getName();
    }

    public TankChain chain() {
        return chain;
    }

    public RoofInflow roofs() {
        return roofs;
    }

    public SystemSeries series() {
        return series;
    }

    public List<Use> uses() {
        return uses;
    }
}

package org.roofspring.calc.standard.water;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.calc.Applicability;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Inputs;
import org.roofspring.quantity.Units;
import org.roofspring.site.Pump;
import org.roofspring.site.Roof;
import org.roofspring.site.RunoffBasis;
import org.roofspring.site.Site;

/** What every calculation of storage reads of the site: its rain, roofs, tanks and uses. */
public final class SiteStorage {
    private SiteStorage() {
    }

    /** Whether there is a roof, a tank and a use to balance. */
    public static Applicability check(Site site) {
        List<String> reasons = new ArrayList<>();
        if (site.getRoofs().stream().noneMatch(roof -> roof.isInUse() && roof.getPlanArea() != null)) {
            reasons.add("There is no roof with a plan area.");
        }
        if (site.getTanks().stream().noneMatch(tank -> tank.isInUse() && tank.getCapacity() != null)) {
            reasons.add("There is no tank with a capacity.");
        }
        if (site.getUses().stream().noneMatch(use -> use.isInUse() && use.getAmountEach() != null)) {
            reasons.add("There is no use with an amount of water.");
        }
        return new Applicability(reasons);
    }

    /** The rain that drives the balance. */
    public static FindingValue.Daily rain(Inputs inputs) {
        return inputs.value("rain.record", "daily", FindingValue.Daily.class);
    }

    /** The whole site under that rain. */
    public static WholeSystem system(Site site, Inputs inputs) {
        return system(site, rain(inputs), inputs);
    }

    /** The whole site under another rain. */
    public static WholeSystem system(Site site, FindingValue.Daily rain, Inputs inputs) {
        return WholeSystem.of(site, rain.firstDay(), rain.values(), pump -> liftedM3PerDay(pump, inputs),
                roof -> efficiency(roof, inputs));
    }

    private static OptionalDouble liftedM3PerDay(Pump pump, Inputs inputs) {
        return inputs.finding("pump.duty", "flow", pump.getId())
                .map(finding -> ((FindingValue.Number) finding.value()).quantity().in(Units.M3_PER_D))
                .map(flow -> OptionalDouble.of(flow * TankChain.supplyShare(pump))).orElse(OptionalDouble.empty());
    }

    /**
     * Share of a roof's runoff that gets past its gutters: as entered, or else as computed from them. A coefficient of
     * whole years holds that loss already.
     */
    public static double efficiency(Roof roof, Inputs inputs) {
        if (roof.getCollectionEfficiency() != null) {
            return roof.getCollectionEfficiency().si();
        }
        return roof.getRunoffBasis() == RunoffBasis.LONG_TERM ? 1
                : inputs.finding("roof.drainage", "collectionEfficiency", roof.getId())
                        .map(finding -> ((FindingValue.Number) finding.value()).quantity().si()).orElse(1.0);
    }
}

package org.roofspring.calc.standard.water;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;
import org.roofspring.storage.outlook.TankGauge;

/** Heights and volumes of the water in a tank of the site. Heights are over its floor, levels over the site datum. */
public final class TankWater {
    private TankWater() {
    }

    /** Level of the floor [m]. */
    public static double floorM(Tank tank) {
        return Given.si(tank, SitePackage.Literals.TANK__BASE_LEVEL, 0);
    }

    /** Height of the outlet [m]; the floor where it is not given. */
    public static double outletHeightM(Tank tank) {
        return Given.si(tank, SitePackage.Literals.TANK__OUTLET_HEIGHT, 0);
    }

    /** Height of the highest water [m]: that of the overflow, else of the roof, else the floor. */
    public static double topHeightM(Tank tank) {
        return tank.getOverflowHeight() != null ? tank.getOverflowHeight().si()
                : Given.si(tank, SitePackage.Literals.TANK__HEIGHT, 0);
    }

    /** Height that a pump lifts to [m]: that of the inlet, else the top. */
    public static double inletHeightM(Tank tank) {
        return tank.getInletHeight() != null ? tank.getInletHeight().si()
                : Math.max(topHeightM(tank), Given.si(tank, SitePackage.Literals.TANK__HEIGHT, 0));
    }

    /**
     * Height that the water falls to in ordinary use [m]: where its pump starts, else half way between outlet and top.
     */
    public static double usualLowHeightM(Tank tank) {
        return tank.getStartHeight() != null ? tank.getStartHeight().si()
                : (outletHeightM(tank) + Math.max(outletHeightM(tank), topHeightM(tank))) / 2;
    }

    /**
     * Height against volume: by the curve of the tank, else as in an upright tank of even section; empty where neither
     * a curve that rises nor capacity and height are given.
     */
    public static Optional<TankGauge> gauge(Tank tank) {
        List<TankGauge.Point> curve = tank.getLevelVolume().stream()
                .filter(point -> point.getHeight() != null && point.getVolume() != null)
                .map(point -> new TankGauge.Point(point.getHeight().si(), point.getVolume().si())).toList();
        if (curve.size() >= 2) {
            return rises(curve) ? Optional.of(new TankGauge(curve)) : Optional.empty();
        }
        double topM = topHeightM(tank);
        return tank.getCapacity() == null || topM <= 0 ? Optional.empty()
                : Optional.of(TankGauge.upright(topM, tank.getCapacity().si()));
    }

    private static boolean rises(List<TankGauge.Point> curve) {
        for (int i = 1; i < curve.size(); i++) {
            if (curve.get(i).heightM() <= curve.get(i - 1).heightM()
                    || curve.get(i).volumeM3() <= curve.get(i - 1).volumeM3()) {
                return false;
            }
        }
        return true;
    }

    /** Volume up to a height [m3], by the gauge; absent where there is none. */
    public static OptionalDouble volumeM3(Tank tank, double heightM) {
        return gauge(tank).map(gauge -> OptionalDouble.of(gauge.volumeM3(Math.max(0, heightM))))
                .orElse(OptionalDouble.empty());
    }

    /** Volume between the heights at which its pump starts and stops [m3]; absent where they are not both known. */
    public static OptionalDouble switchVolumeM3(Tank tank) {
        if (tank.getStartHeight() == null || tank.getStopHeight() == null) {
            return OptionalDouble.empty();
        }
        OptionalDouble low = volumeM3(tank, tank.getStartHeight().si());
        OptionalDouble high = volumeM3(tank, tank.getStopHeight().si());
        return low.isEmpty() || high.getAsDouble() - low.getAsDouble() < 1e-6 ? OptionalDouble.empty()
                : OptionalDouble.of(high.getAsDouble() - low.getAsDouble());
    }
}

package org.roofspring.calc.standard.water;

import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.site.LevelVolumePoint;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Tank;

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
     * Volume up to a height [m3]: by the curve of the tank, else as in an upright tank of even section; absent where
     * neither curve nor capacity and height are given.
     */
    public static OptionalDouble volumeM3(Tank tank, double heightM) {
        List<LevelVolumePoint> curve = tank.getLevelVolume().stream()
                .filter(point -> point.getHeight() != null && point.getVolume() != null).toList();
        if (curve.size() >= 2) {
            return OptionalDouble.of(byCurve(curve, heightM));
        }
        double topM = topHeightM(tank);
        return tank.getCapacity() == null || topM <= 0 ? OptionalDouble.empty()
                : OptionalDouble.of(tank.getCapacity().si() * Math.min(Math.max(heightM, 0), topM) / topM);
    }

    private static double byCurve(List<LevelVolumePoint> curve, double heightM) {
        LevelVolumePoint low = curve.get(0);
        for (LevelVolumePoint high : curve) {
            double highM = high.getHeight().si();
            if (heightM <= highM) {
                double lowM = low.getHeight().si();
                double share = highM > lowM ? Math.max(0, (heightM - lowM) / (highM - lowM)) : 1;
                return low.getVolume().si() + share * (high.getVolume().si() - low.getVolume().si());
            }
            low = high;
        }
        return low.getVolume().si();
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

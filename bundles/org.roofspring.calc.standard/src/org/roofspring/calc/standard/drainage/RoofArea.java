package org.roofspring.calc.standard.drainage;

import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.drainage.RoofPlane;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Roof;
import org.roofspring.site.SitePackage;

/**
 * What a roof gathers: its plan area over the years, and more than that when wind drives the rain of a storm on it.
 *
 * @param roof        in the site
 * @param planM2      area seen from above
 * @param effectiveM2 area that counts in the design storm
 * @param peakRatio   share that runs off in the design storm
 * @param yearRatio   share that runs off over the years
 * @param sloped      whether eaves and slope are known, so that wind could be counted
 * @param step        how the effective area was found
 */
record RoofArea(Roof roof, double planM2, double effectiveM2, double peakRatio, double yearRatio, boolean sloped,
        Step step) {
    private static final Source DRIVEN = Source.published(
            "BS EN 12056-3, effective catchment with wind, as quoted by a gutter supplier");

    /** @throws IllegalArgumentException when the roof's figures cannot be, in one sentence */
    static RoofArea of(Roof roof) {
        double planM2 = roof.getPlanArea().si();
        double peak = Given.si(roof, SitePackage.Literals.ROOF__PEAK_RUNOFF, 1);
        double year = Given.si(roof, SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT, 0.8);
        Input plan = Given.input("A", "plan area", roof, SitePackage.Literals.ROOF__PLAN_AREA, roof.getPlanArea());
        boolean sloped = roof.getEavesLength() != null && roof.getEavesLength().si() > 0
                && (roof.getSlopeHeight() != null || roof.getPitch() != null);
        if (!sloped) {
            Quantity area = Quantity.of(planM2, Units.M2);
            return new RoofArea(roof, planM2, planM2, peak, year, false, Step.of("Ae",
                    "effective area; the plan area, for eaves length and slope are not given", "A", area, DRIVEN,
                            plan));
        }
        double eavesM = roof.getEavesLength().si();
        double widthM = planM2 / eavesM;
        RoofPlane plane = roof.getSlopeHeight() != null ? new RoofPlane(eavesM, widthM, roof.getSlopeHeight().si())
                : RoofPlane.pitched(eavesM, widthM, roof.getPitch().in(Units.DEG));
        double effectiveM2 = plane.effectiveAreaM2(RoofPlane.Wind.DRIVEN);
        return new RoofArea(roof, planM2, effectiveM2, peak, year, true, Step.of("Ae",
                "area that gathers rain driven by the wind, 2 down for 1 along", "A + L H / 2",
                Quantity.of(effectiveM2, Units.M2), DRIVEN, plan,
                Given.input("L", "length of the eaves", roof, SitePackage.Literals.ROOF__EAVES_LENGTH,
                        roof.getEavesLength()),
                new Input("H", "rise from eaves to ridge", Quantity.of(plane.riseM(), Units.M), roof.getId(),
                        roof.getSlopeHeight() != null ? "slopeHeight" : "pitch")));
    }
}

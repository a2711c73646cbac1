package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Quantity;
import org.roofspring.site.RawWater;
import org.roofspring.site.Site;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Use;
import org.roofspring.treatment.safety.TestParameter;
import org.roofspring.treatment.train.WaterState;

/**
 * The stored water before treatment.
 *
 * @param cold       at the coldest, when chlorine is slowest
 * @param warm       at the warmest, when Legionella grows
 * @param unmeasured values that nobody has measured, in words; empty where all are
 * @param assumed    what was taken for want of a value, to be shown
 */
record SourceWater(WaterState cold, WaterState warm, List<String> unmeasured, List<Assumed> assumed) {
    /** Taken where nobody says how turbid the water is [NTU]: too turbid for a lamp. */
    private static final double DEFAULT_TURBIDITY_NTU = 5;
    private static final double DEFAULT_PH = 7;
    /** Share of ultraviolet light that passes 10 mm of stored roof water. */
    private static final double DEFAULT_TRANSMITTANCE = 0.85;

    SourceWater {
        unmeasured = List.copyOf(unmeasured);
        assumed = List.copyOf(assumed);
    }

    /** As a use draws it: tests at its tanks count. */
    static SourceWater of(SiteReading site, Use use) {
        WaterWay way = site.ways().get(use);
        return of(site.site(), site.tests().stored(TestParameter.TURBIDITY, use, way),
                site.tests().stored(TestParameter.PH, use, way));
    }

    /** As it reaches a train; one that no use draws through has no tank to be tested at. */
    static SourceWater of(SiteReading site, TrainDemand demand) {
        return demand.uses().isEmpty() ? of(site.site(), OptionalDouble.empty(), OptionalDouble.empty())
                : of(site, demand.uses().get(0));
    }

    private static SourceWater of(Site site, OptionalDouble testedTurbidity, OptionalDouble testedPh) {
        RawWater raw = site.getRawWater();
        boolean tested = raw != null && raw.isTested();
        List<String> unmeasured = new ArrayList<>();
        List<Assumed> assumed = new ArrayList<>();
        double turbidity = value("turbidity", "NTU", raw == null ? null : raw.getTurbidity(), tested,
                testedTurbidity, DEFAULT_TURBIDITY_NTU, unmeasured, assumed);
        double ph = value("pH", "", raw == null ? null : raw.getPh(), tested,
                testedPh, DEFAULT_PH, unmeasured, assumed);
        assumed.add(new Assumed("stored water", "ultraviolet light that passes 10 mm",
                SiteTerms.shown(100 * DEFAULT_TRANSMITTANCE) + " %",
                org.roofspring.treatment.Source.assumed("clear stored roof water; leaves and thatch colour it")));
        double coldC = Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MIN, 10);
        double warmC = Given.si(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MAX, 30);
        if (!Given.isGiven(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MIN)) {
            assumed.add(new Assumed("stored water", "coldest", SiteTerms.shown(coldC) + " degC",
                    org.roofspring.treatment.Source.commonPractice("water temperature where none is given")));
        }
        if (!Given.isGiven(site, SitePackage.Literals.SITE__WATER_TEMPERATURE_MAX)) {
            assumed.add(new Assumed("stored water", "warmest", SiteTerms.shown(warmC) + " degC",
                    org.roofspring.treatment.Source.commonPractice("water temperature where none is given")));
        }
        return new SourceWater(WaterState.of(turbidity, ph, coldC, DEFAULT_TRANSMITTANCE),
                WaterState.of(turbidity, ph, warmC, DEFAULT_TRANSMITTANCE), unmeasured, assumed);
    }

    /** A tested value of the raw water, else the latest test, else the value entered, else a default. */
    private static double value(String what, String unit, Quantity entered, boolean tested, OptionalDouble latest,
            double otherwise, List<String> unmeasured, List<Assumed> assumed) {
        if (tested && entered != null) {
            return entered.si();
        }
        if (latest.isPresent()) {
            return latest.getAsDouble();
        }
        double value = entered != null ? entered.si() : otherwise;
        String shown = (what + " " + SiteTerms.shown(value) + " " + unit).trim();
        unmeasured.add(shown);
        assumed.add(new Assumed("stored water", what, (SiteTerms.shown(value) + " " + unit).trim(), entered != null
                ? SiteTerms.entered("not from a test")
                : org.roofspring.treatment.Source.assumed("nobody has measured it")));
        return value;
    }
}

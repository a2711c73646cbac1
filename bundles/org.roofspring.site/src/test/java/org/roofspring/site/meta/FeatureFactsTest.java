package org.roofspring.site.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.Fitting;
import org.roofspring.site.MonthlyNormal;
import org.roofspring.site.PipeRun;
import org.roofspring.site.RainSource;
import org.roofspring.site.Roof;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage.Literals;

class FeatureFactsTest {
    private static final SiteFactory FACTORY = SiteFactory.eINSTANCE;

    @Test
    void factsOfAQuantity() {
        FeatureFacts facts = FeatureFacts.of(Literals.PIPE_RUN__BORE);
        assertEquals(Optional.of(Dimension.LENGTH), facts.dimension());
        assertEquals(Optional.of(Units.MM), facts.usualUnit());
        assertEquals(OptionalDouble.of(0), facts.minimum());
        assertTrue(facts.aboveMinimum());
        assertEquals(OptionalDouble.of(3), facts.maximum());
        assertEquals(Optional.empty(), facts.defaultValue());
        assertTrue(facts.documentation().startsWith("True inside diameter."), facts.documentation());
    }

    @Test
    void factsOfAFeatureWithoutDimension() {
        FeatureFacts facts = FeatureFacts.of(Literals.NAMED_ELEMENT__NAME);
        assertEquals(Optional.empty(), facts.dimension());
        assertEquals(OptionalDouble.empty(), facts.minimum());
        assertFalse(FeatureFacts.isQuantity(Literals.NAMED_ELEMENT__NAME));
        assertTrue(FeatureFacts.isQuantity(Literals.READING__VALUE));
        assertEquals(Optional.empty(), FeatureFacts.of(Literals.READING__VALUE).dimension());
    }

    @Test
    void aGivenValueComesBeforeTheDefault() {
        Roof roof = FACTORY.createRoof();
        KnownValue known = FeatureFacts.of(Literals.ROOF__RUNOFF_COEFFICIENT).valueIn(roof).orElseThrow();
        assertTrue(known.isDefault());
        assertEquals(0.8, known.quantity().si(), 1e-15);
        assertTrue(known.defaultSource().orElseThrow().startsWith("common value for hard roofs"));
        roof.setRunoffCoefficient(Quantity.of(0.65));
        known = FeatureFacts.of(Literals.ROOF__RUNOFF_COEFFICIENT).valueIn(roof).orElseThrow();
        assertFalse(known.isDefault());
        assertEquals(Quantity.of(0.65), known.quantity());
        assertEquals(Optional.empty(), FeatureFacts.of(Literals.ROOF__PLAN_AREA).valueIn(roof));
        assertThrows(IllegalArgumentException.class,
                () -> FeatureFacts.of(Literals.NAMED_ELEMENT__NAME).valueIn(roof));
    }

    @Test
    void refusalsSayWhatIsAccepted() {
        FeatureFacts area = FeatureFacts.of(Literals.ROOF__PLAN_AREA);
        assertEquals(Optional.of("must be above 0\u00a0m\u00b2"), area.refusal(Quantity.of(0, Units.M2)));
        assertEquals(Optional.of("must be an area, not a length"), area.refusal(Quantity.of(5, Units.M)));
        assertEquals(Optional.empty(), area.refusal(Quantity.of(1000, Units.FT2)));
        FeatureFacts share = FeatureFacts.of(Literals.ROOF__RUNOFF_COEFFICIENT);
        assertEquals(Optional.of("must be at most 100\u202f%"), share.refusal(Quantity.of(1.01)));
        assertEquals(Optional.empty(), share.refusal(Quantity.of(100, Units.PERCENT)));
        assertEquals(Optional.of("must be at least 0\u202f%"), share.refusal(Quantity.of(-1, Units.PERCENT)));
    }

    @Test
    void violationsNameElementFeatureAndRange() {
        Site site = FACTORY.createSite();
        Roof roof = FACTORY.createRoof();
        roof.setId("roof-1");
        roof.setName("Barn");
        roof.setPlanArea(Quantity.of(-3, Units.M2));
        site.getRoofs().add(roof);
        PipeRun run = FACTORY.createPipeRun();
        run.setId("run-1");
        Fitting fitting = FACTORY.createFitting();
        fitting.setCount(-2);
        run.getFittings().add(fitting);
        site.getPipeRuns().add(run);
        RainSource rain = FACTORY.createRainSource();
        rain.setId("rain-1");
        MonthlyNormal normal = FACTORY.createMonthlyNormal();
        rain.getNormals().add(normal);
        site.setRain(rain);
        assertEquals(List.of(
                "month of MonthlyNormal in RainSource (rain-1): 0 must be at least 1",
                "planArea of Roof \"Barn\" (roof-1): -3 m2 must be above 0\u00a0m\u00b2",
                "count of Fitting in PipeRun (run-1): -2 must be at least 0"),
                Violation.in(site).stream().map(Violation::sentence).toList());
        roof.setPlanArea(null);
        assertEquals("planArea of Roof \"Barn\" (roof-1): must be given", Violation.of(roof).get(0).sentence());
    }
}

package org.roofspring.ui.tests.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Random;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.junit.jupiter.api.Test;
import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Units;
import org.roofspring.site.RoofMaterial;
import org.roofspring.site.SitePackage;
import org.roofspring.site.Weekday;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.ui.field.FeatureText;

/** What people type, and what they are shown. */
class FeatureTextTest {
    private static FeatureText metric(EAttribute attribute) {
        return FeatureText.of(attribute, UnitSystem.METRIC, "KES");
    }

    private static String refused(EAttribute attribute, String text) {
        return assertThrows(IllegalArgumentException.class, () -> metric(attribute).read(text)).getMessage();
    }

    @Test
    void anyUnitOfTheDimensionIsReadAndKept() {
        assertEquals(Quantity.of(2000, Units.GAL_US), metric(SitePackage.Literals.TANK__CAPACITY).read("2000 galUS"));
        assertEquals(Quantity.of(1.5, Units.BAR), metric(SitePackage.Literals.PIPE_RUN__PRESSURE_CLASS).read(" 1.5bar "));
        assertEquals(Quantity.of(240, Units.M2), metric(SitePackage.Literals.ROOF__PLAN_AREA).read("240 m\u00b2"));
    }

    @Test
    void thePreferredUnitIsShown() {
        assertEquals("7.57082\u00a0m\u00b3", metric(SitePackage.Literals.TANK__CAPACITY).write(Quantity.of(2000, Units.GAL_US)));
        assertEquals("2\u202f583.34\u00a0ft\u00b2", FeatureText.of(SitePackage.Literals.ROOF__PLAN_AREA, UnitSystem.US_CUSTOMARY, "cur")
                .write(Quantity.of(240, Units.M2)));
    }

    @Test
    void aNumberAloneIsTakenInTheUnitShown() {
        assertEquals(Quantity.of(250, Units.M2), metric(SitePackage.Literals.ROOF__PLAN_AREA).read("250"));
        assertEquals(Quantity.of(250, Units.FT2), FeatureText.of(SitePackage.Literals.ROOF__PLAN_AREA, UnitSystem.US_CUSTOMARY, "cur").read("250"));
        assertEquals(Quantity.of(1200, Units.MONEY), metric(SitePackage.Literals.TARGET__BUDGET).read("1200"));
    }

    @Test
    void aShareIsNotTakenForPerCent() {
        FeatureText share = metric(SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT);
        assertEquals(Quantity.of(0.8), share.read("0.8"));
        assertEquals(Quantity.of(80, Units.PERCENT), share.read("80 %"));
        assertEquals("80\u202f%", share.write(Quantity.of(0.8)));
        assertTrue(refused(SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT, "80").contains("must be at most"));
    }

    /** Whatever is shown can be read back, in every system, for every quantity of the model. */
    @Test
    void whatIsShownIsReadBack() {
        Random random = new Random(7);
        for (EClassifier classifier : SitePackage.eINSTANCE.getEClassifiers()) {
            if (!(classifier instanceof EClass type)) {
                continue;
            }
            for (EAttribute attribute : type.getEAttributes()) {
                FeatureFacts facts = FeatureFacts.of(attribute);
                if (facts.dimension().isEmpty()) {
                    continue;
                }
                double low = Math.max(facts.minimum().orElse(-1000), -1000);
                double high = Math.min(facts.maximum().orElse(Double.MAX_VALUE), low + 2_000_000);
                for (UnitSystem system : UnitSystem.values()) {
                    FeatureText text = FeatureText.of(attribute, system, "KES");
                    for (int i = 0; i < 20; i++) {
                        double si = low + (high - low) * (0.05 + 0.9 * random.nextDouble());
                        Quantity value = Quantity.ofSi(si, facts.usualUnit().orElse(Units.si(facts.dimension().get())));
                        String shown = text.write(value);
                        Quantity read = (Quantity) text.read(shown);
                        double scale = Math.max(Math.abs(value.si()), facts.dimension().get() == Dimension.TEMPERATURE ? 20 : 1e-12);
                        assertEquals(value.si(), read.si(), scale * 1e-4, type.getName() + "." + attribute.getName() + " \"" + shown + "\"");
                    }
                }
            }
        }
    }

    @Test
    void refusalsAreSentences() {
        assertEquals("\"300 L\" is a volume, but an area is needed (m2, cm2, ha, ft2)", refused(SitePackage.Literals.ROOF__PLAN_AREA, "300 L"));
        assertEquals("\"2000 gal\": which gallon? write galUS (3.785 L) or galImp (4.546 L)", refused(SitePackage.Literals.TANK__CAPACITY, "2000 gal"));
        assertTrue(refused(SitePackage.Literals.ROOF__PLAN_AREA, "-3 m2").contains("must be above 0"));
        assertTrue(refused(SitePackage.Literals.ROOF__PLAN_AREA, "lots").contains("is not a number with a unit"));
        assertTrue(refused(SitePackage.Literals.ROOF__PLAN_AREA, "1e999 m2").contains("too large"));
        assertEquals("\"two\" is not a whole number", refused(SitePackage.Literals.PUMP__COUNT, "two"));
        assertTrue(refused(SitePackage.Literals.WATER_TEST__VALUE, "NaN").contains("a number is needed"));
        assertTrue(refused(SitePackage.Literals.COMPONENT__INSTALLED, "31.3.2024").contains("a day such as 2024-03-31"));
        assertTrue(refused(SitePackage.Literals.NAMED_ELEMENT__NAME, "a\u0001b").contains("U+0001"));
    }

    @Test
    void otherValuesAreReadAndShown() {
        assertEquals(LocalDate.of(2024, 3, 31), metric(SitePackage.Literals.COMPONENT__INSTALLED).read("2024-03-31"));
        assertEquals(12, metric(SitePackage.Literals.PUMP__COUNT).read("12"));
        assertEquals(RoofMaterial.CLAY_TILE, metric(SitePackage.Literals.ROOF__MATERIAL).read("Clay tile"));
        FeatureText days = metric(SitePackage.Literals.USE_CALENDAR__WEEKDAYS);
        assertEquals(List.of(Weekday.MONDAY, Weekday.FRIDAY), days.read("monday, friday"));
        assertEquals("monday, friday", days.write(List.of(Weekday.MONDAY, Weekday.FRIDAY)));
        assertNull(metric(SitePackage.Literals.ROOF__PLAN_AREA).read("  "));
        assertEquals("", metric(SitePackage.Literals.ROOF__PLAN_AREA).write(null));
    }

    @Test
    void defaultsAreShownWithTheirSource() {
        FeatureText runoff = metric(SitePackage.Literals.ROOF__RUNOFF_COEFFICIENT);
        assertEquals("80\u202f%", runoff.assumed().orElseThrow());
        assertTrue(runoff.assumedSource().orElseThrow().contains("common value"));
    }
}

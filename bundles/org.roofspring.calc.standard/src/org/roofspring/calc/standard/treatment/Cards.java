package org.roofspring.calc.standard.treatment;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.calc.Caution;
import org.roofspring.calc.FindingValue.Table;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.calc.standard.water.Given;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.DisinfectantProduct;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.StepKind;
import org.roofspring.site.StrengthBasis;
import org.roofspring.site.Tank;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.UpkeepTask;
import org.roofspring.treatment.disinfection.BleachAgeing;
import org.roofspring.treatment.disinfection.ChlorineDose;
import org.roofspring.treatment.disinfection.ChlorineProduct;
import org.roofspring.treatment.disinfection.ChlorineProduct.Form;
import org.roofspring.treatment.disinfection.ChlorineResidual;
import org.roofspring.treatment.disinfection.DisinfectionCautions;

/** Tables to hang beside the tank: how much chlorine for which volume, and what is cleaned when. */
final class Cards {
    /** Above this many drops nobody counts. */
    private static final double MOST_DROPS = 400;
    private static final double TANK_DOSE_MG_PER_L = 5;
    private static final double VESSEL_M3 = 0.1;

    /** A product on the card. */
    private record Product(String label, ChlorineProduct product, org.roofspring.treatment.Source source) {
    }

    private Cards() {
    }

    /** The dosing card of every chlorination, or one of usual products for a site that has none. */
    static Outcome.Completed dosing(SiteReading site) {
        AnswerBuilder all = new AnswerBuilder(null);
        boolean any = false;
        for (TreatmentTrain train : site.trains()) {
            for (TreatmentStep step : train.getSteps()) {
                if (step.isActive() && step.getKind() == StepKind.CHLORINATION) {
                    any = true;
                    all.include(card(site, step));
                }
            }
        }
        if (!any && site.judged().stream().anyMatch(use -> SiteReading.kernelUse(use.getPurpose()).orElseThrow()
                != org.roofspring.treatment.safety.Use.GARDEN)) {
            all.include(emergency(site));
        }
        return all.build();
    }

    private static Outcome.Completed card(SiteReading site, TreatmentStep step) {
        AnswerBuilder answer = new AnswerBuilder(step.getId());
        Map<String, Double> volumes = volumes(site);
        if (step.getBatchVolume() != null) {
            volumes.put("Batch of " + SiteTerms.name(step), step.getBatchVolume().si());
        }
        List<Product> products = step.getStrength() == null || step.getProduct() == DisinfectantProduct.UNSTATED
                ? usual() : List.of(own(site, step));
        boolean given = step.getDose() != null;
        answer.add("dosingCard", "Dosing card", table(site, volumes, products,
                given ? step.getDose().si() : Double.NaN));
        double highest = given ? step.getDose().si() : TANK_DOSE_MG_PER_L;
        DisinfectionCautions.chlorine(highest, step.getResidual() != null).forEach(caution -> answer.caution(
                KernelTerms.caution(step.getId(), caution,
                        KernelTerms.source(DisinfectionCautions.TANK_DOSE_SOURCE))));
        return answer.build();
    }

    private static Outcome.Completed emergency(SiteReading site) {
        AnswerBuilder answer = new AnswerBuilder(null);
        answer.add("dosingCard", "Dosing card, for an emergency or after cleaning",
                table(site, volumes(site), usual(), Double.NaN));
        DisinfectionCautions.chlorine(TANK_DOSE_MG_PER_L, false).forEach(caution -> answer.caution(
                KernelTerms.caution(null, caution, KernelTerms.source(DisinfectionCautions.TANK_DOSE_SOURCE))));
        return answer.build();
    }

    /** @param doseMgPerL what the step doses; not a number where the usual doses are to be taken */
    private static Table table(SiteReading site, Map<String, Double> volumes, List<Product> products,
            double doseMgPerL) {
        double turbidity = site.site().getRawWater() == null || site.site().getRawWater().getTurbidity() == null ? 0
                : site.site().getRawWater().getTurbidity().si();
        List<List<Object>> rows = new ArrayList<>();
        volumes.forEach((name, volumeM3) -> {
            boolean vessel = volumeM3 <= VESSEL_M3;
            double dose = !Double.isNaN(doseMgPerL) ? doseMgPerL
                    : vessel ? ChlorineResidual.householdDoseMgPerL(turbidity) : TANK_DOSE_MG_PER_L;
            org.roofspring.treatment.Source doseSource = !Double.isNaN(doseMgPerL) ? SiteTerms.entered("dose")
                    : vessel ? ChlorineResidual.HOUSEHOLD_SOURCE : DisinfectionCautions.TANK_DOSE_SOURCE;
            for (Product product : products) {
                ChlorineDose amount = ChlorineDose.of(volumeM3, dose, product.product());
                double massKg = amount.productMassKg().orElse(amount.productVolumeM3().orElse(0)
                        * product.product().densityKgPerM3());
                boolean drops = amount.drops().isPresent() && amount.drops().getAsDouble() <= MOST_DROPS;
                rows.add(Arrays.asList(name, Quantity.ofSi(volumeM3, Units.L), product.label(),
                        Quantity.of(dose, Units.MG_PER_L), Quantity.ofSi(massKg, Units.G),
                        amount.productVolumeM3().isPresent()
                                ? Quantity.ofSi(amount.productVolumeM3().getAsDouble(), Units.ML) : null,
                        drops ? Quantity.of(amount.drops().getAsDouble()) : null,
                        "dose: " + SiteTerms.source(doseSource) + "; product: " + SiteTerms.source(product.source())
                                + (drops ? "; drops: " + SiteTerms.source(ChlorineDose.DROP_SOURCE) : "")));
            }
        });
        return new Table(List.of("Water", "Volume", "Product", "Chlorine", "Weigh", "Or measure", "Or drops",
                "Source"), rows);
    }

    /** Vessels that people fill, and each tank full, half and a quarter full. */
    private static Map<String, Double> volumes(SiteReading site) {
        Map<String, Double> volumes = new LinkedHashMap<>();
        volumes.put("Bottle of 1 L", 0.001);
        volumes.put("Bucket of 10 L", 0.01);
        volumes.put("Can of 20 L", 0.02);
        for (Tank tank : site.site().getTanks()) {
            if (tank.isInUse() && tank.getCapacity() != null && tank.getCapacity().si() > 0) {
                String name = SiteTerms.name(tank);
                volumes.put(name + ", a quarter full", tank.getCapacity().si() / 4);
                volumes.put(name + ", half full", tank.getCapacity().si() / 2);
                volumes.put(name + ", full", tank.getCapacity().si());
            }
        }
        return volumes;
    }

    private static List<Product> usual() {
        org.roofspring.treatment.Source label = org.roofspring.treatment.Source.commonPractice(
                "a usual product; read the label of yours");
        return List.of(new Product("Plain bleach, 5 %", ChlorineProduct.of(Form.LIQUID, 0.05), label),
                new Product("Pool liquid, 12.5 %", ChlorineProduct.of(Form.LIQUID, 0.125), label),
                new Product("Granules, 65 %", ChlorineProduct.of(Form.GRANULES, 0.65), label));
    }

    private static Product own(SiteReading site, TreatmentStep step) {
        try {
            Form form = switch (step.getProduct()) {
                case GRANULES -> Form.GRANULES;
                case TABLETS -> Form.TABLETS;
                default -> Form.LIQUID;
            };
            ChlorineProduct.Basis basis = switch (step.getStrengthBasis()) {
                case WEIGHT_PER_VOLUME -> ChlorineProduct.Basis.WEIGHT_PER_VOLUME;
                case WEIGHT_PER_WEIGHT -> ChlorineProduct.Basis.WEIGHT_PER_WEIGHT;
                case AUTO -> ChlorineProduct.defaultBasis(form);
            };
            double density = step.getProductDensity() == null ? ChlorineProduct.DEFAULT_DENSITY
                    : step.getProductDensity().si();
            double strength = step.getStrength().si();
            boolean aged = form == Form.LIQUID && step.getProductAge() != null && step.getProductAge().si() > 0;
            double now = aged ? BleachAgeing.DEFAULT.strengthRatio(strength, step.getProductAge().si(),
                    Given.si(site.site(), Literals.SITE__WATER_TEMPERATURE_USUAL, 20)) : strength;
            String kind = switch (form) {
                case LIQUID -> "Liquid";
                case GRANULES -> "Granules";
                case TABLETS -> "Tablets";
            };
            String label = kind + ", " + SiteTerms.shown(100 * strength) + " %" + (step.getStrengthBasis()
                    == StrengthBasis.AUTO ? "" : basis == ChlorineProduct.Basis.WEIGHT_PER_VOLUME
                            ? " by volume" : " by weight")
                    + (aged ? ", aged to " + SiteTerms.shown(100 * now) + " %" : "");
            return new Product(label, new ChlorineProduct(form, now, basis, density),
                    aged ? BleachAgeing.SOURCE : SiteTerms.entered("product"));
        } catch (IllegalArgumentException e) {
            throw new UnreadableException(step.getId(), SiteTerms.name(step), e);
        }
    }

    /** What is cleaned when: the site's own tasks first, then what the steps ask for, then the tank. */
    static Outcome.Completed cleaning(SiteReading site) {
        List<List<Object>> rows = new ArrayList<>();
        for (UpkeepTask task : site.site().getUpkeep()) {
            rows.add(Arrays.asList(SiteTerms.name(task), task.getChecklist() == null ? ""
                    : task.getChecklist().lines().reduce((a, b) -> a + "; " + b).orElse(""),
                    task.getInterval() == null ? when(task) : "every " + SiteTerms.shown(task.getInterval()
                            .in(Units.D)) + " d", text(task.getWho()), text(task.getHazard()),
                    SiteTerms.user(text(task.getSource())).toString()));
        }
        for (TreatmentTrain train : site.trains()) {
            for (ReadStep step : site.steps(train)) {
                step.tasks().forEach(task -> rows.add(List.of(step.name(), task.text(), "every "
                        + SiteTerms.shown(task.intervalS() / 86_400) + " d", "", "",
                        SiteTerms.source(task.source()).toString())));
            }
        }
        Source practice = Source.commonPractice("sludge is looked at each year");
        rows.add(List.of("Every tank", "Look for sludge from the hatch; have it sucked or flushed out from outside; "
                + "rinse, fill, chlorinate at 5 mg/L, wait a day, and let no one drink it above 5 mg/L",
                "looked at every year", "", "A tank is a confined space: air in it can kill without warning. Nobody "
                        + "enters it but trained people with gas test, rope and attendant, by the local code.",
                practice.toString()));
        AnswerBuilder answer = new AnswerBuilder(null);
        answer.add("cleaningCard", "Cleaning card",
                new Table(List.of("What", "How", "When", "Who", "Mind", "Source"), rows));
        if (site.site().getTanks().stream().anyMatch(Tank::isInUse)) {
            answer.caution(new Caution("cleaning.confined-space", Caution.Severity.DANGER, null,
                    "Tanks are cleaned from outside: air in them can kill without warning.", List.of(),
                    "Entry is for trained people with gas test and attendant; follow the local code.",
                    Source.fromMemory("29 CFR 1910.146, permit-required confined spaces")));
        }
        return answer.build();
    }

    private static String when(UpkeepTask task) {
        if (task.isBeforeFirstRain()) {
            return "before the first rain";
        }
        return task.getDueOn().isEmpty() ? "when needed"
                : "on " + String.join(", ", task.getDueOn().stream().map(day -> day.toString().substring(2)).toList());
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}

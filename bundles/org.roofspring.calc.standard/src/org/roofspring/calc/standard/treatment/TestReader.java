package org.roofspring.calc.standard.treatment;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import org.roofspring.quantity.Dimension;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Reading;
import org.roofspring.site.ReadingKind;
import org.roofspring.site.WaterParameter;
import org.roofspring.site.WaterTest;
import org.roofspring.treatment.Source;
import org.roofspring.treatment.safety.TestLimit;
import org.roofspring.treatment.safety.TestParameter;

/** Brings results, as laboratories write them, to the units that limits are stated in. */
final class TestReader {
    private static final String NATIONAL = "ask which limit holds and have the cause found by the health authority";

    private TestReader() {
    }

    /** A test from a laboratory or a kit. */
    static TestResult read(WaterTest test) {
        WaterParameter parameter = test.getParameter();
        Optional<TestParameter> known = known(parameter);
        double written = test.getValue() == null ? 0 : test.getValue().si();
        boolean count = known.filter(TestReader::isCount).isPresent() || parameter == WaterParameter.TOTAL_COLIFORMS;
        // A count below detection is a count of none; a concentration below detection may be anything up to there.
        double value = test.isBelowDetection() && count ? 0 : written;
        String unit = test.getUnit() == null ? "" : test.getUnit().trim();
        OptionalDouble factor = factor(parameter, unit, test);
        Optional<String> problem = factor.isPresent() ? Optional.empty() : Optional.of(wanted(parameter, unit));
        OptionalDouble read = factor.isPresent() ? OptionalDouble.of(value * factor.getAsDouble())
                : OptionalDouble.empty();
        String asWritten = test.getValue() == null ? "none found"
                : (test.isBelowDetection() ? "below " : "") + SiteTerms.shown(written)
                        + (unit.isEmpty() ? "" : " " + unit);
        return new TestResult(test.getElement(), parameter, known, label(parameter, known),
                known.map(TestParameter::unit).orElse(unit), read, asWritten, limit(test, known, factor),
                test.getDate(), test.getLaboratory() == null || test.getLaboratory().isBlank()
                        ? "a laboratory that is not named" : test.getLaboratory(), problem);
    }

    /** A reading of the people on the site, where it is one that a limit is known for. */
    static Optional<TestResult> read(Reading reading) {
        WaterParameter parameter = switch (reading.getKind()) {
            case TURBIDITY -> WaterParameter.TURBIDITY;
            case PH -> WaterParameter.PH;
            case FREE_CHLORINE -> WaterParameter.FREE_CHLORINE;
            default -> null;
        };
        Quantity value = reading.getValue();
        if (parameter == null || value == null || value.dimension() != dimension(reading.getKind())) {
            return Optional.empty();
        }
        TestParameter known = known(parameter).orElseThrow();
        return Optional.of(new TestResult(reading.getElement(), parameter, Optional.of(known), known.label(),
                known.unit(), OptionalDouble.of(value.si()), value.toString(), Optional.of(known.defaultLimit()),
                reading.getDate(), reading.getReader() == null ? "own kit" : reading.getReader() + ", own kit",
                Optional.empty()));
    }

    private static Dimension dimension(ReadingKind kind) {
        return switch (kind) {
            case TURBIDITY -> Dimension.TURBIDITY;
            case FREE_CHLORINE -> Dimension.CONCENTRATION;
            default -> Dimension.RATIO;
        };
    }

    private static Optional<TestParameter> known(WaterParameter parameter) {
        return Optional.ofNullable(switch (parameter) {
            case ECOLI -> TestParameter.E_COLI;
            case HYDROGEN_SULPHIDE_STRIP -> TestParameter.HYDROGEN_SULPHIDE_STRIP;
            case TURBIDITY -> TestParameter.TURBIDITY;
            case PH -> TestParameter.PH;
            case FREE_CHLORINE -> TestParameter.FREE_CHLORINE;
            case LEAD -> TestParameter.LEAD;
            case COPPER -> TestParameter.COPPER;
            case ZINC -> TestParameter.ZINC;
            case PESTICIDES -> TestParameter.PESTICIDES;
            case HYDROCARBONS -> TestParameter.HYDROCARBONS;
            default -> null;
        });
    }

    private static boolean isCount(TestParameter parameter) {
        return parameter == TestParameter.E_COLI || parameter == TestParameter.HYDROGEN_SULPHIDE_STRIP;
    }

    private static String label(WaterParameter parameter, Optional<TestParameter> known) {
        return known.map(TestParameter::label).orElseGet(() -> switch (parameter) {
            case TOTAL_COLIFORMS -> "total coliforms";
            case ASBESTOS_FIBRES -> "asbestos fibres";
            case UNSTATED, OTHER -> "a parameter that is not named";
            default -> parameter.getLiteral();
        });
    }

    /** What turns the written number into the unit of the limit; empty where the unit is not one of the parameter. */
    private static OptionalDouble factor(WaterParameter parameter, String unit, WaterTest test) {
        String plain = unit.toLowerCase(Locale.ROOT).replace(" ", "");
        return switch (parameter) {
            case ECOLI, TOTAL_COLIFORMS -> countIn100Ml(plain);
            case PESTICIDES, HYDROCARBONS -> test.getLimit() != null && test.getLimit().si() > 0
                    ? OptionalDouble.of(1 / test.getLimit().si()) : OptionalDouble.empty();
            case TURBIDITY -> plain.isEmpty() || plain.equals("ntu") || plain.equals("fnu") ? OptionalDouble.of(1)
                    : OptionalDouble.empty();
            case FREE_CHLORINE, LEAD, COPPER, ZINC, ARSENIC, NITRATE -> concentration(unit, plain);
            default -> OptionalDouble.of(1);
        };
    }

    private static OptionalDouble countIn100Ml(String plain) {
        if (plain.isEmpty() || plain.endsWith("100ml") || plain.equals("cfu") || plain.equals("mpn")) {
            return OptionalDouble.of(1);
        }
        if (plain.endsWith("/ml")) {
            return OptionalDouble.of(100);
        }
        return plain.endsWith("/l") ? OptionalDouble.of(0.1) : OptionalDouble.empty();
    }

    private static OptionalDouble concentration(String unit, String plain) {
        if (plain.equals("ppm")) {
            return OptionalDouble.of(1);
        }
        if (plain.equals("ppb")) {
            return OptionalDouble.of(1e-3);
        }
        return Units.find(unit).filter(found -> found.dimension() == Dimension.CONCENTRATION).map(TestReader::mgPerL)
                .map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static double mgPerL(Unit unit) {
        return Quantity.of(1, unit).in(Units.MG_PER_L);
    }

    private static String wanted(WaterParameter parameter, String unit) {
        return switch (parameter) {
            case PESTICIDES, HYDROCARBONS -> "the limit that the result is held against is not given";
            default -> "its unit \"" + unit + "\" is not one of " + switch (parameter) {
                case ECOLI, TOTAL_COLIFORMS -> "a count in 100 mL";
                case TURBIDITY -> "NTU";
                default -> "mg/L or ug/L";
            };
        };
    }

    /** The limit given with the result, or else the default one. */
    private static Optional<TestLimit> limit(WaterTest test, Optional<TestParameter> known, OptionalDouble factor) {
        Optional<TestLimit> usual = known.map(TestParameter::defaultLimit).or(() -> usual(test.getParameter()));
        boolean ownRange = usual.filter(limit -> limit.low().isPresent()).isPresent();
        if (test.getLimit() == null || factor.isEmpty() || ownRange) {
            return usual;
        }
        OptionalDouble high = OptionalDouble.of(test.getLimit().si() * factor.getAsDouble());
        String from = test.getLimitSource() == null || test.getLimitSource().isBlank() ? "limit given with the result"
                : test.getLimitSource();
        return Optional.of(new TestLimit(OptionalDouble.empty(), high, usual.map(TestLimit::health).orElse(true),
                SiteTerms.entered(from), usual.map(TestLimit::action).orElse("Stop drinking it; " + NATIONAL + ".")));
    }

    /** Limits of what the kernel does not know. */
    private static Optional<TestLimit> usual(WaterParameter parameter) {
        return switch (parameter) {
            case ARSENIC -> Optional.of(health(0.01, "arsenic 0.01 mg/L", "Stop drinking and cooking with it; look "
                    + "for treated timber on the roof, and " + NATIONAL + "."));
            case NITRATE -> Optional.of(health(50, "nitrate 50 mg/L as nitrate", "Give it to no infant; look for "
                    + "sewage or manure that reaches the tank, and " + NATIONAL + "."));
            default -> Optional.empty();
        };
    }

    private static TestLimit health(double high, String what, String action) {
        return new TestLimit(OptionalDouble.empty(), OptionalDouble.of(high), true,
                Source.fromMemory("WHO Guidelines for Drinking-water Quality, 4th ed: " + what), action);
    }
}

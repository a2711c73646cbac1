package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Source;
import org.roofspring.calc.Source.Standing;
import org.roofspring.calc.standard.answer.KernelTerms;
import org.roofspring.drainage.siting.RoofCaution;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.treatment.Caution;

class KernelTermsTest {
    private static final Source WHY = Source.commonPractice("why");

    @Test
    void aTreatmentSourceKeepsHowSureItIs() {
        for (var standing : org.roofspring.treatment.Source.Standing.values()) {
            assertStanding(standing.name(),
                    KernelTerms.source(new org.roofspring.treatment.Source("a", standing)));
        }
    }

    @Test
    void aDrainageSourceKeepsHowSureItIs() {
        for (var standing : org.roofspring.drainage.Source.Standing.values()) {
            assertStanding(standing.name(), KernelTerms.source(new org.roofspring.drainage.Source("a", standing)));
        }
    }

    private static void assertStanding(String kernel, Source source) {
        switch (kernel) {
            case "READ" -> assertEquals(Source.published("a"), source);
            case "AS_QUOTED" -> assertEquals("a, as quoted by others (published)", source.toString());
            case "FROM_MEMORY" -> assertEquals(Source.fromMemory("a"), source);
            case "COMMON_PRACTICE" -> assertEquals(Source.commonPractice("a"), source);
            case "ASSUMED" -> assertTrue(source.toString().contains("assumed"), source.toString());
            case "DERIVED" -> assertEquals(Standing.DEFINITION, source.standing());
            default -> throw new AssertionError(kernel + " is not covered");
        }
    }

    @Test
    void aDangerSaysWhomToAsk() {
        var danger = KernelTerms.caution("step1", Caution.danger("a.b", "Can't {be} drunk."), WHY);
        assertEquals(Severity.DANGER, danger.severity());
        assertEquals("step1", danger.elementId());
        assertEquals(WHY, danger.source());
        assertEquals("Can't {be} drunk. Ask your local health authority.", danger.text(QuantityFormat.metric()));
    }

    @Test
    void aDangerThatSaysItAlreadyIsNotToldTwice() {
        String text = "Never do it. Follow your local health authority.";
        var danger = KernelTerms.caution(null, Caution.danger("a.b", text), WHY);
        assertEquals("Follow your local health authority.", danger.askWhom());
        assertEquals(text, danger.text(QuantityFormat.metric()));
    }

    @Test
    void whatIsNoDangerIsRepeatedAsItIs() {
        var info = KernelTerms.caution(null, Caution.info("a.b", "Said. Twice."), WHY);
        assertEquals("Said. Twice.", info.text(QuantityFormat.metric()));
        assertEquals("", info.askWhom());
    }

    @ParameterizedTest
    @EnumSource
    void everyRoofCautionIsRepeated(RoofCaution caution) {
        var repeated = KernelTerms.caution("roof1", caution);
        String text = repeated.text(QuantityFormat.metric());
        assertTrue(text.startsWith(caution.text()) && text.endsWith(caution.askWhom()), text);
        assertEquals(caution.code(), repeated.code());
        assertFalse(repeated.source().citation().isBlank());
    }
}

package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Source.Standing;
import org.roofspring.calc.standard.answer.TreatmentTerms;
import org.roofspring.quantity.QuantityFormat;
import org.roofspring.treatment.Caution;
import org.roofspring.treatment.Source;

class TreatmentTermsTest {
    @Test
    void aSourceKeepsHowSureItIs() {
        assertEquals(Standing.PUBLISHED, TreatmentTerms.source(Source.read("a")).standing());
        assertTrue(TreatmentTerms.source(Source.asQuoted("a")).toString().contains("as quoted by others"));
        assertEquals("a (from memory, verify)", TreatmentTerms.source(Source.fromMemory("a")).toString());
        assertEquals(Standing.COMMON_PRACTICE, TreatmentTerms.source(Source.commonPractice("a")).standing());
        assertTrue(TreatmentTerms.source(Source.assumed("a")).toString().contains("assumed"));
        assertEquals(Standing.DEFINITION, TreatmentTerms.source(Source.derived("a")).standing());
    }

    @Test
    void aDangerSaysWhomToAsk() {
        var danger = TreatmentTerms.caution("step1", Caution.danger("a.b", "Can't {be} drunk."));
        assertEquals(Severity.DANGER, danger.severity());
        assertEquals("step1", danger.elementId());
        assertEquals("Can't {be} drunk. Ask your local health authority.", danger.text(QuantityFormat.metric()));
        var info = TreatmentTerms.caution(null, Caution.info("a.b", "Said."));
        assertEquals("Said.", info.text(QuantityFormat.metric()));
    }
}

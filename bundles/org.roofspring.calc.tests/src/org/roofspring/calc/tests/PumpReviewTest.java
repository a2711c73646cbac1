package org.roofspring.calc.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.roofspring.calc.tests.SmallSites.q;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.FindingValue.Verdict;
import org.roofspring.calc.FindingValue.Verdict.Level;
import org.roofspring.calc.standard.PumpDutyCalculation;
import org.roofspring.calc.standard.PumpReviewCalculation;
import org.roofspring.calc.standard.review.Basis;
import org.roofspring.calc.standard.review.PumpBasis;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PumpCandidate;
import org.roofspring.site.Remark;
import org.roofspring.site.RemarkKind;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;

/** Candidates for a pump side by side, and sign-offs that stand or fall with what they rest on. */
class PumpReviewTest {
    private static final String REVIEW = "pump.review";

    private static Asked asked(Site site) {
        return Asked.of(site, new PumpDutyCalculation(), new PumpReviewCalculation());
    }

    private static Site site() {
        Site site = SmallSites.pumped();
        candidate(site, "same", 0, 24, 0.5, 22.5, 1, 18, 1.5, 11, 2, 2);
        candidate(site, "weak", 0, 11, 0.5, 9, 1, 4);
        candidate(site, "muddled", 0, 20, 1, 15, 0.5, 18);
        return site;
    }

    private static PumpCandidate candidate(Site site, String id, double... points) {
        PumpCandidate candidate = SiteFactory.eINSTANCE.createPumpCandidate();
        candidate.setId(id);
        candidate.setName("Pump " + id);
        SmallSites.points(candidate, points);
        site.getPumps().get(0).getCandidates().add(candidate);
        return candidate;
    }

    private static List<Object> row(Asked asked, String element) {
        FindingValue.Table table = asked.value(REVIEW, "candidates", "pump", FindingValue.Table.class);
        return table.rows().stream().filter(row -> element.equals(row.get(table.columns().size() - 1))).findFirst().orElseThrow();
    }

    private static Object cell(Asked asked, String element, String column) {
        FindingValue.Table table = asked.value(REVIEW, "candidates", "pump", FindingValue.Table.class);
        return row(asked, element).get(table.columns().indexOf(column));
    }

    @Test
    void theBoardAgreesWithThePumpDuty() {
        Asked asked = asked(site());
        assertEquals(asked.number("pump.duty", "flow", "pump", Units.L_PER_S), ((Quantity) cell(asked, "pump", "Flow")).value(), 1e-12);
        assertEquals(asked.number("pump.duty", "npshMarginLowest", "pump", Units.M),
                ((Quantity) cell(asked, "pump", "NPSH margin, worst")).value(), 1e-12);
        for (String column : List.of("Flow", "Flow, lowest", "Flow, highest", "Head", "Energy", "Time to fill", "Verdict")) {
            assertEquals(cell(asked, "pump", column), cell(asked, "same", column), column);
        }
    }

    @Test
    void eachHasAVerdictAndOneBadCurveLeavesTheOthers() {
        Asked asked = asked(site());
        assertEquals(Level.BAD, asked.value(REVIEW, "verdict", "weak", Verdict.class).level());
        assertTrue(asked.value(REVIEW, "verdict", "weak", Verdict.class).reasons().get(0).contains("shut-off head"));
        assertEquals("No curve", cell(asked, "muddled", "Verdict"));
        assertTrue(((String) cell(asked, "muddled", "Reasons")).contains("rising flow"));
        assertEquals(4, asked.value(REVIEW, "candidates", "pump", FindingValue.Table.class).rows().size());
        assertTrue(asked.has(REVIEW, "headCurve", "same") && asked.has(REVIEW, "systemLowest", "pump"));
    }

    /** The duty point of each pump lies in the band of the system at its flow. */
    @Test
    void theBandHoldsTheDutyPoint() {
        Asked asked = asked(site());
        FindingValue.Curve low = asked.value(REVIEW, "systemLowest", "pump", FindingValue.Curve.class);
        FindingValue.Curve high = asked.value(REVIEW, "systemHighest", "pump", FindingValue.Curve.class);
        double flow = ((Quantity) cell(asked, "pump", "Flow")).value();
        double head = ((Quantity) cell(asked, "pump", "Head")).value();
        int next = 0;
        while (low.x()[next] < flow) {
            next++;
        }
        assertTrue(low.y()[next - 1] <= head && head <= high.y()[next], low.y()[next - 1] + " " + head + " " + high.y()[next]);
        assertEquals(12, high.y()[0], 1e-9, "at rest: the static head from the lowest water");
        assertEquals(10, low.y()[0], 1e-9, "and from the highest");
    }

    private static Remark signOff(Site site, PumpCandidate candidate) {
        Basis basis = PumpBasis.of(site, candidate);
        Remark remark = SiteFactory.eINSTANCE.createRemark();
        remark.setId("remark");
        remark.setKind(RemarkKind.ACCEPTED);
        remark.setElement(candidate);
        remark.setAuthor("A. Reviewer");
        remark.setFingerprint(basis.fingerprint());
        remark.getRestsOn().addAll(basis.lines());
        site.getRemarks().add(remark);
        return remark;
    }

    private static Verdict verdict(Site site) {
        return asked(site).value(REVIEW, "signOff", "remark", Verdict.class);
    }

    @Test
    void aSignOffFallsWithWhatItRestsOnAndStandsAgainAfterUndo() {
        Site site = site();
        signOff(site, site.getPumps().get(0).getCandidates().get(0));
        assertEquals(Level.GOOD, verdict(site).level());
        site.getTanks().get(1).setBaseLevel(q("11 m"));
        Asked changed = asked(site);
        Verdict verdict = verdict(site);
        assertEquals(Level.BAD, verdict.level());
        assertEquals(List.of("base level of Tank overhead was 10 m and is 11 m"), verdict.reasons());
        assertTrue(changed.caution(REVIEW, "review.out-of-date").contains("10 m"), changed.caution(REVIEW, "review.out-of-date"));
        site.getTanks().get(1).setBaseLevel(q("10 m"));
        assertEquals(Level.GOOD, verdict(site).level());
    }

    @Test
    void itRestsOnTheCandidateAndItsPipesAndOnNothingElse() {
        Site site = site();
        PumpCandidate candidate = site.getPumps().get(0).getCandidates().get(0);
        Remark remark = signOff(site, candidate);
        site.getPumps().get(0).getCandidates().get(1).getPoints().get(0).setHead(q("30 m"));
        candidate.setNote("a note");
        assertEquals(Level.GOOD, verdict(site).level(), "another candidate and a note do not matter");
        candidate.getPoints().get(1).setHead(q("22 m"));
        assertEquals(List.of("points 2 of Pump same was flow 0.5 L/s, head 22.5 m, efficiency 40 %, npshRequired 2 m"
                + " and is flow 0.5 L/s, head 22 m, efficiency 40 %, npshRequired 2 m"), verdict(site).reasons());
        candidate.getPoints().get(1).setHead(q("22.5 m"));
        site.getPipeRuns().get(1).getFittings().add(SiteFactory.eINSTANCE.createFitting());
        assertEquals(Level.BAD, verdict(site).level(), "a fitting was added");
        site.getPipeRuns().get(1).getFittings().clear();
        assertEquals(Level.GOOD, verdict(site).level());
        remark.setFingerprint(null);
        assertEquals(Level.BAD, verdict(site).level(), "without a fingerprint nothing can be checked");
    }
}

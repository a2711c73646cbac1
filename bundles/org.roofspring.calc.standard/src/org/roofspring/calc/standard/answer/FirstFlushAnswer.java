package org.roofspring.calc.standard.answer;

import java.util.List;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.drainage.siting.RoofCaution;
import org.roofspring.drainage.tank.Diverter;
import org.roofspring.drainage.tank.FirstFlush;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;

/** How much of the first rain to turn away, and the chamber that does it, in words. */
public final class FirstFlushAnswer {
    private static final Source AREA_TIMES_DEPTH = Source.definition("1 mm on 1 m2 is 1 L");
    private static final Source DECAY = KernelTerms.source(FirstFlush.HALF_DEPTH_SOURCE);
    private static final Source DEPTHS = KernelTerms.source(FirstFlush.DEPTH_SOURCE);

    private final AnswerBuilder answer;
    private final String elementId;
    private final double planAreaM2;
    private final double depthMm;
    private final double halfDepthMm;
    private double drainDownS;

    private FirstFlushAnswer(String elementId, double planAreaM2, double depthMm, double halfDepthMm) {
        this.answer = new AnswerBuilder(elementId);
        this.elementId = elementId;
        this.planAreaM2 = planAreaM2;
        this.depthMm = depthMm;
        this.halfDepthMm = halfDepthMm;
    }

    /**
     * For a depth that is chosen.
     *
     * @param elementId   of the diverter, or null
     * @param planAreaM2  of the roof that drains to it
     * @param depthMm     of rain to turn away
     * @param halfDepthMm of rain that halves the contamination
     */
    public static FirstFlushAnswer ofDepth(String elementId, double planAreaM2, double depthMm, double halfDepthMm) {
        FirstFlushAnswer flush = new FirstFlushAnswer(elementId, planAreaM2, depthMm, halfDepthMm);
        Quantity depth = Quantity.of(depthMm, Units.MM);
        flush.answer.number("depth", "Rain turned away", depth,
                Step.of("d", "rain turned away, as chosen", "d", depth, Source.definition("chosen")));
        flush.volumeAndShare();
        return flush;
    }

    /**
     * For a share of the first contamination that what comes next may carry.
     *
     * @param share of it; other arguments as in {@link #ofDepth}
     */
    public static FirstFlushAnswer ofShare(String elementId, double planAreaM2, double share, double halfDepthMm) {
        double depthMm = FirstFlush.depthForShareMm(share, halfDepthMm);
        FirstFlushAnswer flush = new FirstFlushAnswer(elementId, planAreaM2, depthMm, halfDepthMm);
        Quantity depth = Quantity.of(depthMm, Units.MM);
        flush.answer.number("depth", "Rain turned away", depth,
                Step.of("d", "rain after which that share is left", "-h log2(s)", depth, DECAY, flush.halfDepth(),
                        new Input("s", "share of the first contamination", Quantity.ofSi(share, Units.PERCENT))));
        flush.volumeAndShare();
        return flush;
    }

    private void volumeAndShare() {
        Quantity volume = Quantity.ofSi(FirstFlush.volumeM3(planAreaM2, depthMm), Units.L);
        Quantity left = Quantity.of(FirstFlush.shareLeft(depthMm, halfDepthMm));
        answer.number("volume", "Volume to divert", volume, Step.of("V", "volume to divert", "A d", volume,
                AREA_TIMES_DEPTH, new Input("A", "plan area", Quantity.of(planAreaM2, Units.M2)), depth()))
                .number("shareLeft", "Share of contamination still coming off", left,
                        Step.of("s", "share of the first contamination that still comes off", "0.5^(d / h)", left,
                                DECAY, depth(), halfDepth()));
    }

    private Input depth() {
        return new Input("d", "rain turned away", Quantity.of(depthMm, Units.MM));
    }

    private Input halfDepth() {
        return new Input("h", "rain that halves the contamination", Quantity.of(halfDepthMm, Units.MM));
    }

    /**
     * Adds the mean contamination of what gets past in one rain.
     *
     * @param rainMm of the whole rain
     */
    public FirstFlushAnswer inRain(double rainMm) {
        Quantity mean = Quantity.of(FirstFlush.meanSharePast(depthMm, rainMm, halfDepthMm));
        answer.number("meanSharePast", "Mean share of it in what gets past", mean,
                Step.of("sm", "mean of 0.5^(x / h) over the rain from d to P; 0 where nothing gets past",
                        "h (0.5^(d / h) - 0.5^(P / h)) / ((P - d) ln 2)", mean, DECAY, depth(), halfDepth(),
                        new Input("P", "rain", Quantity.of(rainMm, Units.MM))));
        return this;
    }

    /**
     * Adds a standing pipe that holds the volume and drains through a hole at its foot.
     *
     * @param boreM of the pipe
     * @param holeM diameter of the hole
     */
    public FirstFlushAnswer inPipe(double boreM, double holeM) {
        double heightM = FirstFlush.volumeM3(planAreaM2, depthMm) / (Math.PI / 4 * boreM * boreM);
        Quantity height = Quantity.of(heightM, Units.M);
        answer.number("chamberHeight", "Height of the chamber pipe", height,
                Step.of("H", "height that holds the volume", "V / (pi D^2 / 4)", height, Source.definition("geometry"),
                        volume(), new Input("D", "bore of the chamber", Quantity.ofSi(boreM, Units.MM))));
        return drained(Diverter.ofPipe(boreM, heightM, holeM), boreM);
    }

    /**
     * Adds a round chamber of a height that is assumed, which drains through a hole at its foot.
     *
     * @param heightM of the water when full
     * @param holeM   diameter of the hole
     */
    public FirstFlushAnswer inChamber(double heightM, double holeM) {
        double boreM = Math.sqrt(FirstFlush.volumeM3(planAreaM2, depthMm) / (Math.PI / 4 * heightM));
        Quantity bore = Quantity.ofSi(boreM, Units.MM);
        answer.number("chamberBore", "Bore of a round chamber", bore,
                new Step("H", "height of the chamber", "H", List.of(), "", Quantity.of(heightM, Units.M),
                        Source.commonPractice("assumed; a taller chamber drains a little faster")),
                Step.of("D", "bore that holds the volume", "sqrt(4 V / (pi H))", bore, Source.definition("geometry"),
                        volume(), new Input("H", "height of the chamber", Quantity.of(heightM, Units.M))));
        return drained(Diverter.ofPipe(boreM, heightM, holeM), boreM);
    }

    private Input volume() {
        return new Input("V", "volume to divert", Quantity.ofSi(FirstFlush.volumeM3(planAreaM2, depthMm), Units.L));
    }

    private FirstFlushAnswer drained(Diverter diverter, double boreM) {
        drainDownS = diverter.drainDownS();
        Quantity drain = Quantity.ofSi(drainDownS, Units.H);
        Quantity waste = Quantity.ofSi(diverter.holeFlowM3PerS(diverter.heightM()), Units.L_PER_H);
        Input bore = new Input("D", "bore of the chamber", Quantity.ofSi(boreM, Units.MM));
        Input tall = new Input("H", "height of water when full", Quantity.of(diverter.heightM(), Units.M));
        Input hole = new Input("do", "hole", Quantity.ofSi(diverter.holeM(), Units.MM));
        Input discharge = new Input("Cd", "discharge coefficient", Quantity.of(diverter.dischargeRatio()));
        Source orifice = KernelTerms.source(Diverter.DISCHARGE_SOURCE);
        answer.number("drainDown", "Time to drain empty", drain,
                Step.of("t", "time from full to empty", "(D / do)^2 sqrt(2 H / g) / Cd", drain, orifice, bore, hole,
                        tall, discharge))
                .number("holeFlow", "Flow wasted while full", waste,
                        Step.of("q", "flow out of the hole", "Cd (pi do^2 / 4) sqrt(2 g H)", waste, orifice, discharge,
                                hole, tall));
        answer.caution(new Caution("firstflush.hole", Severity.WARNING, elementId,
                "The hole wastes {0} for as long as it rains, and a clogged hole turns nothing away from the next "
                        + "rain: clean it after each storm.", List.of(waste), "",
                Source.commonPractice("upkeep of first-flush chambers")));
        return this;
    }

    /** Time in which the chamber that was added drains empty [s]. */
    public double drainDownS() {
        return drainDownS;
    }

    /** The answer with what has to be said beside it. */
    public Outcome.Completed build() {
        sayHowMuch();
        answer.caution(new Caution("firstflush.counted", Severity.INFO, elementId,
                "Take the depth off each rain when sizing the tank, and see that the chamber is empty before the next.",
                List.of(), "", AREA_TIMES_DEPTH));
        answer.caution(KernelTerms.caution(elementId, RoofCaution.COVER_AND_CLEAN));
        answer.caution(KernelTerms.caution(elementId, RoofCaution.BIRDS_AND_ANIMALS));
        return answer.build();
    }

    /** The figures with what bears on them alone, for one diverter of a site. */
    public Outcome.Completed figures() {
        sayHowMuch();
        return answer.build();
    }

    private void sayHowMuch() {
        Quantity least = Quantity.of(FirstFlush.LEAST_DEPTH_MM, Units.MM);
        Quantity greatest = Quantity.of(FirstFlush.GREATEST_DEPTH_MM, Units.MM);
        if (depthMm < FirstFlush.LEAST_DEPTH_MM) {
            answer.caution(new Caution("firstflush.small", Severity.WARNING, elementId,
                    "Less is turned away than is usual ({0} to {1} of rain): dirt of the roof goes into the tank.",
                    List.of(least, greatest), "", DEPTHS));
        } else if (depthMm > FirstFlush.GREATEST_DEPTH_MM) {
            answer.caution(new Caution("firstflush.large", Severity.INFO, elementId,
                    "More is turned away than is usual ({0} to {1} of rain); small rains may never reach the tank.",
                    List.of(least, greatest), "", DEPTHS));
        }
    }
}

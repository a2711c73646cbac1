package org.roofspring.calc.standard.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.roofspring.calc.Caution;
import org.roofspring.calc.Caution.Severity;
import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Outcome;
import org.roofspring.calc.Source;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.calc.standard.water.GravityNetwork;
import org.roofspring.hydraulics.GradeLine;
import org.roofspring.hydraulics.ProfilePoint;
import org.roofspring.hydraulics.gravity.GravityFlow;
import org.roofspring.hydraulics.gravity.GravityState;
import org.roofspring.hydraulics.gravity.Reach;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.PipeRun;
import org.roofspring.site.Tap;

/** The grade line over the pipes of a network, and where it falls below them. */
final class GradeWays {
    private final GravityNetwork network;
    private final GravityState state;
    private final GravityFlow flow;
    private final Map<String, GradeLine> lines = new LinkedHashMap<>();
    private final List<Caution> cautions = new ArrayList<>();

    GradeWays(GravityNetwork network, GravityState state, GravityFlow flow) {
        this.network = network;
        this.state = state;
        this.flow = flow;
        for (Reach reach : network.tree().reaches()) {
            PipeRun run = network.runOfReach().get(reach.id());
            if (run != null && run.getLength().si() >= 1e-3) {
                line(reach, run);
            }
        }
    }

    private void line(Reach reach, PipeRun run) {
        try {
            GradeLine line = flow.gradeLine(network.tree(), state, reach, profile(reach, run));
            lines.put(reach.id(), line);
            GradeLine.Point lowest = line.lowestPressure();
            // at an open end the grade may meet the pipe; what lies beyond a few millimetres is no rounding
            if (lowest.pressureHeadM() < -0.005) {
                cautions.add(new Caution("gravity.below-pipe", Severity.WARNING, run.getId(), "In {0} the grade line falls {1}"
                        + " below the pipe, {2} from its start: pressure there is under that of the air, so air gathers,"
                        + " joints draw in dirt and the flow may break. Lower the pipe, widen it ahead of that place, or"
                        + " raise the tank.", List.of(String.valueOf(run.getName()),
                                Quantity.of(-lowest.pressureHeadM(), Units.M), Quantity.of(lowest.distanceM(), Units.M)), "",
                        Source.definition("grade line against profile, with aged pipe and fouled filters")));
            }
        } catch (IllegalArgumentException e) {
            cautions.add(new Caution("gravity.no-grade", Severity.WARNING, run.getId(), "The grade line over {0} is not known:"
                    + " {1}.", List.of(String.valueOf(run.getName()), e.getMessage()), "",
                    Source.definition("how the model was read")));
        }
    }

    /** The profile of a run as given, else a straight line between the levels of its ends. */
    private List<ProfilePoint> profile(Reach reach, PipeRun run) {
        List<ProfilePoint> given = run.getProfile().stream()
                .filter(point -> point.getDistance() != null && point.getLevel() != null)
                .map(point -> new ProfilePoint(point.getDistance().si(), point.getLevel().si())).toList();
        return given.size() >= 2 ? given
                : List.of(new ProfilePoint(0, network.tree().node(reach.from()).elevationM()),
                        new ProfilePoint(run.getLength().si(), network.tree().node(reach.to()).elevationM()));
    }

    List<Caution> cautions() {
        return cautions;
    }

    /** Grade line and pipe along the whole way from the source to a tap. */
    Outcome.Completed curves(Tap tap) {
        List<double[]> points = new ArrayList<>();
        double offsetM = 0;
        for (Reach reach : network.tree().wayTo(network.outlets().get(tap).node())) {
            GradeLine line = lines.get(reach.id());
            if (line != null) {
                double startM = line.points().get(0).distanceM();
                for (GradeLine.Point point : line.points()) {
                    points.add(new double[] {offsetM + point.distanceM() - startM, point.gradeM(), point.elevationM()});
                }
                offsetM = points.get(points.size() - 1)[0];
            }
        }
        AnswerBuilder answer = new AnswerBuilder(tap.getId());
        if (points.size() > 1) {
            answer.add("gradeLine", "Grade line to the tap, fouled and aged", curve(points, 1));
            answer.add("pipeLine", "Pipe to " + tap.getName(), curve(points, 2));
        }
        return answer.build();
    }

    private static FindingValue.Curve curve(List<double[]> points, int column) {
        return new FindingValue.Curve("Distance", Units.M, points.stream().mapToDouble(point -> point[0]).toArray(), Units.M,
                points.stream().mapToDouble(point -> point[column]).toArray());
    }
}

package org.roofspring.hydraulics.gravity;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

import org.roofspring.hydraulics.AgeingRun;
import org.roofspring.hydraulics.HeadLoss;
import org.roofspring.hydraulics.PipeRun;

/** Invented gravity supplies for the tests. */
final class Supplies {
    private Supplies() {
    }

    static PipeRun pipe(double boreM, double lengthM) {
        return new PipeRun(boreM, lengthM, 7e-6, 2);
    }

    /** A tap that gives 0.2 L/s at 2 m. */
    static HeadLoss tap() {
        return HeadLoss.rated(0.2e-3, 2, 2);
    }

    /** Tank, filter, then a kitchen below, and a shower high up beside a far yard tap. */
    static GravityTree house() {
        return GravityTree.of("tank", List.of(new Node("tank", 5), new Node("hall", 1), new Node("kitchen", 1),
                new Node("shower", 2), new Node("yard", 0.5)),
                List.of(new Reach("main", "tank", "hall", List.of(new AgeingRun(pipe(0.026, 12), 1e-4)),
                        HeadLoss.rated(0.3e-3, 0.5, 1), HeadLoss.rated(0.3e-3, 2.5, 1)),
                        Reach.of("to kitchen", "hall", "kitchen", pipe(0.016, 4)),
                        Reach.of("to shower", "shower", "hall", pipe(0.016, 8)),
                        Reach.of("to yard", "hall", "yard", pipe(0.02, 40))),
                List.of(new Outlet("kitchen tap", "kitchen", tap(), 0.15e-3),
                        new Outlet("shower head", "shower", HeadLoss.rated(0.12e-3, 1.5, 2), 0.1e-3),
                        new Outlet("yard tap", "yard", tap(), 0.2e-3)));
    }

    static Set<String> all(GravityTree tree) {
        return tree.outlets().stream().map(Outlet::id).collect(Collectors.toSet());
    }

    /** A tree with branches, levels, bores and filters by chance. */
    static GravityTree random(long seed) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(9);
        List<Node> nodes = new ArrayList<>(List.of(new Node("n0", 4)));
        List<Reach> reaches = new ArrayList<>();
        List<Outlet> outlets = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            nodes.add(new Node("n" + i, 4.5 * random.nextDouble()));
            HeadLoss filter = random.nextInt(3) > 0 ? HeadLoss.none()
                    : HeadLoss.rated(0.2e-3, 2 * random.nextDouble(), 1 + random.nextDouble());
            PipeRun pipe = new PipeRun(0.01 + 0.03 * random.nextDouble(), 1 + 40 * random.nextDouble(), 7e-6,
                    6 * random.nextDouble());
            reaches.add(new Reach("r" + i, "n" + random.nextInt(i), "n" + i, List.of(AgeingRun.lasting(pipe)), filter,
                    filter.times(4)));
            if (random.nextInt(4) > 0 || i == count) {
                double wanted = 0.05e-3 + 0.3e-3 * random.nextDouble();
                outlets.add(new Outlet("o" + i, "n" + i, HeadLoss.rated(wanted, 0.5 + random.nextDouble(), 2), wanted));
            }
        }
        return GravityTree.of("n0", nodes, reaches, outlets);
    }
}

package org.roofspring.drainage.siting;

import java.util.List;
import org.roofspring.drainage.Source;
import org.roofspring.drainage.internal.Require;

/**
 * What a kind of ground may be presumed to bear, for a first look only: ground is judged on the spot by someone who
 * knows it.
 *
 * @param id         stable name
 * @param name       for people
 * @param leastPa    lower end of the presumed bearing pressure, 0 where none may be presumed
 * @param greatestPa upper end
 * @param source     of the values
 */
public record GroundKind(String id, String name, double leastPa, double greatestPa, Source source) {
    private static final Source TABLE = Source.fromMemory("BS 8004:1986, Code of practice for foundations, table 1");

    public GroundKind {
        Require.given("id", id);
        Require.given("name", name);
        Require.range("leastPa", leastPa, 0, 1e8, "a pressure from 0 to 1e8 Pa");
        Require.range("greatestPa", greatestPa, leastPa, 1e8, "a pressure from leastPa to 1e8 Pa");
        Require.given("source", source);
    }

    /** The table of the kernel; callers may use entries of their own instead. */
    public static List<GroundKind> table() {
        return List.of(new GroundKind("dense-gravel", "dense gravel", 600e3, 600e3, TABLE),
                new GroundKind("medium-gravel", "medium dense gravel", 200e3, 600e3, TABLE),
                new GroundKind("loose-gravel", "loose gravel", 0, 200e3, TABLE),
                new GroundKind("dense-sand", "compact sand", 300e3, 300e3, TABLE),
                new GroundKind("medium-sand", "medium dense sand", 100e3, 300e3, TABLE),
                new GroundKind("loose-sand", "loose sand", 0, 100e3, TABLE),
                new GroundKind("very-stiff-clay", "very stiff clay", 300e3, 600e3, TABLE),
                new GroundKind("stiff-clay", "stiff clay", 150e3, 300e3, TABLE),
                new GroundKind("firm-clay", "firm clay", 75e3, 150e3, TABLE),
                new GroundKind("soft-clay", "soft clay or silt", 0, 75e3, TABLE),
                new GroundKind("fill", "made ground, peat, very soft clay", 0, 0, TABLE));
    }
}

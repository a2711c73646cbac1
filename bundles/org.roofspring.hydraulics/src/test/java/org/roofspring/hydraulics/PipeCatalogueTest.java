package org.roofspring.hydraulics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Test;

class PipeCatalogueTest {
    @Test
    void everyMaterialHasSizesOfSoundGeometry() {
        Set<String> designations = new HashSet<>();
        int sizes = 0;
        for (PipeMaterial material : PipeCatalogue.materials()) {
            List<PipeSize> list = PipeCatalogue.sizes(material);
            assertTrue(list.size() >= 5, material.name());
            sizes += list.size();
            for (PipeSize size : list) {
                assertTrue(designations.add(size.designation()), size.designation());
                assertTrue(size.boreM() > 0.6 * size.outsideDiameterM(), size.designation());
                assertTrue(size.source().contains("from memory"), size.source());
            }
        }
        assertEquals(PipeCatalogue.allSizes().size(), sizes);
    }

    /**
     * The wall of plastic pipe follows from its ratio of diameter to wall, rounded up to 0.1 mm and to a least wall.
     */
    @Test
    void plasticWallsFollowTheirRatio() {
        for (PipeSize size : PipeCatalogue.allSizes()) {
            double ratio = size.designation().contains("SDR 11") ? 11 : size.designation().contains("SDR 17") ? 17
                    : size.designation().contains("SDR 7.4") ? 7.4 : 0;
            if (ratio > 0) {
                double wallMm = size.wallM() * 1000;
                double exactMm = size.outsideDiameterM() * 1000 / ratio;
                assertTrue(wallMm > exactMm - 0.09 && wallMm < exactMm + 0.2, size.designation() + " " + exactMm);
            }
        }
    }

    /** EN 12201-2, EN 1057 and EN 10255, from memory. */
    @Test
    void trueBores() {
        assertEquals(40.8, bore("PE 100 SDR 11, 50 x 4.6"), 1e-9);
        assertEquals(13.0, bore("copper, 15 x 1.0"), 1e-9);
        assertEquals(41.9, bore("galvanised steel, medium series, 48.3 x 3.2"), 1e-9);
    }

    private static double bore(String designation) {
        return PipeCatalogue.allSizes().stream().filter(size -> size.designation().equals(designation)).findFirst()
                .orElseThrow().boreM() * 1000;
    }

    /**
     * Roughness of new pipe: drawn copper 0.0015 mm and galvanised 0.15 mm, Binder 1973 as quoted by a web table
     * (read); plastics 0.0015 to 0.007 mm, web table on surface roughness (read).
     */
    @Test
    void roughnessOfNewPipe() {
        assertEquals(0.0015e-3, PipeCatalogue.COPPER.roughnessM());
        assertEquals(0.15e-3, PipeCatalogue.GALVANISED_STEEL.roughnessM());
        for (PipeMaterial plastic : List.of(PipeCatalogue.PE_100, PipeCatalogue.PVC_U, PipeCatalogue.PP_R)) {
            assertTrue(plastic.roughnessM() >= 0.0015e-3 && plastic.roughnessM() <= 0.007e-3);
        }
    }

    @Test
    void pipeAges() {
        PipeSize size = PipeCatalogue.sizes(PipeCatalogue.GALVANISED_STEEL).get(2);
        assertEquals(0.15e-3 + 20 * 0.03e-3, size.run(10, 2, 20).roughnessM(), 1e-12);
        assertEquals(new PipeRun(size.boreM(), 10, 0.15e-3, 2), size.run(10, 2, 0));
        AgeingRun run = AgeingRun.of(size, 10, 2, 20);
        WaterProperties water = WaterProperties.at(20);
        assertEquals(size.run(10, 2, 0), run.run(false));
        assertTrue(run.run(true).lossAt(5e-4, water).totalLossM() > run.run(false).lossAt(5e-4, water).totalLossM());
        assertEquals(run.fresh(), AgeingRun.lasting(run.fresh()).run(true));
        IllegalArgumentException tooRough = assertThrows(IllegalArgumentException.class,
                () -> PipeCatalogue.sizes(PipeCatalogue.GALVANISED_STEEL).get(0).run(10, 2, 50));
        assertTrue(tooRough.getMessage().startsWith("roughness of a pipe of"), tooRough.getMessage());
        assertThrows(IllegalArgumentException.class, () -> new AgeingRun(run.fresh(), 0));
    }

    @Test
    void refusesImpossibleSizes() {
        assertThrows(IllegalArgumentException.class, () -> new PipeSize("x", PipeCatalogue.PE_100, 0.02, 0.01,
                OptionalDouble.empty(), "none"));
        assertThrows(IllegalArgumentException.class, () -> new PipeMaterial("x", -1, 0, 1e9, 0.4, 150, "none"));
    }

    @Test
    void velocityIsJudged() {
        VelocityLimits limits = VelocityLimits.DELIVERY;
        assertEquals(VelocityLimits.Verdict.TOO_SLOW, limits.judge(0.49));
        assertEquals(VelocityLimits.Verdict.WITHIN, limits.judge(0.5));
        assertEquals(VelocityLimits.Verdict.TOO_FAST, limits.judge(2.01));
        double bore = limits.smallestBoreM(0.001);
        assertEquals(2.0, new PipeRun(bore, 1, 0, 0).lossAt(0.001, WaterProperties.at(20)).velocityMPerS(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> limits.judge(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new VelocityLimits(1, 1));
    }

    /** ASME A112.1.2, from memory: twice the outlet, at least 25 mm. */
    @Test
    void airGap() {
        assertEquals(0.025, AirGap.leastM(0.012));
        assertEquals(0.064, AirGap.leastM(0.032));
    }
}

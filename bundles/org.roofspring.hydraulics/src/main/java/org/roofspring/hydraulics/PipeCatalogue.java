package org.roofspring.hydraulics;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Generic pipe by material and standard, with true bores. Dimensions are nominal ones of the standards named, from
 * memory; verify against the standard and the pipe at hand. No maker's data.
 */
public final class PipeCatalogue {
    private static final String PLASTIC = "roughness: upper end of 0.0015 to 0.007 mm quoted for plastic pipe, and "
            + "DIN 1988-300 from memory; growth (slime, fine scale), modulus and Hazen-Williams C from memory";

    public static final PipeMaterial PE_100 = new PipeMaterial("polyethylene PE 100", 0.007e-3, 0.001e-3, 1.1e9, 0.45,
            150, PLASTIC);
    public static final PipeMaterial PVC_U = new PipeMaterial("PVC-U", 0.007e-3, 0.001e-3, 3.0e9, 0.40, 150, PLASTIC);
    public static final PipeMaterial PP_R = new PipeMaterial("polypropylene PP-R", 0.007e-3, 0.001e-3, 0.9e9, 0.40, 150,
            PLASTIC);
    public static final PipeMaterial COPPER = new PipeMaterial("copper", 0.0015e-3, 0.001e-3, 120e9, 0.34, 140,
            "roughness: drawn copper, Binder 1973 as quoted; growth, modulus and Hazen-Williams C from memory");
    public static final PipeMaterial GALVANISED_STEEL = new PipeMaterial("galvanised steel", 0.15e-3, 0.03e-3, 205e9,
            0.30, 120,
            "roughness: Binder 1973 as quoted; growth (rust, scale), modulus and Hazen-Williams C from memory");

    private static final List<PipeMaterial> MATERIALS = List.of(PE_100, PVC_U, PP_R, COPPER, GALVANISED_STEEL);
    private static final List<PipeSize> SIZES = List.copyOf(sizes());

    private PipeCatalogue() {
    }

    /** All materials. */
    public static List<PipeMaterial> materials() {
        return MATERIALS;
    }

    /** All sizes, grouped by material and class, each group by rising bore. */
    public static List<PipeSize> sizes(PipeMaterial material) {
        return SIZES.stream().filter(size -> size.material().equals(material)).toList();
    }

    /** Every size of the catalogue. */
    public static List<PipeSize> allSizes() {
        return SIZES;
    }

    private static List<PipeSize> sizes() {
        List<PipeSize> sizes = new ArrayList<>();
        String pe = "EN 12201-2 and ISO 4427-2, from memory";
        add(sizes, "PE 100 SDR 11", PE_100, 16, pe, 20, 2.0, 25, 2.3, 32, 3.0, 40, 3.7, 50, 4.6, 63, 5.8, 75, 6.8, 90,
                8.2, 110, 10.0);
        add(sizes, "PE 100 SDR 17", PE_100, 10, pe, 32, 2.0, 40, 2.4, 50, 3.0, 63, 3.8, 75, 4.5, 90, 5.4, 110, 6.6);
        String pvc = "ISO 1452-2, from memory";
        add(sizes, "PVC-U PN 16", PVC_U, 16, pvc, 20, 1.5, 25, 1.9, 32, 2.4, 40, 3.0, 50, 3.7, 63, 4.7, 75, 5.6, 90,
                6.7, 110, 6.6);
        add(sizes, "PVC-U PN 10", PVC_U, 10, pvc, 40, 1.9, 50, 2.4, 63, 3.0, 75, 3.6, 90, 4.3, 110, 4.2);
        add(sizes, "PP-R S 3.2 (SDR 7.4)", PP_R, 16, "ISO 15874-2, from memory", 20, 2.8, 25, 3.5, 32, 4.4, 40, 5.5, 50,
                6.9, 63, 8.6);
        add(sizes, "copper", COPPER, 0, "EN 1057, from memory", 15, 1.0, 22, 1.0, 28, 1.0, 35, 1.2, 42, 1.2, 54, 1.5);
        add(sizes, "galvanised steel, medium series", GALVANISED_STEEL, 0, "EN 10255, from memory", 21.3, 2.6,
                26.9, 2.6, 33.7, 3.2, 42.4, 3.2, 48.3, 3.2, 60.3, 3.6, 76.1, 3.6, 88.9, 4.0, 114.3, 4.5);
        return sizes;
    }

    /** Adds sizes given as pairs of outside diameter and wall in mm; a pressure of 0 bar means that none is stated. */
    private static void add(List<PipeSize> sizes, String group, PipeMaterial material, double nominalBar, String source,
            double... outsideAndWallMm) {
        for (int i = 0; i < outsideAndWallMm.length; i += 2) {
            double outside = outsideAndWallMm[i];
            double wall = outsideAndWallMm[i + 1];
            String outsideText = outside == Math.rint(outside)
                    ? Long.toString((long) outside) : Double.toString(outside);
            sizes.add(new PipeSize(group + ", " + outsideText + " x " + wall, material, outside / 1000, wall / 1000,
                    nominalBar > 0 ? OptionalDouble.of(nominalBar * 1e5) : OptionalDouble.empty(), source));
        }
    }
}

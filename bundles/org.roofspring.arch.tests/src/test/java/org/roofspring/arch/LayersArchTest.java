package org.roofspring.arch;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The arrows between layers, as ADR 1 draws them, over class files. */
class LayersArchTest {
    private static final String[] SCREEN_PACKAGES = { "org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.ui..", "org.eclipse.swtchart..",
            "org.eclipse.nebula..", "java.awt..", "javax.swing.." };
    private static final String[] FRAMEWORK_PACKAGES = { "org.eclipse..", "org.osgi.." };

    @Test
    void everythingIsThere() {
        List<String> missing = new ArrayList<>(List.of("quantity", "rain", "storage", "hydraulics", "drainage", "treatment", "site", "calc", "calc.standard",
                "calc.engine", "cli"));
        missing.removeAll(Bundles.built().keySet());
        assertTrue(missing.isEmpty(), "not built, so not checked: " + missing);
    }

    @Test
    void everyBundleHasALayer() {
        List<String> strangers = new ArrayList<>(Bundles.built().keySet());
        strangers.removeAll(Bundles.KERNELS);
        strangers.removeAll(Bundles.HEADLESS);
        strangers.removeAll(Bundles.SCREEN);
        assertTrue(strangers.isEmpty(), "say in Bundles which layer these belong to: " + strangers);
    }

    @Test
    void kernelsKnowNoFramework() {
        noClasses().should().dependOnClassesThat().resideInAnyPackage(FRAMEWORK_PACKAGES).check(Bundles.classes(Bundles.KERNELS));
    }

    @Test
    void headlessCodeKnowsNoScreen() {
        List<String> all = new ArrayList<>(Bundles.KERNELS);
        all.addAll(Bundles.HEADLESS);
        noClasses().should().dependOnClassesThat().resideInAnyPackage(SCREEN_PACKAGES).check(Bundles.classes(all));
    }

    @TestFactory
    List<DynamicTest> kernelsDoNotKnowEachOther() {
        return Bundles.KERNELS.stream().filter(Bundles.built()::containsKey).map(kernel -> DynamicTest.dynamicTest(kernel, () -> {
            String[] others = Bundles.KERNELS.stream().filter(other -> !other.equals(kernel) && !other.equals("quantity"))
                    .map(other -> "org.roofspring." + other + "..").toArray(String[]::new);
            noClasses().should().dependOnClassesThat().resideInAnyPackage(others).check(Bundles.classes(List.of(kernel)));
        })).toList();
    }

    @Test
    void lowerLayersDoNotKnowHigherOnes() {
        noHigher(Bundles.KERNELS, "site", "calc", "cli", "report", "drawing", "ui", "help");
        noHigher(List.of("site"), "calc", "cli", "report", "drawing", "ui", "help", "rain", "storage", "hydraulics", "drainage", "treatment", "economy");
        noHigher(List.of("calc"), "calc.engine", "calc.standard", "cli", "report", "drawing", "ui", "rain", "storage", "hydraulics", "drainage", "treatment");
        noHigher(List.of("calc.standard"), "calc.engine", "cli", "report", "drawing", "ui");
        noHigher(List.of("calc.engine"), "calc.standard", "cli", "report", "drawing", "ui", "rain", "storage", "hydraulics", "drainage", "treatment");
        noHigher(List.of("cli", "report", "drawing"), "ui");
    }

    private static void noHigher(List<String> layer, String... higher) {
        String[] packages = Arrays.stream(higher).map(name -> "org.roofspring." + name + "..").toArray(String[]::new);
        noClasses().should().dependOnClassesThat().resideInAnyPackage(packages).allowEmptyShould(true).check(Bundles.classes(layer));
    }

    @Test
    void internalPackagesStayInside() {
        Bundles.built().keySet().forEach(bundle -> {
            List<String> others = Bundles.built().keySet().stream().filter(other -> !other.equals(bundle)).toList();
            // a bundle's own internal packages begin with its name; those of a bundle named below it are its own business
            String[] internals = others.stream().filter(other -> !bundle.startsWith(other + "."))
                    .flatMap(other -> java.util.stream.Stream.of("org.roofspring." + other + ".internal..")).toArray(String[]::new);
            noClasses().should().dependOnClassesThat().resideInAnyPackage(internals).allowEmptyShould(true).check(Bundles.classes(List.of(bundle)));
        });
    }
}

package org.roofspring.arch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** What the manifests ask for and give away: a class file is not needed to break a layer. */
class ManifestsArchTest {
    private static final Pattern NAME = Pattern.compile("(?:^|,)\\s*([A-Za-z][\\w.\\-]*)(?=[;,]|$)");

    @TestFactory
    List<DynamicTest> everyManifest() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Map.Entry<String, Path> bundle : Bundles.built().entrySet()) {
            tests.add(DynamicTest.dynamicTest(bundle.getKey(), () -> check(bundle.getKey(), Bundles.manifest(bundle.getValue()).getMainAttributes())));
        }
        return tests;
    }

    private static void check(String bundle, Attributes manifest) {
        String symbolicName = manifest.getValue("Bundle-SymbolicName");
        assertEquals("org.roofspring." + bundle, symbolicName.split(";")[0].trim());
        List<String> asked = new ArrayList<>(names(manifest.getValue("Require-Bundle")));
        asked.addAll(names(manifest.getValue("Import-Package")));
        for (String name : asked) {
            if (Bundles.KERNELS.contains(bundle)) {
                boolean allowed = name.startsWith("java.") || name.startsWith("javax.") || name.startsWith("org.hipparchus") || name.startsWith("de.siegmar")
                        || name.startsWith("org.roofspring.quantity") || name.startsWith("org.roofspring." + bundle);
                assertEquals(true, allowed, "the kernel " + bundle + " asks for " + name);
            }
            if (!Bundles.SCREEN.contains(bundle)) {
                boolean screen = name.startsWith("org.eclipse.swt") || name.startsWith("org.eclipse.jface") || name.startsWith("org.eclipse.ui")
                        || name.startsWith("org.roofspring.ui") || name.startsWith("org.eclipse.nebula");
                assertFalse(screen, "the headless bundle " + bundle + " asks for " + name);
            }
        }
        for (String exported : names(manifest.getValue("Export-Package"))) {
            boolean ours = exported.startsWith("org.roofspring." + bundle);
            assertEquals(true, ours, bundle + " gives away " + exported);
            boolean internal = exported.contains(".internal") && !manifest.getValue("Export-Package").contains("x-friends");
            assertFalse(internal, bundle + " gives away its internal package " + exported);
        }
    }

    private static List<String> names(String header) {
        List<String> names = new ArrayList<>();
        if (header != null) {
            // attributes and directives may hold commas inside quotes
            Matcher matcher = NAME.matcher(header.replaceAll("\"[^\"]*\"", ""));
            while (matcher.find()) {
                names.add(matcher.group(1));
            }
        }
        return names;
    }
}

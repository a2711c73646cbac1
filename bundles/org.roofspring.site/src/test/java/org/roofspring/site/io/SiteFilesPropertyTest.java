package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterProperty;
import net.jqwik.api.lifecycle.BeforeProperty;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Unit;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.SitePackage;
import org.roofspring.site.internal.io.SiteWriter;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.site.snapshot.Fingerprint;
import org.roofspring.site.snapshot.SiteSnapshot;

/** Sites filled at random over the whole model survive a file; files damaged at random are read or refused. */
class SiteFilesPropertyTest {
    private final Map<Integer, byte[]> wholeFiles = new HashMap<>();
    private Path file;

    @BeforeProperty
    void makeFile() throws IOException {
        file = Files.createTempFile("random", ".site");
    }

    @AfterProperty
    void deleteFile() throws IOException {
        Files.deleteIfExists(file);
    }

    @Property(tries = 40)
    void anySiteSurvivesAFile(@ForAll long seed) throws IOException {
        Site site = new RandomSite(seed).make();
        byte[] bytes = SiteWriter.toBytes(site, "random.site");
        Files.write(file, bytes);
        Site loaded = SiteFiles.load(file);
        site.setSchemaVersion(SiteFiles.SCHEMA_VERSION);
        assertTrue(EcoreUtil.equals(site, loaded));
        assertEquals(Fingerprint.of(site), Fingerprint.of(loaded));
        assertEquals(Fingerprint.of(site), Fingerprint.of(SiteSnapshot.of(loaded, 1, null).site()));
        assertArrayEquals(bytes, SiteWriter.toBytes(loaded, "random.site"));
    }

    @Property(tries = 300)
    void aDamagedFileIsReadOrRefusedInOneSentence(@ForAll long seed) throws IOException {
        Random random = new Random(seed);
        byte[] whole = wholeFiles.computeIfAbsent(random.nextInt(5), SiteFilesPropertyTest::wholeFile);
        byte[] bytes = damaged(whole, random);
        Files.write(file, bytes);
        try {
            SiteFiles.load(file);
        } catch (SiteFileException e) {
            assertEquals(1, e.getMessage().lines().count(), e.getMessage());
            assertTrue(e.getMessage().startsWith(file.toString()), e.getMessage());
        }
        assertArrayEquals(bytes, Files.readAllBytes(file));
    }

    private static byte[] wholeFile(int seed) {
        try {
            return SiteWriter.toBytes(new RandomSite(seed).make(), "random.site");
        } catch (SiteFileException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] damaged(byte[] bytes, Random random) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (int i = random.nextInt(3); i >= 0; i--) {
            int from = random.nextInt(text.length());
            int to = Math.min(text.length(), from + random.nextInt(30));
            String middle = switch (random.nextInt(6)) {
                case 0 -> "";
                case 1 -> text.substring(from, to).repeat(2);
                case 2 -> "\u0000\ufffe&<>\"".substring(random.nextInt(5));
                case 3 -> Character.toString(random.nextInt(0x3000));
                case 4 -> "<tanks id=\"" + random.nextInt(9) + "\" to=\"" + random.nextInt(9) + "\"/>";
                default -> "\" " + List.of("id", "xsi:type", "href", "name", "planArea").get(random.nextInt(5)) + "=\"";
            };
            text = text.substring(0, from) + middle + text.substring(to);
            if (text.isEmpty()) {
                break;
            }
        }
        byte[] result = text.getBytes(StandardCharsets.UTF_8);
        if (result.length > 0 && random.nextInt(4) == 0) {
            result[random.nextInt(result.length)] = (byte) random.nextInt();
        }
        return result;
    }

    /** Fills objects of every class by reflection, links them, and leaves out about half of all values. */
    private static final class RandomSite {
        private static final List<Unit> ALL_UNITS = List.copyOf(Units.catalogue().values());
        private final Random random;
        private final List<EObject> all = new ArrayList<>();

        RandomSite(long seed) {
            random = new Random(seed);
        }

        Site make() {
            Site site = SiteFactory.eINSTANCE.createSite();
            fill(site, 0);
            for (EObject object : all) {
                object.eClass().getEAllReferences().stream().filter(reference -> !reference.isContainment())
                        .forEach(reference -> link(object, reference));
            }
            return site;
        }

        private void fill(EObject object, int depth) {
            all.add(object);
            for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
                if (feature instanceof EAttribute attribute && !attribute.isID() && random.nextBoolean()
                        && feature != SitePackage.Literals.SITE__SCHEMA_VERSION) {
                    set(object, attribute);
                } else if (feature instanceof EReference reference && reference.isContainment() && depth < 4) {
                    contain(object, reference, depth);
                }
            }
        }

        @SuppressWarnings("unchecked")
        private void contain(EObject object, EReference reference, int depth) {
            int count = reference.isMany() ? random.nextInt(depth == 0 ? 3 : 2) : random.nextInt(2);
            for (int i = 0; i < count; i++) {
                EClass type = reference.getEReferenceType();
                EObject child = SiteFactory.eINSTANCE.create(type);
                if (reference.isMany()) {
                    ((List<EObject>) object.eGet(reference)).add(child);
                } else {
                    object.eSet(reference, child);
                }
                fill(child, depth + 1);
            }
        }

        @SuppressWarnings("unchecked")
        private void link(EObject object, EReference reference) {
            List<EObject> targets = all.stream().filter(reference.getEReferenceType()::isInstance).toList();
            if (!targets.isEmpty() && random.nextBoolean()) {
                EObject target = targets.get(random.nextInt(targets.size()));
                if (reference.isMany()) {
                    ((List<EObject>) object.eGet(reference)).add(target);
                } else {
                    object.eSet(reference, target);
                }
            }
        }

        @SuppressWarnings("unchecked")
        private void set(EObject object, EAttribute attribute) {
            Object value = value(attribute);
            if (attribute.isMany()) {
                ((List<Object>) object.eGet(attribute)).add(value);
            } else {
                object.eSet(attribute, value);
            }
        }

        private Object value(EAttribute attribute) {
            EDataType type = attribute.getEAttributeType();
            Class<?> javaType = type.getInstanceClass();
            if (type instanceof EEnum choices) {
                return choices.getELiterals().get(random.nextInt(choices.getELiterals().size())).getInstance();
            }
            if (javaType == Quantity.class) {
                List<Unit> units = FeatureFacts.dimension(attribute)
                        .map(dimension -> ALL_UNITS.stream().filter(unit -> unit.dimension() == dimension).toList())
                        .orElse(ALL_UNITS);
                return Quantity.of(random.nextGaussian() * Math.pow(10, random.nextInt(30) - 15),
                        units.get(random.nextInt(units.size())));
            }
            return Map.<Class<?>, Object>of(String.class, text(), boolean.class, random.nextBoolean(),
                    int.class, random.nextInt(), long.class, random.nextLong(),
                    LocalDate.class, LocalDate.ofEpochDay(random.nextInt(60000)),
                    LocalTime.class, LocalTime.ofSecondOfDay(random.nextInt(86400)),
                    MonthDay.class, MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28))).get(javaType);
        }

        private String text() {
            StringBuilder text = new StringBuilder();
            for (int i = random.nextInt(12); i >= 0; i--) {
                text.append(switch (random.nextInt(8)) {
                    case 0 -> "\n";
                    case 1 -> "\ud83d\udca7";
                    case 2 -> " & <\"'>";
                    case 3 -> "\u6c34";
                    case 4 -> "  \t";
                    default -> "abc";
                });
            }
            return text.toString();
        }
    }
}

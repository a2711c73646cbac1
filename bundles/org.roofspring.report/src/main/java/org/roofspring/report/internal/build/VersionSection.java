package org.roofspring.report.internal.build;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.roofspring.calc.engine.CalculationDescriptor;
import org.roofspring.calc.engine.CalculationResult;
import org.roofspring.calc.engine.SiteResults;
import org.roofspring.report.Block;
import org.roofspring.report.Block.Cell;
import org.roofspring.report.ReportSettings;
import org.roofspring.site.snapshot.SiteSnapshot;

/** What made the report and from what: versions, and fingerprints that change with any change of the input. */
final class VersionSection {
    private static final int BUFFER = 1 << 16;

    private final SiteSnapshot snapshot;
    private final SiteResults results;
    private final ReportSettings settings;
    private final Words words;

    VersionSection(SiteSnapshot snapshot, SiteResults results, ReportSettings settings, Words words) {
        this.snapshot = snapshot;
        this.results = results;
        this.settings = settings;
        this.words = words;
    }

    List<Block> blocks() {
        List<List<Object>> rows = new ArrayList<>();
        for (CalculationResult result : results.results()) {
            CalculationDescriptor descriptor = result.descriptor();
            rows.add(List.of(descriptor.title(), descriptor.id(), descriptor.version(), descriptor.provider()));
        }
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Block.KeyValues(List.of(new Block.Entry("Roofspring", new Cell(settings.productVersion())))));
        List<List<Object>> prints = new ArrayList<>();
        prints.add(List.of("The site", snapshot.fingerprint(snapshot.site())));
        files().forEach(file -> prints.add(List.of(file, contentOf(file))));
        blocks.addAll(new Tables(words).of("table/fingerprints", "Fingerprints of the input (SHA-256)", List.of("Of",
                "Fingerprint"),
                prints, "", ""));
        blocks.addAll(new Tables(words).of("table/versions", "Calculations", List.of("Title", "Name", "Version",
                "From"), rows, "", ""));
        return blocks;
    }

    /** Data files that the site names; by convention of the model their attributes end in "file". */
    private Set<String> files() {
        Set<String> files = new LinkedHashSet<>();
        for (Iterator<EObject> all = snapshot.site().eAllContents(); all.hasNext();) {
            EObject object = all.next();
            for (EAttribute attribute : object.eClass().getEAllAttributes()) {
                if (attribute.getName().toLowerCase(Locale.ROOT).endsWith("file")
                        && object.eGet(attribute) instanceof String name
                        && !name.isBlank()) {
                    files.add(name);
                }
            }
        }
        return files;
    }

    private String contentOf(String file) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            Path path = snapshot.resolve(file);
            try (InputStream stream = Files.newInputStream(path)) {
                byte[] buffer = new byte[BUFFER];
                for (int read = stream.read(buffer); read >= 0; read = stream.read(buffer)) {
                    digest.update(buffer, 0, read);
                }
            }
            return "sha256:" + HexFormat.of().formatHex(digest.digest());
        } catch (IOException e) {
            return "could not be read";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}

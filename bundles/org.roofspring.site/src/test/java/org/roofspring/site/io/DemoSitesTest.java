package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.roofspring.quantity.Units;
import org.roofspring.site.Site;
import org.roofspring.site.meta.Violation;
import org.roofspring.site.snapshot.SiteSnapshot;

/** The demonstration sites are sound, and written as this program writes. */
class DemoSitesTest {
    private static final Path FOLDER = Path.of("../../demo-data").toAbsolutePath().normalize();

    @TempDir
    Path temporary;

    @ParameterizedTest
    @ValueSource(strings = {"hill-school", "household"})
    void savedAgainItIsTheSameFile(String name) throws IOException {
        Path file = FOLDER.resolve(name + ".site");
        Path again = temporary.resolve("again.site");
        SiteFiles.save(SiteFiles.load(file), again);
        assertArrayEquals(Files.readAllBytes(file), Files.readAllBytes(again));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hill-school", "household"})
    void everyValueIsGivenAndInRange(String name) throws IOException {
        Site site = SiteFiles.load(FOLDER.resolve(name + ".site"));
        assertEquals(List.of(), Violation.in(site).stream().map(Violation::sentence).toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"hill-school", "household"})
    void optionsAndStagesCanBeAppliedAndTheRainIsThere(String name) throws IOException {
        SiteSnapshot snapshot = SiteSnapshot.of(SiteFiles.load(FOLDER.resolve(name + ".site")), 1, FOLDER);
        snapshot.site().getOptions().forEach(option -> snapshot.with(option.getId()));
        snapshot.site().getStages().forEach(stage -> snapshot.with(stage.getId()));
        assertTrue(Files.exists(snapshot.resolve(snapshot.site().getRain().getFile())));
    }

    @Test
    void theSchoolIsAsBigAsItsDescriptionSays() throws IOException {
        Site school = SiteFiles.load(FOLDER.resolve("hill-school.site"));
        assertEquals(5, school.getRoofs().size());
        assertEquals(900, school.getRoofs().stream().mapToDouble(roof -> roof.getPlanArea().si()).sum(), 1e-9);
        double pupilLitres = school.getUses().stream().filter(use -> List.of("use-drinking", "use-meals", "use-hands")
                .contains(use.getId())).mapToDouble(use -> use.getAmountEach().in(Units.L_PER_D)).sum();
        assertEquals(5, pupilLitres, 1e-9, "litres for each pupil on a school day");
    }
}

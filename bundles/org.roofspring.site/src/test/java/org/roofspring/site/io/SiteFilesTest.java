package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.site.ExtensionEntry;
import org.roofspring.site.Gutter;
import org.roofspring.site.Roof;
import org.roofspring.site.RoofDrain;
import org.roofspring.site.Site;
import org.roofspring.site.SiteFactory;
import org.roofspring.site.Tank;
import org.roofspring.site.ValueType;
import org.roofspring.site.internal.io.Migration;
import org.roofspring.site.internal.io.SiteReader;

class SiteFilesTest {
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            + "<site:Site xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\""
            + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
            + " xmlns:site=\"http://www.roofspring.org/site/1\" id=\"site-1\" schemaVersion=\"1\">\n";
    private static final String TAIL = "</site:Site>\n";

    @TempDir
    Path folder;
    private Path file;
    private Site site;
    private Roof roof;
    private Tank tank;

    @BeforeEach
    void makeSite() {
        file = folder.resolve("house.site");
        SiteFactory factory = SiteFactory.eINSTANCE;
        site = factory.createSite();
        site.setName("Mill house");
        tank = factory.createTank();
        tank.setId("tank-1");
        tank.setCapacity(Quantity.of(5000, Units.L));
        roof = factory.createRoof();
        roof.setId("roof-1");
        roof.setName("Barn");
        roof.setPlanArea(Quantity.of(80, Units.M2));
        RoofDrain drain = factory.createRoofDrain();
        drain.setTo(tank);
        roof.getDrains().add(drain);
        site.getRoofs().add(roof);
        site.getTanks().add(tank);
    }

    private String refusal(String content) throws IOException {
        return refusal(content.getBytes(StandardCharsets.UTF_8));
    }

    private String refusal(byte[] content) throws IOException {
        Files.write(file, content);
        ResourceSet resources = SiteFiles.newResourceSet();
        String message = assertThrows(SiteFileException.class, () -> SiteFiles.load(file, resources)).getMessage();
        assertArrayEquals(content, Files.readAllBytes(file), "the refused file was changed");
        assertEquals(List.of(), resources.getResources(), "the refused file left a resource behind");
        assertEquals(1, message.lines().count(), message);
        String path = file.toString();
        assertTrue(message.startsWith(path), message);
        return message.substring(path.length());
    }

    @Test
    void whatIsSavedIsLoaded() throws IOException {
        SiteFiles.save(site, file);
        Site loaded = SiteFiles.load(file);
        assertEquals("Mill house", loaded.getName());
        assertEquals(1, loaded.getSchemaVersion());
        assertEquals(Quantity.of(5000, Units.L), loaded.getTanks().get(0).getCapacity());
        assertEquals(loaded.getTanks().get(0), loaded.getRoofs().get(0).getDrains().get(0).getTo());
        assertNull(loaded.getTanks().get(0).getDeadVolume(), "not given stays not given");
        assertEquals(file.toAbsolutePath().toString(), loaded.eResource().getURI().toFileString());
    }

    @Test
    void theFileReadsAsExpected() throws IOException {
        site.setId("site-1");
        SiteFiles.save(site, file);
        assertEquals("""
                <?xml version="1.0" encoding="UTF-8"?>
                <site:Site xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" \
                xmlns:site="http://www.roofspring.org/site/1" id="site-1" name="Mill house" schemaVersion="1">
                  <roofs id="roof-1" name="Barn" planArea="80 m2">
                    <drains to="tank-1"/>
                  </roofs>
                  <tanks id="tank-1" capacity="5000 L"/>
                </site:Site>
                """, Files.readString(file));
    }

    @Test
    void savingAgainGivesTheSameBytes() throws IOException {
        SiteFiles.save(site, file);
        byte[] first = Files.readAllBytes(file);
        SiteFiles.save(site, file);
        assertArrayEquals(first, Files.readAllBytes(file));
        Path other = folder.resolve("other.site");
        SiteFiles.save(SiteFiles.load(file), other);
        assertArrayEquals(first, Files.readAllBytes(other));
    }

    @Test
    void savingTouchesNothingButMissingIdentifiers() throws IOException {
        assertNull(site.getId());
        SiteFiles.save(site, file);
        assertNotNull(site.getId());
        assertNull(site.eResource());
        assertEquals(0, site.getSchemaVersion());
        assertEquals("roof-1", roof.getId());
    }

    @Test
    void namesInAnyScriptAndLineBreaksSurvive() throws IOException {
        String text = "Zisterne \u00e4\u00f6\u00fc, \u6c34\u69fd, \ud83d\udca7 <&\"'> tab\tline\nnext\r\nend ";
        site.setName(text);
        SiteFiles.save(site, file);
        assertEquals(text, SiteFiles.load(file).getName());
        assertTrue(Files.readString(file).indexOf('\r') < 0, "line ends are LF on every system");
    }

    @Test
    void dataOfAnAbsentPluginSurvive() throws IOException {
        ExtensionEntry entry = SiteFactory.eINSTANCE.createExtensionEntry();
        entry.setPlugin("org.example.fog");
        entry.setSchema(7);
        entry.setKey("net.area");
        entry.setType(ValueType.QUANTITY);
        entry.setValue("12 m2");
        entry.setElement(roof);
        site.getExtensions().add(entry);
        SiteFiles.save(site, file);
        byte[] first = Files.readAllBytes(file);
        Site loaded = SiteFiles.load(file);
        assertEquals("12 m2", loaded.getExtensions().get(0).getValue());
        assertEquals(loaded.getRoofs().get(0), loaded.getExtensions().get(0).getElement());
        SiteFiles.save(loaded, file);
        assertArrayEquals(first, Files.readAllBytes(file));
    }

    @Test
    void aByteOrderMarkOrUtf16IsRead() throws IOException {
        String text = HEAD + "<roofs id=\"r\" name=\"H\u00fctte\"/>" + TAIL;
        Files.write(file, ("\ufeff" + text).getBytes(StandardCharsets.UTF_8));
        assertEquals("H\u00fctte", SiteFiles.load(file).getRoofs().get(0).getName());
        Files.write(file, ("\ufeff" + text.replace("UTF-8", "UTF-16")).getBytes(StandardCharsets.UTF_16LE));
        assertEquals("H\u00fctte", SiteFiles.load(file).getRoofs().get(0).getName());
        Files.writeString(file, text.replace("\n", "\r\n"));
        assertEquals("H\u00fctte", SiteFiles.load(file).getRoofs().get(0).getName());
    }

    @Test
    void refusesAPicture() throws IOException {
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R'};
        assertEquals(" is not a site file: it does not begin as XML; "
                + "a site file is XML with the root element site:Site", refusal(png));
    }

    @Test
    void refusesAnEmptyFile() throws IOException {
        assertEquals(" is empty; a site file is XML with the root element site:Site", refusal(""));
    }

    @Test
    void refusesAFileThatWasCutOff() throws IOException {
        SiteFiles.save(site, file);
        String whole = Files.readString(file);
        String message = refusal(whole.substring(0, whole.indexOf("<tanks") + 12));
        assertTrue(message.startsWith(", line 6, column "), message);
        assertTrue(message.contains("the XML is broken or cut off here"), message);
    }

    @Test
    void refusesOtherEncodings() throws IOException {
        byte[] latin = (HEAD + "<roofs id=\"r\" name=\"H\u00fctte\"/>" + TAIL).getBytes(StandardCharsets.ISO_8859_1);
        assertEquals(", line 3: a byte there is not valid UTF-8; a site file is written in UTF-8", refusal(latin));
        assertEquals(" says it is written in ISO-8859-1; a site file is written in UTF-8",
                refusal(HEAD.replace("UTF-8", "ISO-8859-1") + TAIL));
    }

    @Test
    void refusesOtherXml() throws IOException {
        assertEquals(" is not a site file: its root element is svg; a site file has the root element site:Site of "
                + "http://www.roofspring.org/site/1", refusal("<svg xmlns=\"http://www.w3.org/2000/svg\"/>"));
    }

    @Test
    void refusesANewerSchema() throws IOException {
        assertEquals(" was made by a newer Roofspring (schema 9); this one reads up to 1",
                refusal(HEAD.replace("schemaVersion=\"1\"", "schemaVersion=\"9\"") + "<novel/>" + TAIL));
        assertEquals(" was made by a newer Roofspring (schema 2); this one reads up to 1",
                refusal(HEAD.replace("org/site/1", "org/site/2") + TAIL));
    }

    @Test
    void refusesAnUnknownFeature() throws IOException {
        assertEquals(", line 3, column 46: Roof \"Barn\" (roof-1) has no feature \"colour\" in this schema",
                refusal(HEAD + "<roofs id=\"roof-1\" name=\"Barn\" colour=\"red\"/>\n" + TAIL));
        assertTrue(refusal(HEAD + "<rooves/>\n" + TAIL).contains("has no feature \"rooves\""));
    }

    @Test
    void refusesAValueOfAnotherDimension() throws IOException {
        String message = refusal(HEAD + "<roofs id=\"roof-1\" planArea=\"12 s\"/>\n" + TAIL);
        assertTrue(message.startsWith(", line 3, column "), message);
        assertTrue(message.endsWith("planArea of Roof (roof-1): \"12 s\" is a time, but an area is needed "
                + "(m2, cm2, ha, ft2)"), message);
    }

    @Test
    void refusesWrongWordsNumbersAndDays() throws IOException {
        assertTrue(refusal(HEAD + "<tanks id=\"t\" cover=\"tin\"/>\n" + TAIL)
                .endsWith("cover of Tank (t): \"tin\" is not one of unstated, sealed, screened, loose, open"));
        assertTrue(refusal(HEAD + "<tanks id=\"t\" inUse=\"maybe\"/>\n" + TAIL)
                .endsWith("inUse of Tank (t): \"maybe\" is not true or false"));
        assertTrue(refusal(HEAD + "<taps id=\"t\" count=\"2.5\"/>\n" + TAIL)
                .endsWith("count of Tap (t): \"2.5\" is not a whole number"));
        assertTrue(refusal(HEAD + "<tanks id=\"t\" lastCleaned=\"yesterday\"/>\n" + TAIL)
                .endsWith("lastCleaned of Tank (t): \"yesterday\" is not a day such as 2024-03-31"));
        assertTrue(refusal(HEAD + "<uses id=\"u\" count=\"NaN\"/>\n" + TAIL)
                .contains("\"NaN\" is not a number with a unit"));
    }

    @Test
    void refusesReferencesThatLeadNowhereOrToTheWrongThing() throws IOException {
        assertTrue(refusal(HEAD + "<downpipes id=\"d\" drainsTo=\"tank-9\"/>\n" + TAIL).endsWith(
                "drainsTo of Downpipe (d) points to \"tank-9\", which is not in the file"));
        assertTrue(refusal(HEAD + "<downpipes id=\"d\" drainsTo=\"u\"/><uses id=\"u\"/>\n" + TAIL).endsWith(
                "drainsTo of Downpipe (d): Use (u) is not accepted; Receiver of some kind is needed"));
        assertTrue(refusal(HEAD + "<downpipes id=\"d\"><drainsTo href=\"other.site#t\"/></downpipes>\n" + TAIL)
                .endsWith("attribute href=\"other.site#t\" is not accepted in a site file"));
    }

    @Test
    void refusesIdentifiersThatAreUsedTwiceOrAreNone() throws IOException {
        assertTrue(refusal(HEAD + "<roofs id=\"a\"/><tanks id=\"a\"/>\n" + TAIL)
                .endsWith("id \"a\" is used twice; each element needs its own"));
        assertTrue(refusal(HEAD + "<roofs id=\"a b\"/>\n" + TAIL).contains("id \"a b\" is not an identifier"));
        assertTrue(refusal(HEAD + "<roofs id=\"\"/>\n" + TAIL).contains("id \"\" is not an identifier"));
    }

    @Test
    void refusesWhatWouldBeLostWithoutNotice() throws IOException {
        assertTrue(refusal(HEAD + "<rain id=\"a\"/><rain id=\"b\"/>\n" + TAIL)
                .endsWith("there can be only one rain in Site"));
        assertTrue(refusal(HEAD + "<roofs id=\"r\">corrugated</roofs>\n" + TAIL)
                .endsWith("the text \"corrugated\" has no place here; values stand in attributes"));
        assertTrue(refusal(HEAD + "stray" + TAIL).contains("the text \"stray\" has no place here"));
        Files.writeString(file, HEAD + "<roofs id=\"r\"><name>Barn</name><hazards>dust</hazards></roofs>" + TAIL);
        assertEquals("Barn", SiteFiles.load(file).getRoofs().get(0).getName(), "a value may stand in an element");
    }

    @Test
    void refusesWhatReachesOutsideTheFile() throws IOException {
        String body = HEAD.substring(HEAD.indexOf('\n') + 1) + TAIL;
        String dtd = refusal("<!DOCTYPE x SYSTEM \"file:///etc/passwd\">\n" + body);
        assertTrue(dtd.contains("a document type declaration is not accepted"), dtd);
        String laughs = refusal("<!DOCTYPE x [<!ENTITY a \"aaaa\"><!ENTITY b \"&a;&a;\">]>\n"
                + body.replace("id=\"site-1\"", "id=\"site-1\" note=\"&b;\""));
        assertTrue(laughs.contains("a document type declaration is not accepted"), laughs);
        String schema = refusal(body.replace("id=\"site-1\"",
                "xsi:schemaLocation=\"http://x file:///tmp/x.ecore\" id=\"site-1\""));
        assertTrue(schema.contains("attribute schemaLocation="), schema);
        String foreign = refusal(HEAD + "<roofs xmlns:e=\"http://www.eclipse.org/emf/2002/Ecore\""
                + " xsi:type=\"e:EPackage\"/>\n" + TAIL);
        assertTrue(foreign.contains("attribute type=\"e:EPackage\" is not accepted"), foreign);
        String extension = refusal(HEAD + "<xmi:Extension extender=\"x\"/>\n" + TAIL);
        assertTrue(extension.contains("element Extension belongs to http://www.omg.org/XMI"), extension);
    }

    @Test
    void refusesDepthAndSize() throws IOException {
        String deep = refusal(HEAD + "<remarks>" + "<replies>".repeat(200) + TAIL);
        assertTrue(deep.contains("elements are nested deeper than 32"), deep);
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength((64 << 20) + 1);
        }
        assertEquals(file + " is larger than 64 MB, more than a site file may be",
                assertThrows(SiteFileException.class, () -> SiteFiles.load(file)).getMessage());
    }

    @Test
    void refusesAMissingFileAndAFolder() {
        Path missing = folder.resolve("none.site");
        assertEquals(missing + " does not exist",
                assertThrows(SiteFileException.class, () -> SiteFiles.load(missing)).getMessage());
        assertEquals(folder + " is a folder; name a site file in it",
                assertThrows(SiteFileException.class, () -> SiteFiles.load(folder)).getMessage());
    }

    @Test
    void refusesToSaveWhatItCouldNotRead() throws IOException {
        SiteFiles.save(site, file);
        byte[] before = Files.readAllBytes(file);
        site.setNote("bell \u0007");
        assertSaveRefused("house.site was not written: note of " + site
                + " holds the character U+0007, which XML cannot carry");
        site.setNote(null);
        Gutter outside = SiteFactory.eINSTANCE.createGutter();
        roof.getDrains().get(0).setTo(outside);
        assertSaveRefused("house.site was not written: to of RoofDrain points to Gutter, "
                + "which is not part of the site");
        roof.getDrains().get(0).setTo(tank);
        tank.setId("roof-1");
        assertSaveRefused("house.site was not written: the identifier \"roof-1\" is used twice");
        tank.setId("not good");
        assertSaveRefused("house.site was not written: \"not good\" is not an identifier; letters, digits, hyphen, dot "
                + "and underscore are accepted, up to 64");
        assertArrayEquals(before, Files.readAllBytes(file));
    }

    private void assertSaveRefused(String message) {
        assertEquals(message, assertThrows(SiteFileException.class, () -> SiteFiles.save(site, file)).getMessage());
    }

    @Test
    void saveLeavesNothingBeside() throws IOException {
        SiteFiles.save(site, file);
        SiteFiles.save(site, file);
        assertEquals(List.of(file), files());
        Path nowhere = folder.resolve("no/such/house.site");
        assertTrue(assertThrows(SiteFileException.class, () -> SiteFiles.save(site, nowhere)).getMessage()
                .endsWith("the folder " + nowhere.getParent() + " does not exist"));
        assertThrows(SiteFileException.class, () -> SiteFiles.save(site, folder));
        assertEquals(List.of(file), files());
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.toList();
        }
    }

    @Test
    void saveKeepsPermissionsAndFollowsLinks() throws IOException {
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        SiteFiles.save(site, file);
        Path plain = Files.createFile(folder.resolve("plain"));
        assertEquals(Files.getPosixFilePermissions(plain), Files.getPosixFilePermissions(file), "as any new file");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw----"));
        Path link = Files.createSymbolicLink(folder.resolve("link.site"), file);
        site.setName("changed");
        SiteFiles.save(site, link);
        assertTrue(Files.isSymbolicLink(link));
        assertEquals("changed", SiteFiles.load(file).getName());
        assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void olderSchemasAreMigratedInOrder() throws IOException {
        Files.writeString(file, HEAD + "<roofs id=\"roof-1\" surface=\"80 m2\"/>\n" + TAIL);
        Migration renames = new Migration() {
            @Override
            public int from() {
                return 1;
            }

            @Override
            public void migrate(org.w3c.dom.Document document) {
                org.w3c.dom.Element old = (org.w3c.dom.Element) document.getElementsByTagName("roofs").item(0);
                old.setAttribute("planArea", old.getAttribute("surface"));
                old.removeAttribute("surface");
            }
        };
        Site migrated = new SiteReader(2, List.of(renames)).read(file, SiteFiles.newResourceSet()).site();
        assertEquals(Quantity.of(80, Units.M2), migrated.getRoofs().get(0).getPlanArea());
        assertEquals(2, migrated.getSchemaVersion());
        assertThrows(SiteFileException.class, () -> SiteFiles.load(file), "the feature is unknown without migration");
    }

    @Test
    void anEqualSiteIsLoaded() throws IOException {
        SiteFiles.save(site, file);
        site.setSchemaVersion(1);
        assertTrue(EcoreUtil.equals(site, SiteFiles.load(file)));
    }
}

package org.roofspring.site.io;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EPackage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.kernel.testkit.Fuzz;

/** Site files that are broken, strange or meant to harm, beyond those of {@link SiteFilesTest}. */
class HostileSiteFilesTest {
    private static final String HEAD = "<site:Site xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\""
            + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\""
            + " xmlns:site=\"http://www.roofspring.org/site/1\" id=\"s\" schemaVersion=\"1\">\n";
    private static final String TAIL = "</site:Site>\n";

    @TempDir
    Path folder;

    private Path file(byte[] content) throws IOException {
        return Files.write(folder.resolve("x.site"), content);
    }

    private String refusal(byte[] content) throws IOException {
        Path file = file(content);
        String message = assertThrows(SiteFileException.class, () -> SiteFiles.load(file)).getMessage();
        assertEquals(1, message.lines().count(), message);
        return message.substring(file.toString().length());
    }

    private String refusal(String content) throws IOException {
        return refusal(content.getBytes(StandardCharsets.UTF_8));
    }

    @Test
    void damagedFilesAreReadOrRefused() throws IOException {
        int packages = EPackage.Registry.INSTANCE.size();
        Path file = folder.resolve("x.site");
        new Fuzz(file.toString(), SiteFileException.class, content -> SiteFiles.load(file(content))).run(List.of(
                Files.readAllBytes(Path.of("../../demo-data/household.site")),
                Files.readAllBytes(Path.of("../../demo-data/hill-school.site")),
                (HEAD + "<tanks id=\"t\" capacity=\"5 m3\"/>\n" + TAIL).getBytes(StandardCharsets.UTF_8)));
        assertEquals(packages, EPackage.Registry.INSTANCE.size(), "a file has brought a model with it");
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(List.of(file), left.toList(), "a file has written another");
        }
    }

    @Test
    void mixedLineEndsAreRead() throws IOException {
        Path file = file((HEAD.replace("\n", "\r") + "<roofs id=\"a\"/>\r\n<roofs id=\"b\"/>\n\r" + TAIL)
                .getBytes(StandardCharsets.UTF_8));
        assertEquals(2, SiteFiles.load(file).getRoofs().size());
    }

    @Test
    void moreElementsThanAnySiteHasAreRefusedBeforeTheyAreMade() throws IOException {
        String message = refusal(HEAD + "<uses/>".repeat(2_000_001) + TAIL);
        assertTrue(message.endsWith("there are more than 2000000 elements"), message);
    }

    @Test
    void decimalCommasAreRefused() throws IOException {
        String message = refusal(HEAD + "<roofs id=\"a\" planArea=\"12,5 m2\"/>" + TAIL);
        assertTrue(message.contains("planArea of Roof (a): \"12,5 m2\" has a comma; write the decimal point as in 12.5"), message);
    }

    @Test
    void wrongEncodingsAreRefused() throws IOException {
        String text = HEAD + TAIL;
        for (String encoding : List.of("UTF-32", "UTF-16LE", "IBM037", "UTF-16BE")) {
            if (Charset.isSupported(encoding)) {
                refusal(text.getBytes(Charset.forName(encoding)));
            }
        }
        String declared = "<?xml version=\"1.0\" encoding=\"UTF-7\"?>\n" + text;
        assertTrue(refusal(declared).endsWith("says it is written in UTF-7; a site file is written in UTF-8"));
    }

    @Test
    void entitiesAndIncludesAreRefused() throws IOException {
        for (String prologue : List.of(
                "<!DOCTYPE s [<!ENTITY x SYSTEM \"http://127.0.0.1:1/x\">]>",
                "<!DOCTYPE s PUBLIC \"x\" \"http://127.0.0.1:1/x.dtd\">",
                "<!DOCTYPE s [<!ENTITY % p SYSTEM \"file:///etc/hostname\"> %p;]>")) {
            assertTrue(refusal(prologue + HEAD + TAIL).contains("a document type declaration is not accepted"));
        }
        assertTrue(refusal(HEAD + "<roofs id=\"a\" name=\"&x;\"/>" + TAIL).contains("the XML is broken"));
        assertTrue(refusal(HEAD + "<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\"file:///etc/hostname\"/>"
                + TAIL).contains("element include belongs to http://www.w3.org/2001/XInclude"));
    }

    @Test
    void aFileWithoutEndIsRefused() {
        Path endless = Path.of("/dev/zero");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.exists(endless));
        assertEquals("/dev/zero is larger than 64 MB, more than a site file may be",
                assertThrows(SiteFileException.class, () -> SiteFiles.load(endless)).getMessage());
    }
}

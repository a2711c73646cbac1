package org.roofspring.site.internal.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;

import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.URIConverter;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.roofspring.site.Site;
import org.roofspring.site.io.FileState;
import org.roofspring.site.io.Loaded;
import org.roofspring.site.io.SiteFileException;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** Reads a site file: guard, migration from older schemas, model. */
public final class SiteReader {
    private final int schema;
    private final List<Migration> migrations;

    /**
     * @param schema     the newest schema that is understood
     * @param migrations one for each older schema, in order
     */
    public SiteReader(int schema, List<Migration> migrations) {
        this.schema = schema;
        this.migrations = List.copyOf(migrations);
    }

    /** Reads the file into a new resource of the set; on failure the set is as it was. */
    public Loaded read(Path file, ResourceSet resources) throws SiteFileException {
        String name = file.toString();
        byte[] bytes = bytes(file);
        String text = XmlText.decode(name, bytes);
        int version = new XmlGuard(name, schema).check(text);
        if (version < schema) {
            text = migrate(name, text, version);
        }
        Site site = parse(name, text, URI.createFileURI(file.toAbsolutePath().toString()), resources);
        return new Loaded(site, FileState.of(bytes));
    }

    private static byte[] bytes(Path file) throws SiteFileException {
        if (Files.isDirectory(file)) {
            throw new SiteFileException(file + " is a folder; name a site file in it");
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(XmlGuard.MAX_BYTES + 1);
            if (bytes.length > XmlGuard.MAX_BYTES) {
                throw new SiteFileException(file + " is larger than " + (XmlGuard.MAX_BYTES >> 20)
                        + " MB, more than a site file may be");
            }
            return bytes;
        } catch (NoSuchFileException e) {
            throw new SiteFileException(file + " does not exist", e);
        } catch (SiteFileException e) {
            throw e;
        } catch (IOException e) {
            throw new SiteFileException(file + " could not be read: " + e.getMessage(), e);
        }
    }

    private static Site parse(String name, String text, URI uri, ResourceSet resources) throws SiteFileException {
        XMIResourceImpl resource = (XMIResourceImpl) resources.createResource(uri);
        // Without the map each reference would search the whole site; afterwards it would hold stale entries.
        resource.setIntrinsicIDToEObjectMap(new HashMap<>());
        try {
            resource.load(new URIConverter.ReadableInputStream(text, "UTF-8"), null);
            resource.setIntrinsicIDToEObjectMap(null);
            return (Site) resource.getContents().get(0);
        } catch (IOException | RuntimeException e) {
            resources.getResources().remove(resource);
            throw new SiteFileException(LoadFault.sentence(name, resource, e), e);
        }
    }

    private String migrate(String name, String text, int version) throws SiteFileException {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultNSInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(text)));
            for (Migration migration : migrations) {
                if (migration.from() >= version) {
                    migration.migrate(document);
                    document.getDocumentElement().setAttribute("schemaVersion",
                            Integer.toString(migration.from() + 1));
                }
            }
            StringWriter out = new StringWriter();
            TransformerFactory.newDefaultInstance().newTransformer()
                    .transform(new DOMSource(document), new StreamResult(out));
            return out.toString();
        } catch (ParserConfigurationException | SAXException | TransformerException | IOException e) {
            throw new SiteFileException(name + " is of the older schema " + version
                    + " and could not be brought up to date: " + e.getMessage(), e);
        }
    }
}

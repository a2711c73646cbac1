package org.roofspring.site.internal.io;

import java.io.StringReader;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import javax.xml.XMLConstants;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.roofspring.site.Ids;
import org.roofspring.site.SitePackage;
import org.roofspring.site.io.SiteFileException;

/**
 * Looks through a file before the model reads it: is it XML, is it ours, is it small enough, does it name anything
 * outside itself? Nothing is resolved or fetched. Says where the first fault is.
 */
final class XmlGuard {
    static final int MAX_BYTES = 64 << 20;
    private static final int MAX_DEPTH = 32;
    private static final int MAX_ELEMENTS = 2_000_000;
    private static final String XMI = "http://www.omg.org/XMI";
    private static final Pattern NAMESPACE = Pattern.compile("http://www\\.roofspring\\.org/site/(\\d{1,6})");
    private static final Pattern VERSION = Pattern.compile("\\d{1,6}");

    private final String name;
    private final int newest;
    private final Set<String> ids = new HashSet<>();
    private final Deque<Open> open = new ArrayDeque<>();
    private XMLStreamReader reader;

    /**
     * An element that is not closed yet.
     *
     * @param type what it is in the model, or null where it is a value or not known
     * @param seen names of single features that were met in it
     * @param text whether words may stand in it
     */
    private record Open(EClass type, Set<String> seen, boolean text) {
    }

    XmlGuard(String name, int newest) {
        this.name = name;
        this.newest = newest;
    }

    /** Returns the schema version that the file says it has. */
    int check(String text) throws SiteFileException {
        try {
            reader = reader(text);
            try {
                return scan();
            } finally {
                reader.close();
            }
        } catch (XMLStreamException e) {
            throw new SiteFileException(at(e.getLocation()) + "the XML is broken or cut off here ("
                    + parserMessage(e) + ")", e);
        }
    }

    private static XMLStreamReader reader(String text) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setXMLResolver((publicId, systemId, base, namespace) -> {
            throw new XMLStreamException("it points to another file");
        });
        return factory.createXMLStreamReader(new StringReader(text));
    }

    /** The schema that a content says it has, however broken the rest of it is; empty when it is no site file. */
    static OptionalInt schemaOf(byte[] content) {
        XmlGuard guard = new XmlGuard("", Integer.MAX_VALUE);
        try {
            guard.reader = reader(XmlText.decode("", content));
            while (guard.reader.hasNext()) {
                if (guard.reader.next() == XMLStreamConstants.START_ELEMENT) {
                    return OptionalInt.of(guard.version());
                }
            }
            return OptionalInt.empty();
        } catch (SiteFileException | XMLStreamException e) {
            return OptionalInt.empty(); // some other file, or one that no version of this program could read
        }
    }

    private int scan() throws XMLStreamException, SiteFileException {
        int elements = 0;
        int version = newest;
        while (reader.hasNext()) {
            switch (reader.next()) {
                case XMLStreamConstants.DTD -> throw fault("a document type declaration is not accepted");
                case XMLStreamConstants.ENTITY_REFERENCE -> throw fault("an entity reference is not accepted");
                case XMLStreamConstants.START_ELEMENT -> {
                    if (elements == 0) {
                        version = version();
                        open.push(new Open(SitePackage.Literals.SITE, new HashSet<>(), false));
                    } else {
                        inner();
                    }
                    attributes();
                    if (open.size() > MAX_DEPTH) {
                        throw fault("elements are nested deeper than " + MAX_DEPTH);
                    }
                    if (++elements > MAX_ELEMENTS) {
                        throw fault("there are more than " + MAX_ELEMENTS + " elements");
                    }
                }
                case XMLStreamConstants.END_ELEMENT -> open.pop();
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> words();
                default -> { }
            }
        }
        return version;
    }

    /** The schema that the root element says it has. */
    private int version() throws SiteFileException {
        String namespace = reader.getNamespaceURI();
        Matcher ours = NAMESPACE.matcher(namespace == null ? "" : namespace);
        if (!ours.matches() || !reader.getLocalName().equals("Site")) {
            throw new SiteFileException(name + " is not a site file: its root element is "
                    + abridged(reader.getLocalName()) + "; a site file has the root element site:Site of "
                    + SitePackage.eNS_URI);
        }
        String written = reader.getAttributeValue("", "schemaVersion");
        if (written != null && !VERSION.matcher(written).matches()) {
            throw fault("schemaVersion \"" + abridged(written) + "\" is not a whole number");
        }
        int ofNamespace = Integer.parseInt(ours.group(1));
        int version = Math.max(ofNamespace, written == null ? 0 : Integer.parseInt(written));
        if (version > newest) {
            throw new SiteFileException(name + " was made by a newer Roofspring (schema " + version
                    + "); this one reads up to " + newest);
        }
        if (ofNamespace == 0) {
            throw fault("there is no schema 0");
        }
        return Math.max(1, version);
    }

    private void inner() throws SiteFileException {
        String namespace = reader.getNamespaceURI();
        if (namespace != null && !namespace.isEmpty()) {
            throw fault("element " + abridged(reader.getLocalName()) + " belongs to " + abridged(namespace)
                    + "; only elements without a namespace are accepted here");
        }
        String feature = reader.getLocalName();
        EClass owner = open.peek().type();
        EStructuralFeature known = owner == null ? null : owner.getEStructuralFeature(feature);
        if (known != null && !known.isMany() && !open.peek().seen().add(feature)) {
            throw fault("there can be only one " + feature + " in " + owner.getName());
        }
        open.push(new Open(known instanceof EReference reference && reference.isContainment()
                ? reference.getEReferenceType() : null, new HashSet<>(), known instanceof EAttribute));
    }

    /** Words where the model has no place for them would be lost without notice. */
    private void words() throws SiteFileException {
        if (!reader.isWhiteSpace() && !open.isEmpty() && !open.peek().text()) {
            throw fault("the text \"" + abridged(reader.getText())
                    + "\" has no place here; values stand in attributes");
        }
    }

    private void attributes() throws SiteFileException {
        for (int i = 0; i < reader.getAttributeCount(); i++) {
            String namespace = reader.getAttributeNamespace(i) == null ? "" : reader.getAttributeNamespace(i);
            String local = reader.getAttributeLocalName(i);
            String value = reader.getAttributeValue(i);
            boolean accepted = switch (namespace) {
                case "" -> !local.equals("href");
                case XMI -> local.equals("version");
                case XMLConstants.W3C_XML_SCHEMA_INSTANCE_NS_URI -> local.equals("type") && isOurType(value);
                default -> false;
            };
            if (!accepted) {
                throw fault("attribute " + abridged(local) + "=\"" + abridged(value)
                        + "\" is not accepted in a site file");
            }
            if (namespace.isEmpty() && local.equals("id")) {
                checkId(value);
            }
        }
    }

    private boolean isOurType(String value) {
        int colon = value.indexOf(':');
        String namespace = reader.getNamespaceURI(colon < 0 ? "" : value.substring(0, colon));
        return namespace != null && NAMESPACE.matcher(namespace).matches();
    }

    private void checkId(String id) throws SiteFileException {
        if (!Ids.isValid(id)) {
            throw fault("id \"" + abridged(id) + "\" is not an identifier; " + Ids.ACCEPTED);
        }
        if (!ids.add(id)) {
            throw fault("id \"" + id + "\" is used twice; each element needs its own");
        }
    }

    private SiteFileException fault(String what) {
        return new SiteFileException(at(reader.getLocation()) + what);
    }

    private String at(Location location) {
        return location == null || location.getLineNumber() < 1 ? name + ": "
                : String.format(Locale.ROOT, "%s, line %d, column %d: ", name, location.getLineNumber(),
                        location.getColumnNumber());
    }

    private static String parserMessage(XMLStreamException e) {
        String text = e.getMessage() == null ? e.toString() : e.getMessage();
        int message = text.indexOf("Message: ");
        return abridged(message < 0 ? text : text.substring(message + "Message: ".length()));
    }

    static String abridged(String text) {
        String oneLine = text.replaceAll("[\\p{Cntrl}\\s]+", " ").trim();
        return oneLine.length() > 160 ? oneLine.substring(0, 157) + "..." : oneLine;
    }
}

package org.roofspring.site.internal.io;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.roofspring.site.Element;
import org.roofspring.site.Ids;
import org.roofspring.site.Site;
import org.roofspring.site.io.SiteFileException;
import org.roofspring.site.io.SiteFiles;

/** Turns a site into the bytes of its file. */
public final class SiteWriter {
    private SiteWriter() {
    }

    /**
     * The bytes of the file; the same site gives the same bytes.
     *
     * @param name of the file, for messages
     */
    public static byte[] toBytes(Site site, String name) throws SiteFileException {
        Ids.assignMissing(site);
        // Written from a copy, so that neither the resource of the site nor its listeners notice anything.
        EcoreUtil.Copier copier = new EcoreUtil.Copier(true, false);
        Site copy = (Site) copier.copy(site);
        copier.copyReferences();
        copy.setSchemaVersion(SiteFiles.SCHEMA_VERSION);
        check(copier, name);
        Resource resource = new SiteResourceSet().createResource(URI.createURI("memory.site"));
        resource.getContents().add(copy);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            resource.save(out, null);
        } catch (IOException e) {
            throw new SiteFileException(name + " could not be written: " + e.getMessage(), e);
        }
        return out.toByteArray();
    }

    private static void check(Map<EObject, EObject> inside, String name) throws SiteFileException {
        Map<String, EObject> byId = new HashMap<>();
        for (EObject object : inside.keySet()) {
            if (object instanceof Element element) {
                checkId(element, byId, name);
            }
            for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
                if (object.eIsSet(feature)) {
                    check(object, feature, inside, name);
                }
            }
        }
    }

    private static void checkId(Element element, Map<String, EObject> byId, String name) throws SiteFileException {
        if (!Ids.isValid(element.getId())) {
            throw new SiteFileException(name + " was not written: \"" + element.getId() + "\" is not an identifier; "
                    + Ids.ACCEPTED);
        }
        if (byId.put(element.getId(), element) != null) {
            throw new SiteFileException(name + " was not written: the identifier \"" + element.getId()
                    + "\" is used twice");
        }
    }

    private static void check(EObject object, EStructuralFeature feature, Map<EObject, EObject> inside, String name)
            throws SiteFileException {
        Object value = object.eGet(feature);
        for (Object single : value instanceof Collection<?> many ? many : List.of(value)) {
            if (feature instanceof EReference && !inside.containsKey(single)) {
                throw new SiteFileException(name + " was not written: " + feature.getName() + " of " + object
                        + " points to " + single + ", which is not part of the site");
            }
            if (single instanceof String text) {
                OptionalInt foreign = text.codePoints().filter(c -> !isXml(c)).findFirst();
                if (foreign.isPresent()) {
                    throw new SiteFileException(String.format(Locale.ROOT,
                            "%s was not written: %s of %s holds the character U+%04X, which XML cannot carry", name,
                            feature.getName(), object, foreign.getAsInt()));
                }
            }
        }
    }

    private static boolean isXml(int codePoint) {
        return codePoint == '\t' || codePoint == '\n' || codePoint == '\r'
                || codePoint >= 0x20 && codePoint <= 0xd7ff || codePoint >= 0xe000 && codePoint <= 0xfffd
                || codePoint >= 0x10000;
    }
}

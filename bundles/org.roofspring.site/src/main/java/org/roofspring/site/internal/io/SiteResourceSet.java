package org.roofspring.site.internal.io;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ExtensibleURIConverterImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.roofspring.site.SitePackage;
import org.roofspring.site.internal.ValueTextFactory;

/** A resource set for site files alone; it never opens a file or address by itself. */
public final class SiteResourceSet extends ResourceSetImpl {
    private static final Map<String, Boolean> PARSER_FEATURES = Map.of(
            "http://apache.org/xml/features/disallow-doctype-decl", true,
            "http://xml.org/sax/features/external-general-entities", false,
            "http://xml.org/sax/features/external-parameter-entities", false,
            "http://apache.org/xml/features/nonvalidating/load-external-dtd", false);

    public SiteResourceSet() {
        ValueTextFactory.register();
        getPackageRegistry().put(SitePackage.eNS_URI, SitePackage.eINSTANCE);
        getResourceFactoryRegistry().getExtensionToFactoryMap()
                .put(Resource.Factory.Registry.DEFAULT_EXTENSION, (Resource.Factory) SiteResourceSet::resource);
        setURIConverter(new ClosedConverter());
    }

    private static Resource resource(URI uri) {
        XMIResourceImpl resource = new XMIResourceImpl(uri);
        resource.setEncoding("UTF-8");
        Map<Object, Object> save = resource.getDefaultSaveOptions();
        save.put(XMLResource.OPTION_ENCODING, "UTF-8");
        save.put(Resource.OPTION_LINE_DELIMITER, "\n");
        Map<Object, Object> load = resource.getDefaultLoadOptions();
        load.put(XMLResource.OPTION_PARSER_FEATURES, PARSER_FEATURES);
        load.put(XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true);
        return resource;
    }

    private static final class ClosedConverter extends ExtensibleURIConverterImpl {
        @Override
        public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("a site file reads no other file: " + uri);
        }

        @Override
        public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("site files are written by SiteFiles: " + uri);
        }
    }
}

package org.roofspring.ui.pumps;

import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.FrameworkUtil;

/**
 * Starts what the grid finds through the service loader. The loader's mediator sees providers only in bundles that are
 * started; without them the cells stay empty. They are not started with the product, so that the command line need not
 * wait for what it never uses.
 */
final class GridLibrary {
    private static final String PROVIDERS = "org.eclipse.collections.impl";

    private GridLibrary() {
    }

    /** Call before the first grid is made. */
    static void start() {
        BundleContext context = FrameworkUtil.getBundle(GridLibrary.class).getBundleContext();
        for (Bundle bundle : context.getBundles()) {
            if (PROVIDERS.equals(bundle.getSymbolicName())) {
                try {
                    bundle.start(Bundle.START_TRANSIENT);
                } catch (BundleException e) {
                    throw new IllegalStateException("the bundle " + PROVIDERS + ", which grids need, does not start",
                            e);
                }
                return;
            }
        }
        throw new IllegalStateException("the bundle " + PROVIDERS + ", which grids need, is missing");
    }
}

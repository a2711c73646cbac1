package org.roofspring.ui.part;

import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;
import org.roofspring.ui.session.SessionService;

/** Finds the one session service of the workbench, for parts, which the platform creates. */
public final class Sessions {
    private Sessions() {
    }

    /** The sessions of the workbench. */
    public static SessionService service() {
        BundleContext context = FrameworkUtil.getBundle(Sessions.class).getBundleContext();
        ServiceReference<SessionService> reference = context.getServiceReference(SessionService.class);
        if (reference == null) {
            throw new IllegalStateException("the session service is missing; the calculation engine did not start");
        }
        return context.getService(reference);
    }
}

package org.roofspring.ui.internal;

import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;

/** The window: its size, its bars, and its following of the active editor. Menus and tool bar are in plugin.xml. */
final class RoofspringWindowAdvisor extends WorkbenchWindowAdvisor {
    private static final Point USUAL_SIZE = new Point(1500, 950);

    RoofspringWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        super(configurer);
    }

    @Override
    public ActionBarAdvisor createActionBarAdvisor(IActionBarConfigurer configurer) {
        return new ActionBarAdvisor(configurer) {
            @Override
            protected void fillMenuBar(IMenuManager menuBar) {
                // contributed in plugin.xml
            }

            @Override
            protected void fillCoolBar(ICoolBarManager coolBar) {
                // contributed in plugin.xml
            }
        };
    }

    @Override
    public void preWindowOpen() {
        IWorkbenchWindowConfigurer configurer = getWindowConfigurer();
        Rectangle screen = configurer.getWindow().getWorkbench().getDisplay().getPrimaryMonitor().getClientArea();
        configurer.setInitialSize(new Point(Math.min(USUAL_SIZE.x, screen.width), Math.min(USUAL_SIZE.y, screen.height)));
        configurer.setTitle("Roofspring");
        configurer.setShowMenuBar(true);
        configurer.setShowCoolBar(true);
        configurer.setShowStatusLine(true);
        configurer.setShowProgressIndicator(true);
        configurer.setShowPerspectiveBar(false);
    }

    @Override
    public void postWindowOpen() {
        new ActiveSiteTracker(getWindowConfigurer()).start();
    }
}

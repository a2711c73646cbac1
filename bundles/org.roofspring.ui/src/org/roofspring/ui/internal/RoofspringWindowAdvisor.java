package org.roofspring.ui.internal;

import org.eclipse.jface.action.ICoolBarManager;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.application.ActionBarAdvisor;
import org.eclipse.ui.application.IActionBarConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.roofspring.ui.PartIds;

/** The window: its size, its bars, and its following of the active editor. Menus and tool bar are in plugin.xml. */
final class RoofspringWindowAdvisor extends WorkbenchWindowAdvisor {
    private static final Point USUAL_SIZE = new Point(1600, 1000);

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

    /** Makes a part that lies behind another, so that its tab tells how much there is to mind. */
    private void createHidden(String part) {
        IWorkbenchPage page = getWindowConfigurer().getWindow().getActivePage();
        try {
            if (page != null && page.findViewReference(part) != null) {
                page.showView(part, null, IWorkbenchPage.VIEW_CREATE);
            }
        } catch (PartInitException e) {
            throw new IllegalStateException("the part " + part + " cannot be made", e);
        }
    }

    @Override
    public void postWindowOpen() {
        new ActiveSiteTracker(getWindowConfigurer()).start();
        createHidden(PartIds.CAUTIONS);
        createHidden(PartIds.PROBLEMS);
    }
}

package org.roofspring.ui.internal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.application.IWorkbenchConfigurer;
import org.eclipse.ui.application.IWorkbenchWindowConfigurer;
import org.eclipse.ui.application.WorkbenchAdvisor;
import org.eclipse.ui.application.WorkbenchWindowAdvisor;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.part.Sites;

/** Sets the workbench up, and opens the site files named on the command line. */
final class RoofspringWorkbenchAdvisor extends WorkbenchAdvisor {
    @Override
    public String getInitialWindowPerspectiveId() {
        return PartIds.PERSPECTIVE;
    }

    @Override
    public void initialize(IWorkbenchConfigurer configurer) {
        configurer.setSaveAndRestore(true);
    }

    @Override
    public WorkbenchWindowAdvisor createWorkbenchWindowAdvisor(IWorkbenchWindowConfigurer configurer) {
        return new RoofspringWindowAdvisor(configurer);
    }

    @Override
    public void postStartup() {
        IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
        for (String argument : siteArguments(Platform.getApplicationArgs())) {
            try {
                Sites.open(page, Path.of(argument));
            } catch (InvalidPathException e) {
                MessageDialog.openError(page.getWorkbenchWindow().getShell(), "This site cannot be opened",
                        "\"" + argument + "\" is not the name of a file: " + e.getReason());
            }
        }
    }

    /** The arguments that name site files: options begin with a hyphen, and site files end in .site. */
    static List<String> siteArguments(String... arguments) {
        List<String> sites = new ArrayList<>();
        for (String argument : arguments) {
            if (!argument.startsWith("-") && argument.endsWith(".site")) {
                sites.add(argument);
            }
        }
        return sites;
    }
}

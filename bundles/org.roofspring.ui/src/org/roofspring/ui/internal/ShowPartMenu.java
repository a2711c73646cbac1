package org.roofspring.ui.internal;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.views.IViewDescriptor;

/** Menu entries that bring up the parts of the category Site, ours and those of plug-ins. */
public final class ShowPartMenu extends CompoundContributionItem {
    private static final String CATEGORY = "org.roofspring.ui.parts";

    @Override
    protected IContributionItem[] getContributionItems() {
        IViewDescriptor[] views = PlatformUI.getWorkbench().getViewRegistry().getViews();
        return java.util.Arrays.stream(views).filter(ShowPartMenu::listed)
                .map(view -> (IContributionItem) new ActionContributionItem(show(view))).toArray(IContributionItem[]::new);
    }

    private static boolean listed(IViewDescriptor view) {
        return view.getCategoryPath() != null && java.util.List.of(view.getCategoryPath()).contains(CATEGORY);
    }

    private static Action show(IViewDescriptor view) {
        return new Action(view.getLabel(), view.getImageDescriptor()) {
            @Override
            public void run() {
                IWorkbenchPage page = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
                try {
                    page.showView(view.getId());
                } catch (PartInitException e) {
                    throw new IllegalStateException("the part " + view.getId() + " cannot be shown", e);
                }
            }
        };
    }
}

package org.roofspring.ui.internal;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.roofspring.ui.PartIds;

/** The outline on the left, the form in the middle, answers on the right, the record and what to mind below. */
public final class SitePerspective implements IPerspectiveFactory {
    @Override
    public void createInitialLayout(IPageLayout layout) {
        String form = layout.getEditorArea();
        layout.setEditorAreaVisible(true);
        layout.addView(PartIds.OUTLINE, IPageLayout.LEFT, 0.16f, form);
        layout.addView(PartIds.CHART, IPageLayout.BOTTOM, 0.6f, form);
        IFolderLayout answers = layout.createFolder("answers", IPageLayout.RIGHT, 0.49f, form);
        answers.addView(PartIds.FINDINGS);
        IFolderLayout mind = layout.createFolder("mind", IPageLayout.RIGHT, 0.52f, PartIds.CHART);
        mind.addView(PartIds.WORKINGS);
        mind.addView(PartIds.CAUTIONS);
        mind.addView(PartIds.PROBLEMS);
        layout.getViewLayout(PartIds.OUTLINE).setCloseable(true);
    }
}

package org.roofspring.ui.parts.findings;

import java.util.List;

import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PartInitException;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.look.FindingWords;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SiteSession;

/** All findings of the active site; selecting one shows its workings. */
public final class FindingsView extends SessionView {
    private static final int VALUE_WIDTH = 260;

    private TreeViewer tree;
    private Label whole;
    private List<FindingLine> shown = List.of();
    private SiteSession shownSession;
    private boolean following;

    public FindingsView() {
        super(Aspect.RESULTS, Aspect.SELECTION, Aspect.MODEL);
    }

    @Override
    protected void createContent(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(page);
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
        Composite frame = new Composite(page, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        TreeColumnLayout layout = new TreeColumnLayout();
        frame.setLayout(layout);
        tree = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        tree.getTree().setHeaderVisible(true);
        tree.getTree().setLinesVisible(true);
        tree.setContentProvider(new FindingsContent(() -> shown));
        tree.setComparer(new FindingLine.ByKey());
        column(layout, "Finding", SWT.LEFT, FindingLabels.TITLE, new ColumnWeightData(1, 330));
        column(layout, "Value", SWT.RIGHT, FindingLabels.VALUE, new ColumnPixelData(VALUE_WIDTH, true, true));
        ColumnViewerToolTipSupport.enableFor(tree);
        tree.addPostSelectionChangedListener(this::selected);
        tree.addDoubleClickListener(event -> openWorkings());
        tree.setAutoExpandLevel(2);
        whole = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(6, 4).exclude(true).applyTo(whole);
    }

    /** A value of more words than the column holds is shown whole below the table while it is selected. */
    private void showWhole(SiteSession session) {
        String words = FindingsContent.find(shown, session.selection().finding()).map(FindingLine::value)
                .filter(value -> !FindingWords.brief(value).equals(value)).orElse("");
        if (!words.equals(whole.getText())) {
            whole.setText(words);
            ((GridData) whole.getLayoutData()).exclude = words.isEmpty();
            whole.setVisible(!words.isEmpty());
            whole.getParent().layout();
        }
    }

    private void column(TreeColumnLayout layout, String title, int alignment, int index, ColumnLayoutData width) {
        TreeViewerColumn column = new TreeViewerColumn(tree, alignment);
        column.getColumn().setText(title);
        column.setLabelProvider(new FindingLabels(index, Palette.of(tree.getControl())));
        layout.setColumnData(column.getColumn(), width);
    }

    @Override
    protected void show(SiteSession session) {
        List<FindingLine> lines = FindingLine.of(session);
        boolean other = session != shownSession;
        shownSession = session;
        if (other || !lines.equals(shown)) {
            boolean newLines = other || lines.size() != shown.size();
            shown = lines;
            tree.getTree().setRedraw(false);
            try {
                if (newLines) {
                    tree.setInput(this);
                    tree.expandAll();
                } else {
                    tree.refresh();
                }
            } finally {
                tree.getTree().setRedraw(true);
            }
        }
        follow(session);
        showWhole(session);
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        show(session);
    }

    private void follow(SiteSession session) {
        following = true;
        try {
            FindingsContent.find(shown, session.selection().finding()).ifPresent(line -> {
                boolean selected = tree.getStructuredSelection().getFirstElement() instanceof FindingLine now && now.key().equals(line.key());
                if (!selected) {
                    tree.setSelection(new StructuredSelection(line), true);
                }
            });
        } finally {
            following = false;
        }
    }

    private void selected(SelectionChangedEvent event) {
        if (!following && event.getStructuredSelection().getFirstElement() instanceof FindingLine line && line.finding() != null) {
            session().ifPresent(session -> session.select(session.selection().to(line.finding())));
        }
    }

    private void openWorkings() {
        try {
            getSite().getPage().showView(PartIds.WORKINGS);
        } catch (PartInitException e) {
            throw new IllegalStateException("the workings part is missing", e);
        }
    }

    @Override
    protected void forget() {
        shown = List.of();
        shownSession = null;
        tree.setInput(null);
        whole.setText("");
    }

    /** The lines that are shown, for tests. */
    public List<FindingLine> lines() {
        return shown;
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }
}

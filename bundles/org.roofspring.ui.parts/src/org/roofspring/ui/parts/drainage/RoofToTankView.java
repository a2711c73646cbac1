package org.roofspring.ui.parts.drainage;

import java.util.List;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.TreeColumnLayout;
import org.eclipse.jface.viewers.CellLabelProvider;
import org.eclipse.jface.viewers.ColumnLayoutData;
import org.eclipse.jface.viewers.ColumnPixelData;
import org.eclipse.jface.viewers.ColumnViewerToolTipSupport;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.PartInitException;
import org.roofspring.calc.ValueWords;
import org.roofspring.site.Element;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SiteSession;

/**
 * Each roof with its gutters, outlets, downpipes, diverters and screens, and how far the design storm uses them. The
 * selected part is the one selected elsewhere; double-click opens the workings of its figure.
 */
public final class RoofToTankView extends SessionView {
    public static final String ID = "org.roofspring.ui.parts.drainage";
    private static final int BAR_COLUMN = 4;

    private Label storm;
    private TreeViewer tree;
    private List<WayLine> shown = List.of();
    private boolean following;

    public RoofToTankView() {
        super(Aspect.RESULTS, Aspect.MODEL, Aspect.SELECTION);
    }

    @Override
    protected void createContent(Composite parent) {
        storm = new Label(parent, SWT.NONE);
        storm.setForeground(Palette.of(storm).muted());
        GridDataFactory.fillDefaults().grab(true, false).indent(8, 4).applyTo(storm);
        Composite frame = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(frame);
        TreeColumnLayout layout = new TreeColumnLayout();
        frame.setLayout(layout);
        tree = new TreeViewer(frame, SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        tree.getTree().setHeaderVisible(true);
        tree.getTree().setLinesVisible(true);
        tree.setContentProvider(new WayContent(() -> shown));
        tree.setComparer(new WayContent.ByPath());
        Palette palette = Palette.of(tree.getControl());
        column(layout, "Part", SWT.LEFT, new WayLabels(WayLabels.PART, palette), new ColumnWeightData(2, 180));
        column(layout, "Arrives", SWT.RIGHT, new WayLabels(WayLabels.ARRIVES, palette), pixels(80));
        column(layout, "Gets through", SWT.RIGHT, new WayLabels(WayLabels.CARRIES, palette), pixels(105));
        column(layout, "Used", SWT.RIGHT, new WayLabels(WayLabels.USED, palette), pixels(60));
        column(layout, "", SWT.LEFT, new WayBar(palette, BAR_COLUMN), pixels(90));
        column(layout, "In words", SWT.LEFT, new WayLabels(WayLabels.WORDS, palette), new ColumnWeightData(4, 220));
        ColumnViewerToolTipSupport.enableFor(tree);
        tree.addPostSelectionChangedListener(this::selected);
        tree.addDoubleClickListener(event -> openWorkings());
    }

    private static ColumnLayoutData pixels(int width) {
        return new ColumnPixelData(width, true, true);
    }

    private void column(TreeColumnLayout layout, String title, int alignment, CellLabelProvider labels,
            ColumnLayoutData width) {
        TreeViewerColumn column = new TreeViewerColumn(tree, alignment);
        column.getColumn().setText(title);
        column.setLabelProvider(labels);
        layout.setColumnData(column.getColumn(), width);
    }

    @Override
    protected void show(SiteSession session) {
        List<WayLine> lines = WayLines.of(session);
        storm.setText(storm(session));
        if (!lines.equals(shown)) {
            boolean sameParts = paths(lines).equals(paths(shown));
            shown = lines;
            if (sameParts) {
                tree.refresh();
            } else {
                tree.setInput(this);
                tree.expandAll();
            }
        }
        follow(session);
    }

    private static List<List<String>> paths(List<WayLine> lines) {
        return lines.stream().flatMap(WayLine::all).map(WayLine::path).toList();
    }

    /** The storm that the figures are for, or why there are none. */
    private static String storm(SiteSession session) {
        Optional<String> intensity = session.site().getRain() == null ? Optional.empty()
                : session.live().results().finding("roof.drainage", "intensity", session.site().getRain().getId())
                        .map(finding -> ValueWords.of(finding.value(), session.format()));
        return intensity.map(words -> "Design storm of " + words
                + ". Select a part to see it in the form; double-click "
                + "it for its workings.")
                .orElse("There is no design storm yet; the Problems part says what is missing.");
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        if (aspect == Aspect.SELECTION) {
            follow(session);
        } else {
            show(session);
        }
    }

    private void follow(SiteSession session) {
        if (!(session.selection().element() instanceof Element element)) {
            return;
        }
        following = true;
        try {
            boolean selected = tree.getStructuredSelection().getFirstElement() instanceof WayLine now
                    && now.elementId().equals(element.getId());
            if (!selected) {
                shown.stream().flatMap(WayLine::all).filter(line -> line.elementId().equals(element.getId()))
                        .findFirst()
                        .ifPresentOrElse(line -> tree.setSelection(new StructuredSelection(line), true),
                                () -> tree.setSelection(StructuredSelection.EMPTY));
            }
        } finally {
            following = false;
        }
    }

    private void selected(SelectionChangedEvent event) {
        if (!following && event.getStructuredSelection().getFirstElement() instanceof WayLine line) {
            session().ifPresent(session -> session.element(line.elementId())
                    .ifPresent(element -> session.select(session.selection().to(element))));
        }
    }

    private void openWorkings() {
        if (tree.getStructuredSelection().getFirstElement() instanceof WayLine line && line.finding() != null) {
            session().ifPresent(session -> session.select(session.selection().to(line.finding())));
            try {
                getSite().getPage().showView(PartIds.WORKINGS);
            } catch (PartInitException e) {
                throw new IllegalStateException("the workings part is missing", e);
            }
        }
    }

    @Override
    protected void forget() {
        shown = List.of();
        tree.setInput(null);
    }

    /** The roofs that are shown, with their ways, for tests. */
    public List<WayLine> lines() {
        return shown;
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }
}

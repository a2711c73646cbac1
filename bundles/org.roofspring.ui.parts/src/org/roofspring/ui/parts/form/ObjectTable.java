package org.roofspring.ui.parts.form;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.TableColumnLayout;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationEvent;
import org.eclipse.jface.viewers.ColumnViewerEditorActivationListener;
import org.eclipse.jface.viewers.ColumnViewerEditorDeactivationEvent;
import org.eclipse.jface.viewers.ColumnWeightData;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.roofspring.site.NamedElement;
import org.roofspring.site.SitePackage;
import org.roofspring.site.edit.FormPlan;
import org.roofspring.site.edit.SiteChecks;
import org.roofspring.site.edit.Words;
import org.roofspring.site.meta.FeatureFacts;
import org.roofspring.ui.field.FeatureText;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.part.SelectionActions;
import org.roofspring.ui.session.Drafts;
import org.roofspring.ui.session.SiteSession;

/**
 * A table of what a containment holds. Rows, such as the points of a curve, are edited in their cells; elements are
 * listed with their main values and opened by a double click.
 */
final class ObjectTable {
    private static final int MOST_COLUMNS_OF_ELEMENTS = 4;
    private static final int MOST_ROWS_SHOWN = 12;
    private static final int LEAST_ROWS_SHOWN = 2;
    private static final int LEAST_COLUMN_WIDTH = 70;
    private static final int HEADING_MARGIN = 14;

    private final SiteSession session;
    private final EObject owner;
    private final EReference containment;
    private final boolean ofElements;
    private final Composite whole;
    private final TableViewer viewer;
    private final Composite frame;
    private final Label problems;
    private final List<TableViewerColumn> columns = new ArrayList<>();
    private final List<EStructuralFeature> features;
    private ToolItem duplicate;
    private ToolItem up;
    private ToolItem down;
    private ToolItem remove;

    /** @param titled whether its name stands above it */
    static ObjectTable create(SiteSession session, EObject owner, EReference containment, FormToolkit toolkit, Composite parent,
            boolean titled) {
        return new ObjectTable(session, owner, containment, toolkit, parent, titled);
    }

    private ObjectTable(SiteSession session, EObject owner, EReference containment, FormToolkit toolkit, Composite parent,
            boolean titled) {
        this.session = session;
        this.owner = owner;
        this.containment = containment;
        this.ofElements = SitePackage.Literals.ELEMENT.isSuperTypeOf(containment.getEReferenceType());
        this.features = features();
        whole = toolkit.createComposite(parent);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(4, 2).applyTo(whole);
        Label title = toolkit.createLabel(whole, titled ? Words.feature(containment) : "");
        title.setForeground(Palette.of(whole).label());
        title.setToolTipText(FeatureFacts.documentation(containment));
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.CENTER).grab(true, false).applyTo(title);
        createButtons(toolkit);
        frame = toolkit.createComposite(whole);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(frame);
        viewer = new TableViewer(frame, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE | SWT.V_SCROLL);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        viewer.getTable().setHeaderVisible(true);
        viewer.getTable().setLinesVisible(true);
        viewer.getTable().setData(org.roofspring.ui.field.Field.FEATURE_KEY, containment.getName());
        createColumns();
        viewer.addSelectionChangedListener(event -> enable());
        viewer.getColumnViewerEditor().addEditorActivationListener(new ColumnViewerEditorActivationListener() {
            @Override
            public void beforeEditorActivated(ColumnViewerEditorActivationEvent event) {
                // nothing to prepare
            }

            @Override
            public void afterEditorActivated(ColumnViewerEditorActivationEvent event) {
                // the editor shows itself
            }

            @Override
            public void beforeEditorDeactivated(ColumnViewerEditorDeactivationEvent event) {
                // the value is taken over by the editing support
            }

            @Override
            public void afterEditorDeactivated(ColumnViewerEditorDeactivationEvent event) {
                refresh();
            }
        });
        viewer.addDoubleClickListener(event -> open());
        viewer.getTable().addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.DEL && !viewer.isCellEditorActive()) {
                removeSelected();
            }
        });
        problems = toolkit.createLabel(whole, "", SWT.WRAP);
        problems.setForeground(Palette.of(whole).danger());
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(320, SWT.DEFAULT).exclude(true).applyTo(problems);
        refresh();
    }

    /** For rows all of their features; for elements the name and the first values of their form. */
    private List<EStructuralFeature> features() {
        if (!ofElements) {
            return containment.getEReferenceType().getEAllStructuralFeatures().stream()
                    .filter(feature -> feature.isChangeable() && !(feature instanceof EReference reference && reference.isContainment()))
                    .toList();
        }
        List<EStructuralFeature> main = new ArrayList<>();
        for (FormPlan.Section section : FormPlan.of(containment.getEReferenceType()).sections()) {
            for (EStructuralFeature feature : section.features()) {
                boolean flag = feature.getEType().getInstanceClass() == boolean.class;
                boolean table = feature instanceof EReference reference && (reference.isContainment() || reference.isMany());
                if (!flag && !table && main.size() < MOST_COLUMNS_OF_ELEMENTS && feature != SitePackage.Literals.ELEMENT__NOTE) {
                    main.add(feature);
                }
            }
            break;
        }
        return main;
    }

    private void createButtons(FormToolkit toolkit) {
        ToolBar bar = new ToolBar(whole, SWT.FLAT | SWT.RIGHT);
        toolkit.adapt(bar);
        GridDataFactory.fillDefaults().align(SWT.END, SWT.CENTER).applyTo(bar);
        button(bar, "add", SelectionActions.addWords(containment), this::add);
        duplicate = button(bar, "duplicate", "Duplicate", () -> select(session.edits().duplicate(selected())));
        up = button(bar, "up", "Move up", () -> session.edits().move(selected(), -1));
        down = button(bar, "down", "Move down", () -> session.edits().move(selected(), 1));
        remove = button(bar, "remove", "Remove", this::removeSelected);
    }

    private ToolItem button(ToolBar bar, String icon, String words, Runnable run) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setImage(Icons.image(icon));
        item.setToolTipText(words);
        item.addListener(SWT.Selection, event -> {
            takeOver();
            run.run();
        });
        return item;
    }

    private void createColumns() {
        TableColumnLayout layout = new TableColumnLayout();
        frame.setLayout(layout);
        GC gc = new GC(viewer.getTable());
        gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT)); // headings are bold in some themes
        for (EStructuralFeature feature : features) {
            boolean words = feature instanceof EReference || feature.getEType().getInstanceClass() == String.class;
            boolean number = feature instanceof EAttribute && !words && !feature.isMany() && (FeatureFacts.isQuantity(feature) || feature.getEType().getInstanceClass() == int.class);
            TableViewerColumn column = new TableViewerColumn(viewer, number ? SWT.RIGHT : SWT.LEFT);
            column.getColumn().setToolTipText(FeatureFacts.documentation(feature));
            column.setLabelProvider(new CellLabels(session, feature, ofElements));
            if (!ofElements) {
                column.setEditingSupport(new CellEditing(viewer, session, feature));
            }
            layout.setColumnData(column.getColumn(), new ColumnWeightData(words ? 3 : 2, width(gc, heading(feature))));
            columns.add(column);
        }
        gc.dispose();
    }

    /** So wide that the heading is not cut. */
    private static int width(GC gc, String heading) {
        return Math.max(LEAST_COLUMN_WIDTH, gc.textExtent(heading).x + HEADING_MARGIN);
    }

    private String heading(EStructuralFeature feature) {
        String words = Words.feature(feature);
        if (ofElements || !(feature instanceof EAttribute attribute)) {
            return words;
        }
        return FeatureText.of(attribute, session.site()).unitSymbol().map(unit -> words + " [" + unit + "]").orElse(words);
    }

    @SuppressWarnings("unchecked")
    private List<EObject> objects() {
        Object value = owner.eGet(containment);
        return value instanceof List<?> many ? (List<EObject>) many : value == null ? List.of() : List.of((EObject) value);
    }

    /** Shows the rows that the model has now. */
    void refresh() {
        if (whole.isDisposed() || viewer.isCellEditorActive()) {
            return;
        }
        for (int i = 0; i < columns.size(); i++) {
            String heading = heading(features.get(i));
            if (!heading.equals(columns.get(i).getColumn().getText())) {
                columns.get(i).getColumn().setText(heading);
            }
        }
        List<EObject> objects = List.copyOf(objects());
        if (!objects.equals(viewer.getInput())) {
            EObject selected = selected();
            viewer.setInput(objects);
            viewer.setSelection(selected == null ? StructuredSelection.EMPTY : new StructuredSelection(selected));
            resize(objects.size());
        } else {
            viewer.refresh();
        }
        showProblems(objects);
        enable();
    }

    private void resize(int rows) {
        int shown = Math.clamp(rows, LEAST_ROWS_SHOWN, MOST_ROWS_SHOWN);
        GridData data = (GridData) frame.getLayoutData();
        data.heightHint = viewer.getTable().getHeaderHeight() + shown * viewer.getTable().getItemHeight() + 6;
        frame.requestLayout();
    }

    /** Texts that were not taken over, values of rows out of their range, and what is wrong with the table as a whole. */
    private void showProblems(List<EObject> objects) {
        Stream<String> typed = session.drafts().all().stream().filter(draft -> objects.contains(draft.element()))
                .map(Drafts.Draft::problem);
        Stream<SiteChecks.Fault> ofRows = ofElements ? Stream.empty()
                : objects.stream().flatMap(row -> SiteChecks.of(row).stream());
        Stream<SiteChecks.Fault> ofTable = SiteChecks.of(owner).stream().filter(fault -> fault.feature() == containment);
        String text = Stream.concat(typed, Stream.concat(ofRows, ofTable).map(SiteChecks.Fault::sentence))
                .map(problem -> "\u26a0 " + problem).collect(Collectors.joining("\n"));
        if (!text.equals(problems.getText())) {
            problems.setText(text);
            problems.setVisible(!text.isEmpty());
            ((GridData) problems.getLayoutData()).exclude = text.isEmpty();
            problems.requestLayout();
        }
    }

    private EObject selected() {
        return (EObject) viewer.getStructuredSelection().getFirstElement();
    }

    private void select(EObject object) {
        viewer.setSelection(new StructuredSelection(object), true);
    }

    private void enable() {
        EObject selected = selected();
        boolean there = selected != null && session.contains(selected);
        duplicate.setEnabled(there && session.edits().canDuplicate(selected));
        up.setEnabled(there && session.edits().canMove(selected, -1));
        down.setEnabled(there && session.edits().canMove(selected, 1));
        remove.setEnabled(there);
    }

    private void add() {
        EObject added = session.edits().add(owner, containment);
        select(added);
        if (added instanceof NamedElement) {
            session.select(session.selection().to(added));
        } else if (!ofElements) {
            viewer.editElement(added, 0);
        }
    }

    private void removeSelected() {
        if (selected() != null) {
            session.edits().remove(List.of(selected()));
        }
    }

    private void open() {
        if (ofElements && selected() != null) {
            session.select(session.selection().to(selected()));
        }
    }

    /** Takes over the cell that is being edited. */
    void takeOver() {
        if (!whole.isDisposed() && viewer.isCellEditorActive()) {
            viewer.applyEditorValue();
        }
    }

    Control control() {
        return whole;
    }
}

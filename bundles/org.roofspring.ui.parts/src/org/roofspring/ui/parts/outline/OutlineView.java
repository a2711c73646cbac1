package org.roofspring.ui.parts.outline;

import org.eclipse.jface.action.IToolBarManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider;
import org.eclipse.jface.viewers.SelectionChangedEvent;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.roofspring.ui.part.SelectionActions;
import org.roofspring.ui.part.SessionView;
import org.roofspring.ui.session.Aspect;
import org.roofspring.ui.session.SiteSelection;
import org.roofspring.ui.session.SiteSession;

/** The elements of the active site as a tree; what is selected here is selected everywhere. */
public final class OutlineView extends SessionView {
    private TreeViewer tree;
    private SelectionActions actions;
    private SiteSession shown;
    private boolean following;

    public OutlineView() {
        super(Aspect.MODEL, Aspect.SELECTION);
    }

    @Override
    protected void createContent(Composite parent) {
        tree = new TreeViewer(parent, SWT.SINGLE | SWT.V_SCROLL | SWT.H_SCROLL);
        tree.setContentProvider(new OutlineContent());
        tree.setLabelProvider(new DelegatingStyledCellLabelProvider(new OutlineLabels()));
        GridDataFactory.fillDefaults().grab(true, true).applyTo(tree.getControl());
        tree.addPostSelectionChangedListener(this::selected);
        tree.addDoubleClickListener(event -> toForm());
        actions = new SelectionActions(this::session);
        IToolBarManager bar = getViewSite().getActionBars().getToolBarManager();
        actions.all().forEach(bar::add);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(actions::fill);
        tree.getControl().setMenu(menu.createContextMenu(tree.getControl()));
        tree.getControl().addListener(SWT.KeyDown, event -> {
            boolean alt = (event.stateMask & SWT.MOD3) != 0;
            if (alt && event.keyCode == SWT.ARROW_UP) {
                actions.all().get(2).run();
            } else if (alt && event.keyCode == SWT.ARROW_DOWN) {
                actions.all().get(3).run();
            } else if (event.keyCode == SWT.INSERT) {
                actions.all().get(0).run();
            }
        });
    }

    private void selected(SelectionChangedEvent event) {
        if (!following && event.getStructuredSelection().getFirstElement() instanceof OutlineNode node) {
            session().ifPresent(session -> {
                SiteSelection now = session.selection();
                session.select(node.group() == null ? now.to(node.element()) : now.to(node.element(), node.group()));
            });
        }
    }

    private void toForm() {
        if (getSite().getPage().getActiveEditor() != null) {
            getSite().getPage().activate(getSite().getPage().getActiveEditor());
        }
    }

    @Override
    protected void show(SiteSession session) {
        if (session != shown) {
            shown = session;
            tree.setInput(session.site());
            tree.expandToLevel(2);
        }
        follow(session);
    }

    @Override
    protected void update(SiteSession session, Aspect aspect) {
        if (aspect == Aspect.MODEL) {
            tree.refresh();
        }
        follow(session);
    }

    private void follow(SiteSession session) {
        following = true;
        try {
            SiteSelection selection = session.selection();
            OutlineNode node = new OutlineNode(selection.element(), selection.group());
            if (!node.equals(tree.getStructuredSelection().getFirstElement())) {
                tree.setSelection(new StructuredSelection(node), true);
            }
        } finally {
            following = false;
        }
        actions.refresh();
    }

    @Override
    protected void forget() {
        shown = null;
        tree.setInput(null);
        actions.refresh();
    }

    /** Removes what is selected. */
    void removeSelected() {
        actions.all().get(4).run();
    }

    /** The tree, for tests. */
    public TreeViewer tree() {
        return tree;
    }

    @Override
    public void setFocus() {
        tree.getControl().setFocus();
    }
}

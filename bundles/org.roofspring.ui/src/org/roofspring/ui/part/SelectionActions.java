package org.roofspring.ui.part;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.IMenuCreator;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.roofspring.site.edit.Catalogue;
import org.roofspring.site.edit.Words;
import org.roofspring.ui.look.Icons;
import org.roofspring.ui.session.SiteSelection;
import org.roofspring.ui.session.SiteSession;

/** What can be done with the selected element: add to it or beside it, duplicate, move, remove. All can be undone. */
public final class SelectionActions {
    private final Supplier<Optional<SiteSession>> session;
    private final Action add;
    private final Action duplicate;
    private final Action up;
    private final Action down;
    private final Action remove;

    public SelectionActions(Supplier<Optional<SiteSession>> session) {
        this.session = session;
        add = new AddAction();
        duplicate = action("Duplicate", "duplicate", () -> with((s, element) -> s.select(s.selection().to(s.edits().duplicate(element)))));
        up = action("Move up", "up", () -> with((s, element) -> s.edits().move(element, -1)));
        down = action("Move down", "down", () -> with((s, element) -> s.edits().move(element, 1)));
        remove = action("Remove", "remove", () -> with(SelectionActions::remove));
        refresh();
    }

    private interface ElementEdit {
        void run(SiteSession session, EObject element);
    }

    private static Action action(String text, String icon, Runnable run) {
        Action action = new Action(text, Icons.descriptor(icon)) {
            @Override
            public void run() {
                run.run();
            }
        };
        action.setToolTipText(text);
        return action;
    }

    private void with(ElementEdit edit) {
        session.get().ifPresent(s -> {
            s.takeOverInput();
            if (s.selection().group() == null) {
                edit.run(s, s.selection().element());
            }
        });
    }

    /** Selects the neighbour, or the owner where there is none, so that the next one is at hand. */
    private static void remove(SiteSession session, EObject element) {
        EObject owner = element.eContainer();
        if (owner == null) {
            return;
        }
        SiteSelection next = session.selection().to(owner);
        if (element.eContainmentFeature().isMany()) {
            List<?> siblings = (List<?>) owner.eGet(element.eContainmentFeature());
            int place = siblings.indexOf(element);
            if (siblings.size() > 1) {
                next = session.selection().to((EObject) siblings.get(place + 1 < siblings.size() ? place + 1 : place - 1));
            }
        }
        session.edits().remove(List.of(element));
        session.select(next);
    }

    /** Enables the actions that suit the selection. */
    public void refresh() {
        Optional<SiteSession> open = session.get();
        Optional<EObject> element = open.filter(s -> s.selection().group() == null).map(s -> s.selection().element())
                .filter(selected -> selected.eContainer() != null);
        add.setEnabled(open.isPresent());
        duplicate.setEnabled(element.filter(open.map(SiteSession::edits).map(edits -> (java.util.function.Predicate<EObject>) edits::canDuplicate)
                .orElse(none -> false)).isPresent());
        up.setEnabled(canMove(open, element, -1));
        down.setEnabled(canMove(open, element, 1));
        remove.setEnabled(element.isPresent());
    }

    private static boolean canMove(Optional<SiteSession> open, Optional<EObject> element, int places) {
        return open.isPresent() && element.isPresent() && open.get().edits().canMove(element.get(), places);
    }

    /** In the order of a tool bar: add, duplicate, up, down, remove. */
    public List<Action> all() {
        return List.of(add, duplicate, up, down, remove);
    }

    /** Fills a context menu. */
    public void fill(IMenuManager menu) {
        refresh();
        MenuManager adding = new MenuManager("Add", Icons.descriptor("add"), "add");
        fillAdd(adding);
        menu.add(adding);
        all().subList(1, 5).forEach(menu::add);
    }

    /** Parts of the selected element first, then the kinds of the site by chapter. */
    private void fillAdd(IMenuManager menu) {
        session.get().ifPresent(s -> {
            EObject element = s.selection().element();
            if (element != s.site()) {
                Catalogue.parts(element.eClass()).forEach(part -> addTo(s, element, part).ifPresent(menu::add));
                if (!menu.isEmpty()) {
                    menu.add(new org.eclipse.jface.action.Separator());
                }
            }
            for (Map.Entry<String, List<EReference>> chapter : Catalogue.chapters().entrySet()) {
                MenuManager sub = new MenuManager(chapter.getKey());
                chapter.getValue().forEach(kind -> addTo(s, s.site(), kind).ifPresent(sub::add));
                menu.add(sub);
            }
        });
    }

    private static Optional<IAction> addTo(SiteSession session, EObject owner, EReference containment) {
        boolean full = !containment.isMany() && owner.eGet(containment) != null;
        if (full || containment.getEReferenceType().isAbstract()) {
            return Optional.empty();
        }
        Action action = action(Words.kind(containment.getEReferenceType()), "add", () -> add(session, owner, containment));
        action.setImageDescriptor(org.eclipse.jface.resource.ImageDescriptor.createFromImage(Icons.of(containment)));
        return Optional.of(action);
    }

    /** Adds an element and selects it. */
    public static void add(SiteSession session, EObject owner, EReference containment) {
        session.takeOverInput();
        session.select(session.selection().to(session.edits().add(owner, containment)));
    }

    /** Adds another of the kind that is selected; its arrow offers all kinds. */
    private final class AddAction extends Action implements IMenuCreator {
        private final MenuManager manager = new MenuManager();

        AddAction() {
            super("Add", AS_DROP_DOWN_MENU);
            setToolTipText("Add");
            setImageDescriptor(Icons.descriptor("add"));
            manager.setRemoveAllWhenShown(true);
            manager.addMenuListener(SelectionActions.this::fillAdd);
            setMenuCreator(this);
        }

        @Override
        public void run() {
            session.get().ifPresent(s -> {
                SiteSelection selection = s.selection();
                if (selection.group() != null) {
                    add(s, selection.element(), selection.group());
                } else if (selection.element().eContainmentFeature() != null && selection.element().eContainmentFeature().isMany()) {
                    add(s, selection.element().eContainer(), selection.element().eContainmentFeature());
                } else {
                    add(s, s.site(), org.roofspring.site.SitePackage.Literals.SITE__ROOFS);
                }
            });
        }

        @Override
        public void dispose() {
            manager.dispose();
        }

        @Override
        public Menu getMenu(Control parent) {
            return manager.getMenu() != null && !manager.getMenu().isDisposed() ? manager.getMenu() : manager.createContextMenu(parent);
        }

        @Override
        public Menu getMenu(Menu parent) {
            return null;
        }
    }

    /** The words on a button that adds one of a kind, such as "Add roof". */
    public static String addWords(EReference containment) {
        String kind = Words.kind(containment.getEReferenceType());
        return "Add " + kind.substring(0, 1).toLowerCase(Locale.ROOT) + kind.substring(1);
    }
}

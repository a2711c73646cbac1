package org.roofspring.ui.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.events.KeyEvent;
import org.eclipse.swt.events.MouseEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.roofspring.site.Element;
import org.roofspring.site.StepKind;
import org.roofspring.site.TreatmentStep;
import org.roofspring.site.TreatmentTrain;
import org.roofspring.site.Use;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.treatment.BoardLayout.Gap;
import org.roofspring.ui.treatment.BoardLayout.LanePlace;
import org.roofspring.ui.treatment.BoardLayout.StepPlace;
import org.roofspring.ui.treatment.BoardLayout.UsePlace;

/**
 * The trains, drawn, with mouse and keys. Steps are dragged to another place or train, uses to another train; the same
 * goes with the keys. Every edit can be undone.
 */
public final class TrainBoard {
    private static final int DRAG_STARTS = 5;

    private final Supplier<Optional<SiteSession>> session;
    private final ScrolledComposite scroller;
    private final Canvas canvas;
    private BoardModel model = new BoardModel(List.of());
    private BoardLayout board;
    private Point pressed;
    private String dragged;
    private Gap drop;
    private int dropLane = -1;

    TrainBoard(Composite parent, Supplier<Optional<SiteSession>> session) {
        this.session = session;
        scroller = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL);
        canvas = new Canvas(scroller, SWT.DOUBLE_BUFFERED);
        canvas.setBackground(parent.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        scroller.setBackground(canvas.getBackground());
        scroller.setContent(canvas);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        scroller.getVerticalBar().setIncrement(20);
        scroller.getHorizontalBar().setIncrement(20);
        board = layout();
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.MouseDown, event -> press(new MouseEvent(event)));
        canvas.addListener(SWT.MouseMove, event -> drag(new MouseEvent(event)));
        canvas.addListener(SWT.MouseUp, event -> release(new MouseEvent(event)));
        canvas.addListener(SWT.KeyDown, event -> key(new KeyEvent(event)));
        canvas.addListener(SWT.Traverse, TrainBoard::traverse);
        canvas.addListener(SWT.FocusIn, event -> canvas.redraw());
        canvas.addListener(SWT.FocusOut, event -> canvas.redraw());
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = spoken();
            }
        });
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(manager -> actions().forEach(manager::add));
        canvas.setMenu(menu.createContextMenu(canvas));
        acceptKinds();
    }

    public Control control() {
        return scroller;
    }

    /** What takes mouse and keys, for tests. */
    public Control canvas() {
        return canvas;
    }

    public BoardModel model() {
        return model;
    }

    /** Where a step is drawn, on the canvas. */
    public Optional<Rectangle> stepBounds(String stepId) {
        return board.steps().stream().filter(place -> place.step().id().equals(stepId)).map(StepPlace::box).findFirst();
    }

    /** Where a use is drawn, on the canvas. */
    public Optional<Rectangle> useBounds(String useId) {
        return board.uses().stream().filter(place -> place.use().id().equals(useId)).map(UsePlace::box).findFirst();
    }

    void show(BoardModel newModel) {
        if (!newModel.equals(model)) {
            model = newModel;
            board = layout();
            canvas.setSize(board.size());
            scroller.setMinSize(board.size());
        }
        canvas.redraw();
    }

    private BoardLayout layout() {
        BoardPainter painter = new BoardPainter(canvas);
        return new BoardLayout(model, painter.height("Ag", 200, true), painter::height);
    }

    private void paint(GC gc) {
        new BoardPainter(canvas).paint(gc, board, new BoardPainter.Marks(selectedId(), canvas.isFocusControl(),
                drop == null ? null : drop.mark(), dropLane));
    }

    private String selectedId() {
        return selected() instanceof Element element ? element.getId() : null;
    }

    private EObject selected() {
        return session.get().map(open -> open.selection().element()).orElse(null);
    }

    private void select(String id) {
        session.get().ifPresent(open -> open.element(id).ifPresent(
                element -> open.select(open.selection().to(element))));
    }

    private Optional<Element> element(String id) {
        return session.get().flatMap(open -> open.element(id));
    }

    private Optional<TreatmentTrain> train(int lane) {
        return Optional.ofNullable(model.lanes().get(lane).trainId()).flatMap(this::element)
                .map(TreatmentTrain.class::cast);
    }

    /** The train to which something new belongs: that of the selection, or else the first. */
    Optional<TreatmentTrain> currentTrain() {
        EObject selected = selected();
        if (selected instanceof TreatmentTrain train) {
            return Optional.of(train);
        }
        if (selected instanceof TreatmentStep step) {
            return Optional.of((TreatmentTrain) step.eContainer());
        }
        Optional<Integer> lane = board.uses().stream().filter(use -> use.use().id().equals(selectedId()))
                .map(UsePlace::lane).findFirst();
        return lane.flatMap(this::train).or(() -> session.get()
                .flatMap(open -> open.site().getTrains().stream().findFirst()));
    }

    /** Adds a step behind the selected one, or at the end. */
    void add(StepKind kind) {
        session.get().ifPresent(open -> {
            TreatmentTrain train = currentTrain().orElseGet(() -> TrainEdits.addTrain(open, null));
            int index = selected() instanceof TreatmentStep step && step.eContainer() == train
                    ? train.getSteps().indexOf(step) + 1 : train.getSteps().size();
            TrainEdits.addStep(open, train, kind, index);
        });
    }

    private void press(MouseEvent event) {
        canvas.setFocus();
        Optional<String> hit = board.stepAt(event.x, event.y).map(place -> place.step().id())
                .or(() -> board.useAt(event.x, event.y).map(place -> place.use().id()))
                .or(() -> board.laneAt(event.y).filter(lane -> lane.bounds().contains(event.x, event.y)
                        && lane.lane().trainId() != null).map(lane -> lane.lane().trainId()));
        hit.ifPresent(this::select);
        boolean movable = board.stepAt(event.x, event.y).isPresent() || board.useAt(event.x, event.y).isPresent();
        pressed = event.button == 1 && movable ? new Point(event.x, event.y) : null;
        dragged = pressed == null ? null : hit.orElseThrow();
    }

    private void drag(MouseEvent event) {
        if (pressed == null) {
            boolean grip = board.stepAt(event.x, event.y).isPresent() || board.useAt(event.x, event.y).isPresent();
            canvas.setCursor(grip ? canvas.getDisplay().getSystemCursor(SWT.CURSOR_HAND) : null);
            return;
        }
        if (Math.abs(event.x - pressed.x) + Math.abs(event.y - pressed.y) >= DRAG_STARTS || drop != null
                || dropLane >= 0) {
            element(dragged).ifPresent(element -> {
                if (element instanceof TreatmentStep) {
                    drop = board.gapAt(event.x, event.y).orElse(null);
                } else {
                    dropLane = board.laneAt(event.y).map(lane -> board.lanes().indexOf(lane)).orElse(-1);
                }
            });
            canvas.setCursor(canvas.getDisplay().getSystemCursor(SWT.CURSOR_SIZEALL));
            canvas.redraw();
        }
    }

    private void release(MouseEvent event) {
        Gap gap = drop;
        int lane = dropLane;
        String what = dragged;
        pressed = null;
        dragged = null;
        drop = null;
        dropLane = -1;
        canvas.setCursor(null);
        canvas.redraw();
        session.get().filter(open -> what != null).flatMap(open -> open.element(what)).ifPresent(element -> {
            if (element instanceof TreatmentStep step && gap != null) {
                train(gap.lane()).ifPresent(train -> TrainEdits.moveStep(session.get().orElseThrow(), step, train,
                        gap.index()));
            } else if (element instanceof Use use && lane >= 0 && lane != laneOf(use)) {
                TrainEdits.connect(session.get().orElseThrow(), use, train(lane).orElse(null));
            }
        });
    }

    private int laneOf(Use use) {
        return board.uses().stream().filter(place -> place.use().id().equals(use.getId())).map(UsePlace::lane)
                .findFirst().orElse(-1);
    }

    private void acceptKinds() {
        DropTarget target = new DropTarget(canvas, DND.DROP_COPY | DND.DROP_DEFAULT);
        target.setTransfer(new Transfer[] {TextTransfer.getInstance()});
        target.addDropListener(new DropTargetAdapter() {
            @Override
            public void dragOver(DropTargetEvent event) {
                event.detail = DND.DROP_COPY;
                Point at = canvas.toControl(event.x, event.y);
                drop = board.gapAt(at.x, at.y).orElse(null);
                canvas.redraw();
            }

            @Override
            public void dragLeave(DropTargetEvent event) {
                drop = null;
                canvas.redraw();
            }

            @Override
            public void drop(DropTargetEvent event) {
                Point at = canvas.toControl(event.x, event.y);
                StepKind kind = StepKind.get(String.valueOf(event.data));
                drop = null;
                if (kind != null) {
                    session.get().ifPresent(open -> board.gapAt(at.x, at.y).ifPresentOrElse(
                            gap -> TrainEdits.addStep(open, train(gap.lane()).orElseThrow(), kind, gap.index()),
                            () -> add(kind)));
                }
            }
        });
    }

    /** The arrow keys belong to the board; Tab and Escape leave it. */
    private static void traverse(Event event) {
        switch (event.detail) {
            case SWT.TRAVERSE_TAB_NEXT, SWT.TRAVERSE_TAB_PREVIOUS -> event.doit = true;
            case SWT.TRAVERSE_ARROW_NEXT, SWT.TRAVERSE_ARROW_PREVIOUS -> event.doit = false;
            default -> { }
        }
    }

    private void key(KeyEvent event) {
        boolean moving = (event.stateMask & (SWT.ALT | SWT.MOD1)) != 0;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> sideways(-1, moving);
            case SWT.ARROW_RIGHT -> sideways(1, moving);
            case SWT.ARROW_UP -> upDown(-1, moving);
            case SWT.ARROW_DOWN -> upDown(1, moving);
            case SWT.DEL -> remove();
            case ' ' -> toggle();
            case SWT.ESC -> {
                pressed = null;
                drop = null;
                dropLane = -1;
                canvas.redraw();
            }
            default -> { }
        }
    }

    private void sideways(int places, boolean moving) {
        if (moving) {
            if (selected() instanceof TreatmentStep step) {
                session.get().ifPresent(open -> TrainEdits.shift(open, step, places));
            }
            return;
        }
        List<String> line = line(laneOfSelection());
        int now = line.indexOf(selectedId());
        if (!line.isEmpty()) {
            select(line.get(Math.clamp(now < 0 ? 0 : now + places, 0, line.size() - 1)));
        }
    }

    /** To the same place of the next lane; a step or use that is moved goes into it. */
    private void upDown(int lanes, boolean moving) {
        int from = laneOfSelection();
        int to = from + lanes;
        if (to < 0 || to >= model.lanes().size()) {
            return;
        }
        if (!moving) {
            List<String> line = line(to);
            int now = Math.max(0, line(from).indexOf(selectedId()));
            if (!line.isEmpty()) {
                select(line.get(Math.min(now, line.size() - 1)));
            }
            return;
        }
        session.get().ifPresent(open -> {
            if (selected() instanceof Use use) {
                TrainEdits.connect(open, use, train(to).orElse(null));
            } else if (selected() instanceof TreatmentStep step) {
                train(to).ifPresent(train -> TrainEdits.moveStep(open, step, train, train.getSteps().size()));
            }
        });
    }

    private int laneOfSelection() {
        String id = selectedId();
        for (int i = 0; i < model.lanes().size(); i++) {
            if (id != null && line(i).contains(id)) {
                return i;
            }
        }
        return 0;
    }

    /** What can be selected in a lane, from left to right. */
    private List<String> line(int lane) {
        List<String> line = new ArrayList<>();
        if (lane < model.lanes().size()) {
            BoardModel.Lane shown = model.lanes().get(lane);
            if (shown.trainId() != null) {
                line.add(shown.trainId());
            }
            shown.steps().forEach(step -> line.add(step.id()));
            shown.uses().forEach(use -> line.add(use.id()));
        }
        return line;
    }

    private void remove() {
        if (selected() instanceof TreatmentStep step) {
            session.get().ifPresent(open -> TrainEdits.remove(open, step));
        }
    }

    private void toggle() {
        if (selected() instanceof TreatmentStep step) {
            session.get().ifPresent(open -> TrainEdits.toggle(open, step));
        }
    }

    /** What can be done with the selection, for the menu. */
    private List<Action> actions() {
        List<Action> actions = new ArrayList<>();
        if (selected() instanceof TreatmentStep step) {
            int place = ((TreatmentTrain) step.eContainer()).getSteps().indexOf(step);
            int last = ((TreatmentTrain) step.eContainer()).getSteps().size() - 1;
            actions.add(action("Move towards the tank\tAlt+Left", place > 0, () -> sideways(-1, true)));
            actions.add(action("Move towards the use\tAlt+Right", place < last, () -> sideways(1, true)));
            actions.add(action(step.isActive() ? "Set aside\tSpace" : "Put in place\tSpace", true, this::toggle));
            actions.add(action("Remove\tDelete", true, this::remove));
        } else if (selected() instanceof Use use) {
            session.get().ifPresent(open -> {
                open.site().getTrains().forEach(train -> actions.add(action("Draw through " + train.getName(),
                        use.getTrain() != train, () -> TrainEdits.connect(open, use, train))));
                actions.add(action("Draw through no train of its own", use.getTrain() != null,
                        () -> TrainEdits.connect(open, use, null)));
                actions.add(action("Draw through a new train", true, () -> TrainEdits.addTrain(open, use)));
            });
        }
        return actions;
    }

    private static Action action(String text, boolean enabled, Runnable run) {
        Action action = new Action(text) {
            @Override
            public void run() {
                run.run();
            }
        };
        action.setEnabled(enabled);
        return action;
    }

    /** What a screen reader says of the selection. */
    private String spoken() {
        String id = selectedId();
        for (BoardModel.Lane lane : model.lanes()) {
            for (BoardModel.Step step : lane.steps()) {
                if (step.id().equals(id)) {
                    return step.name() + ", step of " + lane.name() + ". " + step.says();
                }
            }
            for (BoardModel.Use use : lane.uses()) {
                if (use.id().equals(id)) {
                    return use.name() + ": " + use.text();
                }
            }
        }
        return "Treatment trains";
    }

    /** Brings the selection into view. */
    void reveal() {
        String id = selectedId();
        Optional<Rectangle> box = id == null ? Optional.empty() : stepBounds(id).or(() -> useBounds(id));
        box.ifPresent(bounds -> {
            Rectangle seen = scroller.getClientArea();
            Point origin = scroller.getOrigin();
            boolean inside = bounds.x >= origin.x && bounds.x + bounds.width <= origin.x + seen.width
                    && bounds.y >= origin.y && bounds.y + bounds.height <= origin.y + seen.height;
            if (!inside && seen.width > 0) {
                scroller.setOrigin(Math.max(0, bounds.x - BoardLayout.TANK_WIDTH),
                        Math.max(0, bounds.y - bounds.height));
            }
        });
    }

    void setFocus() {
        canvas.setFocus();
    }

    /** Where the lanes lie, for tests. */
    List<LanePlace> lanes() {
        return board.lanes();
    }
}

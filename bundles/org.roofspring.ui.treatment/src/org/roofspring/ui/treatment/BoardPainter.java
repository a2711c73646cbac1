package org.roofspring.ui.treatment;

import java.util.Locale;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.widgets.Control;
import org.eclipse.jface.resource.JFaceResources;
import org.roofspring.ui.look.Palette;
import org.roofspring.ui.treatment.BoardLayout.LanePlace;
import org.roofspring.ui.treatment.BoardLayout.StepPlace;
import org.roofspring.ui.treatment.BoardLayout.UsePlace;

/** Draws the board. Whatever a colour says is said in words as well. */
final class BoardPainter {
    private static final int ROUND = 8;
    private static final double SCALE_WITHOUT_TARGET = 6;

    private final Control control;
    private final Palette palette;

    BoardPainter(Control control) {
        this.control = control;
        this.palette = Palette.of(control);
    }

    /** What is marked: the selected element, and where something dragged would go. */
    record Marks(String selectedId, boolean focused, Rectangle drop, int dropLane) {
    }

    int height(String text, int width, boolean bold) {
        TextLayout layout = layout(text, width, bold);
        try {
            return layout.getBounds().height;
        } finally {
            layout.dispose();
        }
    }

    private TextLayout layout(String text, int width, boolean bold) {
        TextLayout layout = new TextLayout(control.getDisplay());
        layout.setFont(font(bold));
        layout.setText(text);
        layout.setWidth(Math.max(1, width));
        return layout;
    }

    private Font font(boolean bold) {
        return bold ? JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT)
                : JFaceResources.getFont(JFaceResources.DEFAULT_FONT);
    }

    void paint(GC gc, BoardLayout board, Marks marks) {
        gc.setAntialias(SWT.ON);
        gc.setTextAntialias(SWT.ON);
        for (int i = 0; i < board.lanes().size(); i++) {
            LanePlace lane = board.lanes().get(i);
            if (marks.dropLane() == i) {
                gc.setBackground(palette.line());
                Rectangle bounds = lane.bounds();
                gc.fillRoundRectangle(bounds.x - 6, bounds.y - 4, bounds.width + 12, bounds.height + 8, ROUND, ROUND);
            }
            lane(gc, board, lane, marks);
        }
        board.steps().forEach(step -> step(gc, board, step, marks));
        board.uses().forEach(use -> use(gc, use, marks, board.lanes().get(use.lane())));
        if (marks.drop() != null) {
            gc.setBackground(palette.water());
            gc.fillRectangle(marks.drop());
        }
    }

    private void lane(GC gc, BoardLayout board, LanePlace place, Marks marks) {
        BoardModel.Lane lane = place.lane();
        boolean selected = lane.trainId() != null && lane.trainId().equals(marks.selectedId());
        text(gc, lane.name() + (lane.stale() ? " (out of date)" : ""), place.head().x, place.head().y,
                place.head().width, true, selected ? palette.water() : lane.stale() ? palette.stale() : plain());
        if (!lane.facts().isEmpty()) {
            text(gc, lane.facts(), place.head().x, place.head().y + place.head().height / 2, place.head().width, false,
                    lane.stale() ? palette.stale() : palette.muted());
        }
        box(gc, place.tank(), palette.water(), false, false);
        centred(gc, lane.from(), place.tank(), false, palette.water());
        int from = place.tank().x + place.tank().width;
        int middle = place.tank().y + place.tank().height / 2;
        for (int i = 0; i < lane.steps().size(); i++) {
            arrow(gc, from, place.x(i), middle);
            from = place.x(i) + BoardLayout.STEP_WIDTH;
        }
        if (!lane.uses().isEmpty()) {
            int useX = BoardLayout.numbers(lane) ? place.target().x + place.target().width + BoardLayout.GAP
                    : place.x(lane.steps().size());
            arrow(gc, from, useX, middle);
        }
        if (BoardLayout.numbers(lane)) {
            numbers(gc, board, place);
        }
        int y = place.bounds().y + place.bounds().height;
        for (int i = lane.mind().size() - 1; i >= 0; i--) {
            String sentence = lane.mind().get(i);
            y -= height(sentence, place.bounds().width, false);
            text(gc, sentence, place.bounds().x, y, place.bounds().width, false, palette.warning());
            y -= 4;
        }
    }

    /** Groups on the left, numbers below each step, and what is asked for on the right. */
    private void numbers(GC gc, BoardLayout board, LanePlace place) {
        BoardModel.Target target = place.lane().target();
        int top = numbersTop(place.tank());
        Rectangle asked = place.target();
        gc.setBackground(control.getBackground());
        gc.fillRectangle(asked.x + 4, asked.y + asked.height / 2 - 9, asked.width - 8, 18);
        centred(gc, "asked for: " + target.useName(), asked, false, palette.muted());
        for (int group = 0; group < BoardModel.GROUPS.size(); group++) {
            int y = top + group * board.rowHeight();
            text(gc, BoardModel.GROUPS.get(group), place.tank().x, y, BoardLayout.TANK_WIDTH + 20, false,
                    palette.label());
            boolean reached = target.shortBy(group) < 1e-9;
            String words = target.logs().get(group) == 0 ? "nothing"
                    : log(target.logs().get(group))
                            + (reached ? ": reached" : ": short by " + log(target.shortBy(group)));
            Color color = place.lane().stale() ? palette.stale() : target.logs().get(group) == 0 ? palette.muted()
                    : reached ? palette.good() : palette.danger();
            text(gc, words, asked.x, y, asked.width + BoardLayout.GAP, !reached, color);
        }
    }

    private static int numbersTop(Rectangle box) {
        return box.y + box.height + BoardLayout.BELOW_BOX;
    }

    private void step(GC gc, BoardLayout board, StepPlace place, Marks marks) {
        BoardModel.Step step = place.step();
        BoardModel.Lane lane = board.lanes().get(place.lane()).lane();
        boolean selected = step.id().equals(marks.selectedId());
        Color edge = !step.inPlace() ? palette.stale() : step.fails() ? palette.danger() : palette.label();
        if (!step.inPlace()) {
            gc.setLineStyle(SWT.LINE_DASH);
        }
        box(gc, place.box(), edge, selected, selected && marks.focused());
        gc.setLineStyle(SWT.LINE_SOLID);
        Rectangle inner = place.box();
        centred(gc, step.label(), inner, true, step.inPlace() ? plain() : palette.stale());
        if (BoardLayout.numbers(lane) && !step.logs().isEmpty()) {
            int top = numbersTop(place.box());
            for (int group = 0; group < step.logs().size(); group++) {
                number(gc, board, place, lane, group, top + group * board.rowHeight());
            }
        }
        if (!step.says().isEmpty()) {
            Color color = lane.stale() ? palette.stale() : step.fails() ? palette.danger() : palette.muted();
            text(gc, step.says(), place.says().x, place.says().y, BoardLayout.STEP_WIDTH, false, color);
        }
    }

    /** A number, and a bar that is full where the target is reached. */
    private void number(GC gc, BoardLayout board, StepPlace place, BoardModel.Lane lane, int group, int y) {
        double log = place.step().logs().get(group);
        double target = lane.target().logs().get(group);
        boolean reached = target > 0 && log >= target - 1e-9;
        int room = BoardLayout.STEP_WIDTH - 44;
        int full = (int) Math.round(room * Math.min(1, log / (target > 0 ? target : SCALE_WITHOUT_TARGET)));
        int barY = y + board.rowHeight() / 2 - 4;
        gc.setBackground(palette.line());
        gc.fillRectangle(place.box().x, barY, room, 7);
        gc.setBackground(lane.stale() ? palette.stale() : reached ? palette.good()
                : target > 0 ? palette.water() : palette.muted());
        gc.fillRectangle(place.box().x, barY, full, 7);
        text(gc, log(log), place.box().x + room + 8, y, 40, false, lane.stale() ? palette.stale() : plain());
    }

    private static String log(double log) {
        return String.format(Locale.ROOT, log == Math.rint(log) ? "%.0f" : "%.2f", log);
    }

    private void use(GC gc, UsePlace place, Marks marks, LanePlace lane) {
        boolean selected = place.use().id().equals(marks.selectedId());
        Color color = lane.lane().stale() || place.use().level() == null ? palette.stale()
                : switch (place.use().level()) {
                    case GOOD -> palette.good();
                    case CONDITIONAL -> palette.warning();
                    case BAD -> palette.danger();
                };
        box(gc, place.box(), color, selected, selected && marks.focused());
        int nameHeight = height(place.use().name(), place.box().width - 16, true);
        text(gc, place.use().name(), place.box().x + 8, place.box().y + 5, place.box().width - 16, true, plain());
        text(gc, place.use().text(), place.box().x + 8, place.box().y + 5 + nameHeight, place.box().width - 16, false,
                color);
    }

    private void box(GC gc, Rectangle at, Color edge, boolean selected, boolean focused) {
        gc.setBackground(control.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        gc.fillRoundRectangle(at.x, at.y, at.width, at.height, ROUND, ROUND);
        gc.setForeground(edge);
        gc.setLineWidth(selected ? 3 : 1);
        gc.drawRoundRectangle(at.x, at.y, at.width, at.height, ROUND, ROUND);
        gc.setLineWidth(1);
        if (focused) {
            gc.setForeground(palette.water());
            gc.drawRoundRectangle(at.x - 4, at.y - 4, at.width + 8, at.height + 8, ROUND, ROUND);
        }
    }

    private void arrow(GC gc, int from, int to, int y) {
        gc.setForeground(palette.water());
        gc.setBackground(palette.water());
        gc.drawLine(from + 2, y, to - 6, y);
        gc.fillPolygon(new int[] {to - 3, y, to - 10, y - 4, to - 10, y + 4});
    }

    private void centred(GC gc, String text, Rectangle box, boolean bold, Color color) {
        TextLayout layout = layout(text, box.width - 10, bold);
        try {
            layout.setAlignment(SWT.CENTER);
            int height = Math.min(box.height - 4, layout.getBounds().height);
            // never null: on some platforms that would also lift the clip of the visible part
            Rectangle visible = gc.getClipping();
            gc.setClipping(box.intersection(visible));
            gc.setForeground(color);
            layout.draw(gc, box.x + 5, box.y + (box.height - height) / 2);
            gc.setClipping(visible);
        } finally {
            layout.dispose();
        }
    }

    private void text(GC gc, String text, int x, int y, int width, boolean bold, Color color) {
        TextLayout layout = layout(text, width, bold);
        try {
            gc.setForeground(color);
            layout.draw(gc, x, y);
        } finally {
            layout.dispose();
        }
    }

    private Color plain() {
        return control.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND);
    }
}

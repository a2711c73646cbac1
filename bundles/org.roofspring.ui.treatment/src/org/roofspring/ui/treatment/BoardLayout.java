package org.roofspring.ui.treatment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.roofspring.ui.treatment.BoardModel.Lane;
import org.roofspring.ui.treatment.BoardModel.Step;

/** Where everything of the board lies, in pixels. */
final class BoardLayout {
    static final int MARGIN = 12;
    static final int TANK_WIDTH = 116;
    static final int STEP_WIDTH = 148;
    static final int GAP = 30;
    static final int TARGET_WIDTH = 132;
    static final int USE_WIDTH = 236;
    private static final int BOX_HEIGHT = 54;
    static final int BELOW_BOX = 8;
    private static final int LANE_GAP = 22;
    private static final int USE_GAP = 6;

    /** Height of a text when it is wrapped to a width. */
    interface Measure {
        int height(String text, int width, boolean bold);
    }

    /** A place in a lane, before the step with this index. */
    record Gap(int lane, int index, Rectangle mark) {
    }

    /** A step of a lane. */
    record StepPlace(int lane, int index, Step step, Rectangle box, Rectangle says) {
    }

    /** A use of a lane. */
    record UsePlace(int lane, BoardModel.Use use, Rectangle box) {
    }

    /**
     * A lane.
     *
     * @param tank   box of its tanks
     * @param target where what is asked for stands, beside the numbers
     * @param end    right edge of the last step
     */
    record LanePlace(Lane lane, Rectangle bounds, Rectangle head, Rectangle tank, Rectangle target, int end) {
        /** Left edge of the box for the step with an index. */
        int x(int index) {
            return tank.x + tank.width + GAP + index * (STEP_WIDTH + GAP);
        }
    }

    private final List<LanePlace> lanes = new ArrayList<>();
    private final List<StepPlace> steps = new ArrayList<>();
    private final List<UsePlace> uses = new ArrayList<>();
    private final int rowHeight;
    private Point size = new Point(0, 0);

    /** @param lineHeight of the font */
    BoardLayout(BoardModel model, int lineHeight, Measure measure) {
        this.rowHeight = lineHeight + 4;
        int y = MARGIN;
        for (int i = 0; i < model.lanes().size(); i++) {
            y += lane(i, model.lanes().get(i), y, lineHeight, measure) + LANE_GAP;
        }
        size = new Point(size.x + MARGIN, y);
    }

    private int lane(int index, Lane lane, int top, int lineHeight, Measure measure) {
        int headHeight = lane.facts().isEmpty() ? lineHeight : 2 * lineHeight;
        int boxTop = top + headHeight + 8;
        int boxHeight = Math.max(BOX_HEIGHT, 10 + measure.height(lane.from(), TANK_WIDTH - 10, false));
        for (Step step : lane.steps()) {
            boxHeight = Math.max(boxHeight, 10 + measure.height(step.label(), STEP_WIDTH - 10, true));
        }
        Rectangle tank = new Rectangle(MARGIN, boxTop, TANK_WIDTH, boxHeight);
        int x = MARGIN + TANK_WIDTH + GAP;
        int bottom = boxTop + boxHeight;
        boolean numbers = numbers(lane);
        int saysTop = boxTop + boxHeight + BELOW_BOX + (numbers ? BoardModel.GROUPS.size() * rowHeight + 4 : 0);
        for (int i = 0; i < lane.steps().size(); i++) {
            Step step = lane.steps().get(i);
            int saysHeight = step.says().isEmpty() ? 0 : measure.height(step.says(), STEP_WIDTH, false);
            steps.add(new StepPlace(index, i, step, new Rectangle(x, boxTop, STEP_WIDTH, boxHeight),
                    new Rectangle(x, saysTop, STEP_WIDTH, saysHeight)));
            bottom = Math.max(bottom, saysTop + saysHeight);
            x += STEP_WIDTH + GAP;
        }
        int end = x - GAP;
        Rectangle target = new Rectangle(x - GAP + 10, boxTop, numbers ? TARGET_WIDTH : 0, boxHeight);
        int useX = numbers ? target.x + target.width + GAP : x;
        int useY = boxTop;
        for (BoardModel.Use use : lane.uses()) {
            int height = 10 + measure.height(use.name(), USE_WIDTH - 16, true)
                    + measure.height(use.text(), USE_WIDTH - 16, false);
            uses.add(new UsePlace(index, use, new Rectangle(useX, useY, USE_WIDTH, height)));
            useY += height + USE_GAP;
        }
        bottom = Math.max(bottom, useY - USE_GAP);
        int width = useX + USE_WIDTH;
        for (String sentence : lane.mind()) {
            bottom += 4 + measure.height(sentence, width - MARGIN, false);
        }
        size = new Point(Math.max(size.x, width), size.y);
        lanes.add(new LanePlace(lane, new Rectangle(MARGIN, top, width - MARGIN, bottom - top),
                new Rectangle(MARGIN, top, width - MARGIN, headHeight), tank, target, end));
        return bottom - top;
    }

    /** Whether numbers stand below the steps of a lane. */
    static boolean numbers(Lane lane) {
        return lane.target() != null && !lane.steps().isEmpty();
    }

    Point size() {
        return size;
    }

    int rowHeight() {
        return rowHeight;
    }

    List<LanePlace> lanes() {
        return lanes;
    }

    List<StepPlace> steps() {
        return steps;
    }

    List<UsePlace> uses() {
        return uses;
    }

    Optional<StepPlace> stepAt(int x, int y) {
        return steps.stream().filter(step -> step.box().contains(x, y) || step.says().contains(x, y)).findFirst();
    }

    Optional<UsePlace> useAt(int x, int y) {
        return uses.stream().filter(use -> use.box().contains(x, y)).findFirst();
    }

    /** The lane at a height, the nearest where there is none right there; empty on an empty board. */
    Optional<LanePlace> laneAt(int y) {
        return lanes.stream().min((a, b) -> Integer.compare(distance(a, y), distance(b, y)));
    }

    private static int distance(LanePlace lane, int y) {
        return y < lane.bounds().y ? lane.bounds().y - y
                : Math.max(0, y - lane.bounds().y - lane.bounds().height);
    }

    /** The place between steps that is nearest, in the lane of a train; empty over a lane without one. */
    Optional<Gap> gapAt(int x, int y) {
        return laneAt(y).filter(lane -> lane.lane().trainId() != null).map(lane -> {
            int count = lane.lane().steps().size();
            int index = Math.clamp(Math.round((float) (x - lane.x(0)) / (STEP_WIDTH + GAP)), 0, count);
            int markX = lane.x(index) - GAP / 2 - 2;
            return new Gap(lanes.indexOf(lane), index,
                    new Rectangle(markX, lane.tank().y - 4, 4, lane.tank().height + 8));
        });
    }
}

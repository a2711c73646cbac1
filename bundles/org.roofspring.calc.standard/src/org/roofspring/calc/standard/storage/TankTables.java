package org.roofspring.calc.standard.storage;

import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BooleanSupplier;

import org.roofspring.calc.FindingValue;
import org.roofspring.calc.Working.Input;
import org.roofspring.calc.Working.Step;
import org.roofspring.calc.standard.answer.AnswerBuilder;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.Units;
import org.roofspring.storage.outlook.DaysLeft;
import org.roofspring.storage.outlook.Dipstick;
import org.roofspring.storage.outlook.DroughtCard;
import org.roofspring.storage.outlook.OutlookQuestion;
import org.roofspring.storage.outlook.Ration;

/** What to paint on a tank: the drought card with the marks of each month, and the dipstick table. */
final class TankTables {
    /**
     * How far the marks of the card look ahead: half a year bridges one dry season; a small tank that cannot is marked
     * for the longest of the others that it bridges in half of the months. Common practice, no source.
     */
    private static final int[] CARD_DAYS = {180, 90, 60, 30, 14, 7};
    private static final int HALF_OF_THE_MONTHS = 6;
    private static final List<Ration> RATIONS = List.of(Ration.NONE, new Ration(0.75, Set.of()), new Ration(0.5,
            Set.of()));
    private static final double[] STEPS_M = {0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5};
    private static final int MOST_ROWS = 40;

    private final OutlookQuestion question;
    private final WaterToday today;
    private final double limitRatio;

    TankTables(OutlookQuestion question, WaterToday today, double limitRatio) {
        this.question = question;
        this.today = today;
        this.limitRatio = limitRatio;
    }

    void add(AnswerBuilder answer, BooleanSupplier cancelled) {
        card(answer, cancelled);
        dipstick(answer, cancelled);
    }

    private void card(AnswerBuilder answer, BooleanSupplier cancelled) {
        DroughtCard card = useful(cancelled);
        List<String> columns = new ArrayList<>(List.of("On the first of"));
        for (Ration ration : card.rations()) {
            String use = ration.allowedRatio() == 1 ? "Full use from" : OutlookStudy.percent(ration.allowedRatio())
                    + " from";
            columns.add(use + " a height of");
            columns.add(use + " a volume of");
        }
        List<List<Object>> rows = new ArrayList<>();
        for (DroughtCard.MonthMarks marks : card.months()) {
            List<Object> row = new ArrayList<>();
            row.add(marks.month().getDisplayName(TextStyle.FULL, Locale.ENGLISH));
            for (OptionalDouble volume : marks.volumeM3()) {
                row.add(volume.isPresent() ? Quantity.of(today.heightM(volume.getAsDouble()), Units.M)
                        : "more than full");
                row.add(volume.isPresent() ? Quantity.of(volume.getAsDouble(), Units.M3) : null);
            }
            rows.add(row);
        }
        answer.add("droughtCard", "Drought card, " + card.horizonDays() + " days ahead, chance "
                + OutlookStudy.percent(limitRatio),
                new FindingValue.Table(columns, rows),
                Step.of("V", "lowest volume on the first of the month from which no more than the share q of the years "
                        + "go short within the look ahead, for each ration, to a thousandth of the tank, rounded up; "
                        + "the height by its curve", "least V with p(V) <= q", null, OutlookStudy.EVERY_YEAR,
                        new Input("q", "chance of going short that is borne", Quantity.ofSi(limitRatio, Units.PERCENT)),
                        new Input("n", "look ahead", Quantity.of(card.horizonDays(), Units.D))));
    }

    private DroughtCard useful(BooleanSupplier cancelled) {
        DroughtCard card = null;
        for (int days : CARD_DAYS) {
            card = DroughtCard.of(question.within(days), today.gaugedStage(), RATIONS, limitRatio, cancelled);
            long marked = card.months().stream().filter(month -> month.volumeM3().getLast().isPresent()).count();
            if (marked >= HALF_OF_THE_MONTHS) {
                return card;
            }
        }
        return card;
    }

    private void dipstick(AnswerBuilder answer, BooleanSupplier cancelled) {
        double fullM = today.stageGauge().heightM(today.gaugedTank().getCapacity().si() / today.tankShare());
        double stepM = STEPS_M[STEPS_M.length - 1];
        for (int i = STEPS_M.length - 1; i >= 0 && fullM / STEPS_M[i] <= MOST_ROWS; i--) {
            stepM = STEPS_M[i];
        }
        Dipstick table = Dipstick.of(question, today.gaugedStage(), today.stageGauge(), stepM, cancelled);
        List<List<Object>> rows = new ArrayList<>();
        for (Dipstick.Row row : table.rows()) {
            rows.add(List.of(Quantity.of(row.heightM(), Units.M), Quantity.of(row.volumeM3(), Units.M3).as(Units.L),
                    days(row.withoutRain()), days(row.cautious()), days(row.middle()), days(row.hopeful())));
        }
        answer.add("dipstick", "Dipstick table on " + today.date(),
                new FindingValue.Table(List.of("Height", "Water", "Days left without rain",
                "Cautious (1 year in 10)", "Middle",
                "Hopeful (9 in 10)"), rows),
                Step.of("n", "days before the first day on which a use goes short, from each height on; the one that a "
                        + "share of the years does not exceed, and the days if no rain falls at all", "n(ceil(p N))",
                        null, OutlookStudy.EVERY_YEAR));
    }

    private static Object days(DaysLeft left) {
        return left.orMore() ? left.days() + " d or more" : Quantity.of(left.days(), Units.D);
    }
}

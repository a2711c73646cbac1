package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.cli.tests.Asked.Answer;

/** The commands about money, stages and upkeep. */
class SiteMoneyTest {
    private static final Path SCHOOL = DemoData.site("hill-school");
    private static final Path HOUSEHOLD = DemoData.site("household");

    @TempDir
    Path folder;

    /** The annual cost over the horizon is worth the present value; over the water it is the cost of a m3. */
    @Test
    void economyFitsTogether() {
        Answer answer = Asked.answer("economy " + SCHOOL);
        double present = answer.number("presentCost", "cur");
        double factor = (1 - Math.pow(1.04, -20)) / 0.04;
        assertEquals(present, answer.number("annualCost", "cur") * factor, 1e-6);
        assertEquals(answer.number("annualCost", "cur") / 259, answer.number("annualCostPerPerson", "cur"), 1e-9);
        assertTrue(answer.has("supplies") && answer.has("tornado") && answer.has("flips"));
        assertTrue(answer.cautionCodes().contains("economy.renewed"));
    }

    @Test
    void economyOfTheHousehold() {
        Answer answer = Asked.answer("economy " + HOUSEHOLD);
        // 70 + 48, renewed after 12 and 15 years, with 4 of 12 and 10 of 15 years left at the end
        double present = 70 + 48 + 70 * Math.pow(1.04, -12) + 48 * Math.pow(1.04, -15)
                - (70 * 4 / 12.0 + 48 * 10 / 15.0) * Math.pow(1.04, -20);
        assertEquals(present, answer.number("presentCost", "cur"), 1e-6);
        assertTrue(answer.cautionCodes().contains("economy.shortage-unpriced"));
    }

    @Test
    void economyRefusals() throws IOException {
        Files.createDirectories(folder.resolve("rain"));
        Files.copy(DemoData.site("hill-school").resolveSibling("rain").resolve("upland-40y.csv"),
                folder.resolve("rain").resolve("upland-40y.csv"));
        Path debt = Files.writeString(folder.resolve("debt.site"), Files.readString(HOUSEHOLD)
                .replace("amount=\"70 cur\"", "amount=\"-70 cur\""));
        assertTrue(Asked.of("economy " + debt).refusal().contains("Amount of CostItem"));
        Path free = Files.writeString(folder.resolve("free.site"), Files.readString(HOUSEHOLD)
                .replaceAll("(?s)<costs .*?/>", ""));
        assertTrue(Asked.of("economy " + free).noAnswer().contains("no cost"));
    }

    @Test
    void stagesAndBudget() {
        Answer answer = Asked.answer("stages " + SCHOOL + " --budget 30000cur");
        assertEquals(29025, answer.number("budgetSpent", "cur"), 1e-9);
        assertTrue(answer.number("budgetShare") > 0.85);
        Answer poor = Asked.answer("stages " + SCHOOL + " --budget 5cur");
        assertEquals(0, poor.number("budgetShare"));
        assertTrue(Asked.of("stages " + SCHOOL + " --budget -1cur").refusal().contains("--budget"));
        assertTrue(Asked.of("stages " + SCHOOL + " --budget 5m").refusal().contains("--budget"));
    }

    @Test
    void upkeepAndItsCalendar() throws IOException {
        Path calendar = folder.resolve("upkeep.ics");
        Answer answer = Asked.answer("upkeep " + SCHOOL + " --from 2025-02-01 --days 60 --ics " + calendar);
        assertTrue(answer.has("due") && answer.has("proposals"));
        assertEquals(0, answer.number("overdue"));
        String text = Files.readString(calendar);
        assertTrue(text.startsWith("BEGIN:VCALENDAR\r\n") && text.endsWith("END:VCALENDAR\r\n"), text);
        assertTrue(text.contains("DTSTART;VALUE=DATE:20250208"), text);
        String again = "upkeep " + SCHOOL + " --from 2025-02-01 --days 60 --ics " + calendar;
        assertTrue(Asked.of(again).refusal().contains("--force"));
        assertEquals(0, Asked.of(again + " --force").status());
        assertEquals(text, Files.readString(calendar));
        assertTrue(Asked.of("upkeep " + SCHOOL + " --days 0").refusal().startsWith("--days must be from 1"));
        assertTrue(Asked.of("upkeep " + SCHOOL + " --from tomorrow").refusal().contains("--from"));
    }

    /** Long after the last note everything is overdue, and says since when. */
    @Test
    void muchLater() {
        assertTrue(Asked.answer("upkeep " + SCHOOL + " --from 2027-01-01 --days 1").number("overdue") >= 7);
    }
}

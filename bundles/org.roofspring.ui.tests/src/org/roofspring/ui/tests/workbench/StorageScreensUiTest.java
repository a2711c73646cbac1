package org.roofspring.ui.tests.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.calc.FindingValue;
import org.roofspring.quantity.Quantity;
import org.roofspring.quantity.UnitSystem;
import org.roofspring.quantity.Units;
import org.roofspring.site.CostCategory;
import org.roofspring.site.CostItem;
import org.roofspring.site.SitePackage.Literals;
import org.roofspring.site.Tank;
import org.roofspring.ui.PartIds;
import org.roofspring.ui.field.DisplayUnits;
import org.roofspring.ui.part.Sessions;
import org.roofspring.ui.parts.storage.DaysAheadView;
import org.roofspring.ui.parts.storage.Plot;
import org.roofspring.ui.parts.storage.Ramp;
import org.roofspring.ui.parts.storage.Reading;
import org.roofspring.ui.parts.storage.Sheet;
import org.roofspring.ui.parts.storage.ShortageView;
import org.roofspring.ui.parts.storage.StudyView;
import org.roofspring.ui.parts.storage.TankSizeView;
import org.roofspring.ui.session.FindingKey;
import org.roofspring.ui.session.SiteSession;
import org.roofspring.ui.tests.Spin;

/** Shortage by month, how much tank and days ahead on the demo school, in a real window. */
class StorageScreensUiTest {
    private static final List<String> CALCULATIONS = List.of("storage.balance", "storage.sizing", "storage.outlook");

    @TempDir
    static Path folder;
    private static SiteSession session;
    private static Tank cistern;

    /** One window for all: what a test edits is undone after it. */
    @BeforeAll
    static void openDemoSchool() {
        session = Window.open(Window.demoSite(folder, "hill-school.site")).session();
        cistern = (Tank) session.element("cistern").orElseThrow();
        answered();
    }

    @AfterEach
    void undoAll() {
        DisplayUnits.preferences().remove(DisplayUnits.PREFERENCE);
        Sessions.service().unitsChanged();
        while (session.commands().canUndo()) {
            session.undo();
        }
        answered();
    }

    @AfterAll
    static void close() {
        Window.closeAll();
    }

    private static void answered() {
        Spin.until("storage is up to date", () -> CALCULATIONS.stream().allMatch(id -> session.live().results()
                .completed(id).isPresent() && !session.live().outOfDate(id)) && !session.live().anyOutOfDate());
    }

    private FindingValue.Table table(String calculation, String id) {
        return (FindingValue.Table) session.live().results().finding(calculation, id).orElseThrow().value();
    }

    private FindingValue.Daily daily(String id) {
        return (FindingValue.Daily) session.live().results().finding("storage.outlook", id).orElseThrow().value();
    }

    private String number(String id) {
        return words(((FindingValue.Number) session.live().results().finding("storage.sizing", id).orElseThrow()
                .value()).quantity());
    }

    private String words(Object quantity) {
        return session.format().format((Quantity) quantity);
    }

    private static StudyView.Page page(StudyView view, String title) {
        return view.pages().stream().filter(page -> page.title().equals(title)).findFirst().orElseThrow();
    }

    private static List<String> readings(Plot plot) {
        List<String> words = new ArrayList<>();
        for (int row = 0; row < plot.rows(); row++) {
            for (int column = 0; column < plot.columns(); column++) {
                plot.reading(column, row).map(Reading::words).ifPresent(words::add);
            }
        }
        return words;
    }

    private static void assertHolds(String words, String... parts) {
        for (String part : parts) {
            assertTrue(words.contains(part), "\"" + part + "\" is not in: " + words);
        }
    }

    private static ShortageView shortage() {
        ShortageView view = Window.view(PartIds.SHORTAGE);
        Spin.settle();
        return view;
    }

    private static TankSizeView size() {
        TankSizeView view = Window.view(PartIds.TANK_SIZE);
        Spin.settle();
        return view;
    }

    private static DaysAheadView ahead() {
        DaysAheadView view = Window.view(PartIds.DAYS_AHEAD);
        Spin.settle();
        return view;
    }

    private List<String> everything() {
        List<String> words = new ArrayList<>();
        for (StudyView view : List.of(shortage(), size(), ahead())) {
            words.add(view.summary());
            view.pages().stream().filter(page -> page.plot() != null).forEach(page -> words.addAll(readings(page.plot())));
        }
        return words;
    }

    @Test
    void everyMonthIsReadAsItWasFound() {
        Plot map = page(shortage(), "Shortage by month").plot();
        List<List<Object>> months = table("storage.balance", "shortageByMonth").rows();
        int firstYear = YearMonth.parse((String) months.getFirst().getFirst()).getYear();
        int missed = 0;
        for (List<Object> row : months) {
            YearMonth month = YearMonth.parse((String) row.get(0));
            Reading reading = map.reading(month.getMonthValue() - 1, month.getYear() - firstYear).orElseThrow();
            assertEquals(new FindingKey("storage.balance", "shortageByMonth", null), reading.finding());
            assertHolds(reading.words(), Integer.toString(month.getYear()), words(row.get(3)), words(row.get(1)));
            if (((Quantity) row.get(2)).value() > 0) {
                missed++;
                assertHolds(reading.words(), words(row.get(4)), words(row.get(5)));
            }
        }
        assertEquals(480, readings(map).size());
        assertTrue(missed > 10 && missed < 100, "months with a shortage: " + missed);
    }

    @Test
    void curveAndSurfaceAreReadAsTheyWereFound() {
        TankSizeView view = size();
        Plot curve = page(view, "Reliability of a tank").plot();
        List<List<Object>> rows = table("storage.sizing", "reliabilityTable").rows();
        for (int i = 0; i < rows.size(); i++) {
            assertHolds(curve.reading(i, 0).orElseThrow().words(), words(rows.get(i).get(0)), words(rows.get(i).get(1)),
                    words(rows.get(i).get(2)), words(rows.get(i).get(3)));
        }
        String marks = String.join("\n", readings(curve).subList(rows.size(), curve.columns()));
        assertHolds(marks, "Needed:  " + number("requiredVolume"), "target of " + number("target"),
                "The tanks there are:  " + number("presentVolume"), number("presentReliability"), "As built:  "
                        + Window.finding("storage.balance", "timeReliability").value(), number("timeReliabilityLow"),
                number("timeReliabilityHigh"), "5 % rule:  " + number("ruleFivePercent"),
                "6 % rule:  " + number("ruleSixPercent"), number("ruleDemandSide"), "bridge no dry season");

        Plot surface = page(size(), "Roof by tank").plot();
        List<List<Object>> pairs = table("storage.sizing", "surface").rows();
        int tanks = surface.rows() - 1;
        assertEquals(pairs.size(), surface.columns() * tanks);
        for (int i = 0; i < pairs.size(); i++) {
            String words = surface.reading(i / tanks, tanks - 1 - i % tanks).orElseThrow().words();
            assertHolds(words, words(pairs.get(i).get(0)) + " of roof", words(pairs.get(i).get(1)) + " usable",
                    words(pairs.get(i).get(2)), words(pairs.get(i).get(3)));
        }
        assertHolds(surface.reading(0, tanks).orElseThrow().words(), "This site", number("presentRoof"),
                number("presentVolume"));
        String cheapest = surface.reading(1, tanks).orElseThrow().words();
        assertHolds(cheapest, "Cheapest pair", number("cheapestTank"), number("cheapestCost"), "With the roof there is");
        assertEquals(number("presentRoof"), number("cheapestRoof"));
    }

    /** With a price for roof as well, the cheapest pair may have more or less roof than there is. */
    @Test
    void cheapestPairTakesRoofsIntoAccountOnceTheyHaveAPrice() {
        String before = number("cheapestRoof");
        CostItem cost = (CostItem) session.edits().add(session.site(), Literals.SITE__COSTS);
        session.edits().set(cost, Literals.COST_ITEM__CATEGORY, CostCategory.CAPITAL);
        session.edits().set(cost, Literals.COST_ITEM__AMOUNT, Quantity.of(9000, Units.MONEY));
        session.edits().set(cost, Literals.COST_ITEM__ELEMENT, session.site().getRoofs().get(0));
        answered();
        assertNotEquals(before, number("cheapestRoof"));
        assertHolds(page(size(), "Roof by tank").plot().reading(1, page(size(), "Roof by tank").plot().rows() - 1)
                .orElseThrow().words(), number("cheapestRoof"), "Of all pairs of the surface");
    }

    @Test
    void daysAheadAreReadAsTheyWereFound() {
        Plot fan = page(ahead(), "Water ahead").plot();
        assertEquals(365, fan.columns());
        for (int day = 0; day < fan.columns(); day++) {
            String date = daily("fanLow").firstDay().plusDays(day).toString();
            List<String> values = new ArrayList<>(List.of(date));
            for (String id : List.of("fanLow", "fanMiddle", "fanHigh")) {
                values.add(words(Quantity.of(daily(id).value(day), daily(id).unit())));
            }
            assertHolds(fan.reading(day, 0).orElseThrow().words(), values.toArray(String[]::new));
            assertHolds(fan.reading(day, 1).orElseThrow().words(), date,
                    words(Quantity.of(daily("chanceByDate").value(day), Units.PERCENT)));
        }
        assertHolds(ahead().summary(), "Days of water left: " + Window.finding("storage.outlook", "daysLeftCautious")
                .value().replace("\u00a0d", ""));
    }

    @Test
    void everyPartFollowsTheCapacityAndUndoReturns() {
        List<String> before = everything();
        session.edits().set(cistern, Literals.TANK__CAPACITY, Quantity.of(60, Units.M3));
        answered();
        List<String> after = everything();
        assertHolds(size().summary(), number("presentVolume"));
        assertTrue(page(size(), "Reliability of a tank").plot().columns() > 41);
        List<String> changed = new ArrayList<>(after);
        changed.removeAll(before);
        assertTrue(changed.stream().anyMatch(words -> words.contains("not supplied (")), "no month has changed");
        assertTrue(changed.stream().anyMatch(words -> words.startsWith("As built")), "the curve has not changed");
        assertTrue(changed.stream().anyMatch(words -> words.startsWith("This site")), "the surface has not changed");
        assertTrue(changed.stream().anyMatch(words -> words.contains("usable water")), "the fan has not changed");
        theTableHoldsTheNewMonths();

        Window.command("org.eclipse.ui.edit.undo");
        answered();
        assertEquals(before, everything());
        assertFalse(shortage().isStale());
    }

    private void theTableHoldsTheNewMonths() {
        List<List<Object>> months = table("storage.balance", "shortageByMonth").rows();
        Sheet sheet = page(shortage(), "Shortage by month").sheet();
        for (int row = 0; row < months.size(); row++) {
            assertEquals(session.format().number(((Quantity) months.get(row).get(4)).value()), sheet.text(row, 4));
        }
    }

    /** Without a tank there is no answer: the old pictures stay, marked, and come back to life. */
    @Test
    void oldPicturesStayWhenTheDesignHasNoAnswer() {
        StudyView view = size();
        List<String> before = readings(page(view, "Reliability of a tank").plot());
        List<Tank> tanks = List.copyOf(session.site().getTanks());
        tanks.forEach(tank -> session.edits().set(tank, Literals.COMPONENT__IN_USE, false));
        Spin.until("there is no answer", () -> session.live().results().completed("storage.sizing").isEmpty());
        assertTrue(view.isStale());
        assertHolds(view.summary(), "Out of date: the design has no answer now.", "There is no tank with a capacity.");
        assertEquals(before, readings(page(view, "Reliability of a tank").plot()));
        tanks.forEach(tank -> Window.command("org.eclipse.ui.edit.undo"));
        answered();
        assertFalse(view.isStale());
        assertFalse(view.summary().contains("Out of date"));
    }

    @Test
    void aHiddenPartRestsUntilItIsSeen() {
        TankSizeView hidden = size();
        List<StudyView.Page> shown = hidden.pages();
        ahead();
        session.edits().set(cistern, Literals.TANK__CAPACITY, Quantity.of(90, Units.M3));
        answered();
        assertSame(shown, hidden.pages(), "a hidden part has worked");
        size();
        assertNotSame(shown, hidden.pages());
        assertHolds(hidden.summary(), number("presentVolume"));
    }

    /** The table twins hold the numbers of the findings, and what is copied from them parses to the same. */
    @Test
    void tableTwinsAndCopiesHoldTheSameNumbers() {
        for (StudyView view : List.of(shortage(), size(), ahead())) {
            for (StudyView.Page page : view.pages()) {
                view.choose(page.title());
                view.showTable(true);
                Spin.settle();
                Table widget = view.tableControl();
                Sheet sheet = page.sheet();
                assertEquals(sheet.rows(), widget.getItemCount(), page.title());
                view.copyCsv();
                List<CsvRecord> records = CsvReader.builder().ofCsvRecord(clipboardText()).stream().toList();
                assertEquals(sheet.rows() + 1, records.size(), page.title());
                assertEquals(sheet.columns(), widget.getColumnCount());
                for (int row = 0; row < sheet.rows(); row += Math.max(1, sheet.rows() / 50)) {
                    for (int column = 0; column < sheet.columns(); column++) {
                        assertEquals(sheet.text(row, column), widget.getItem(row).getText(column));
                    }
                }
                view.showTable(false);
            }
        }
        List<List<Object>> pairs = table("storage.sizing", "surface").rows();
        TankSizeView view = size();
        view.choose("Roof by tank");
        view.copyCsv();
        List<CsvRecord> records = CsvReader.builder().ofCsvRecord(clipboardText()).stream().toList();
        assertEquals(List.of("Roof [m2]", "Usable volume [m3]", "Days met in full [%]", "Demand supplied [%]",
                "Reaches the target"), records.getFirst().getFields());
        for (int row = 0; row < pairs.size(); row++) {
            for (int column = 0; column < 4; column++) {
                assertEquals(((Quantity) pairs.get(row).get(column)).value(),
                        Double.parseDouble(records.get(row + 1).getField(column)));
            }
        }
    }

    private static String clipboardText() {
        Clipboard clipboard = new Clipboard(Window.page().getWorkbenchWindow().getShell().getDisplay());
        String text = (String) clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        return text;
    }

    @Test
    void theUnitsAreThoseOfTheReader() {
        DisplayUnits.preferences().put(DisplayUnits.PREFERENCE, UnitSystem.US_CUSTOMARY.name());
        Sessions.service().unitsChanged();
        Sheet sheet = page(size(), "Roof by tank").sheet();
        assertEquals("Roof [ft\u00b2]", sheet.heading(0));
        assertEquals("Usable volume [galUS]", sheet.heading(1));
        Quantity roof = (Quantity) table("storage.sizing", "surface").rows().getFirst().getFirst();
        assertEquals(session.format().number(roof.in(Units.FT2)), sheet.text(0, 0));
    }

    @Test
    void aPictureIsCopiedAndThePlaceInFocusOpensItsWorkings() {
        TankSizeView view = size();
        view.choose("Roof by tank");
        view.copyPicture();
        Clipboard clipboard = new Clipboard(view.plotControl().getDisplay());
        ImageData picture = (ImageData) clipboard.getContents(ImageTransfer.getInstance());
        clipboard.dispose();
        assertNotNull(picture, "there is no picture on the clipboard");
        Set<Integer> colours = new TreeSet<>();
        for (int y = 0; y < picture.height; y += 3) {
            for (int x = 0; x < picture.width; x += 3) {
                RGB rgb = picture.palette.getRGB(picture.getPixel(x, y));
                colours.add(rgb.red << 16 | rgb.green << 8 | rgb.blue);
            }
        }
        assertTrue(colours.size() > 50, "the picture has " + colours.size() + " colours");

        view.setFocus();
        for (int code : new int[] { SWT.HOME, SWT.ARROW_RIGHT, SWT.CR }) {
            Event press = new Event();
            press.keyCode = code;
            view.plotControl().notifyListeners(SWT.KeyDown, press);
        }
        Spin.settle();
        assertEquals(new FindingKey("storage.sizing", "surface", null), session.selection().finding());
        assertTrue(Window.page().isPartVisible(Window.page().findView(PartIds.WORKINGS)));
    }

    /** Colours only ever darken, so that they read the same to every kind of colour sight. */
    @Test
    void rampsOnlyDarken() {
        for (Ramp ramp : Ramp.values()) {
            for (int i = 1; i <= 100; i++) {
                assertTrue(Ramp.luminance(ramp.at(i / 100.0)) < Ramp.luminance(ramp.at((i - 1) / 100.0)), ramp + " " + i);
            }
        }
    }
}

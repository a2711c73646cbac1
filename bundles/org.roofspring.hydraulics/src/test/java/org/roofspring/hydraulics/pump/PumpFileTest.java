package org.roofspring.hydraulics.pump;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PumpFileTest {
    private static final String GOOD = """
            # an invented pump
            flow[L/s],head[m],efficiency[%],npshr[m],power[W]
            0,30,0,,500

            0.5,29,35,1.6,620
            1,26,55,2.0,720
            1.5,20,50,2.8,800
            """;

    @Test
    void readsUnitsFromTheHeader() {
        PumpCurve pump = PumpFile.parse("demo.csv", GOOD);
        assertEquals("demo", pump.name());
        assertEquals(4, pump.points().size());
        assertEquals(new PumpPoint(0.5e-3, 29, OptionalDouble.of(0.35), OptionalDouble.of(1.6),
                OptionalDouble.of(620)), pump.points().get(1));
        assertTrue(pump.points().get(0).npshRequiredM().isEmpty());
        PumpCurve other = PumpFile.parse("x.csv",
                "\ufeff\"head[ft]\" , flow[m3/h], efficiency\r\n100,0,0\r\n90, 3.6 ,.5\r\n"
                + "50,7.2,0.4");
        assertEquals(27.432, other.headM(1e-3), 1e-12);
        assertEquals(0.4, other.efficiency(2e-3).getAsDouble());
    }

    @Test
    void readsManyPumps(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("many.csv");
        Files.writeString(file, "pump,flow[L/s],head[m]\nA,0,10\nA,1,9\nB,0,20\nA,2,6\nB,1,18\nB,2,11\n");
        List<PumpCurve> pumps = PumpFile.readAll(file);
        assertEquals(List.of("A", "B"), pumps.stream().map(PumpCurve::name).toList());
        assertEquals(9, pumps.get(0).headM(1e-3));
        assertEquals(18, pumps.get(1).headM(1e-3));
        PumpFileException refused = assertThrows(PumpFileException.class, () -> PumpFile.read(file));
        assertEquals("many.csv: one pump is needed here, this file holds 2", refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "flow[L/s],head[m];0,30;1,x|line 3, column 2: \"x\" is not a number; head in m is needed",
        "flow[L/s],head[m];0,30;1,|line 3, column 2: head is empty; a number in m is needed",
        "flow[L/s],head[m];0,30;1,9,8|line 3: 2 columns are needed as in the header, not 3",
        "flow[L/s],head[m];0,30;1,NaN|line 3, column 2: \"NaN\" is not a number",
        "flow[L/s],head[m];0,30;1,9m|line 3, column 2: \"9m\" is not a number",
        "flow[L/s],head[m];0,30;1,-9|line 3, column 2: head of a pump point must be from 0 m to 10000 m, not -9 m",
        "flow[L/s],head[m];0,30;2,9;1,8|line 4, column 1: points must be in order of rising flow",
        "flow[L/s],head[m],efficiency[%];0,30,0;1,20,101|line 3, column 3: efficiency of a pump point must be from 0 %",
        "flow[L/s],head[m],npshr[m];0,30,0;1,20,101|line 3, column 3: NPSH required of a pump point must be",
        "flow[L/s],power[kW],head[m];0,0.5,30;1,0,29|line 3, column 2: input power of a pump point must be",
        "flow[L/s],head[m];0,30;1,20|line 2: pump \"p\": a pump curve must have at least 3 points, not 2",
        "flow,head[m];0,30|line 1, column 1: \"flow\" has no unit in brackets; a flow is needed (L/s, L/min,",
        "flow[L/s,head[m];0,30|line 1, column 1: \"flow[L/s\" has no unit in brackets",
        "flow[furlong],head[m];0,30|line 1, column 1: \"furlong\" is not a unit of a flow",
        "flow[m],head[m];0,30|line 1, column 1: \"m\" is not a unit of a flow",
        "flow[L/s],height[m];0,30|line 1, column 2: \"height[m]\" is not a known column; flow[L/s], head[m]",
        "flow[L/s],head[m],head[ft];0,30,1|line 1, column 3: the column head comes twice",
        "flow[L/s],npshr[m];0,30|line 1: the header has no column head",
        "flow[L/s],head[m]|the file has a header but no points; at least 3 are needed",
        "pump,flow[L/s],head[m];,0,30|line 2, column 1: the name of the pump is empty",
        "#|the file has no header"})
    void saysWhereAndWhat(String lines, String message) {
        PumpFileException refused = assertThrows(PumpFileException.class,
                () -> PumpFile.parse("p.csv", lines.replace(';', '\n')));
        String separator = message.startsWith("line") ? ", " : ": ";
        assertTrue(refused.getMessage().startsWith("p.csv" + separator + message), refused.getMessage());
        assertEquals("p.csv", refused.file());
    }

    @Test
    void namesLineAndColumnApart() {
        PumpFileException refused = assertThrows(PumpFileException.class,
                () -> PumpFile.parse("p.csv", "flow[L/s],head[m]\n0,30\n1,?"));
        assertEquals(3, refused.line());
        assertEquals(2, refused.column());
    }

    @Test
    void refusesWhatIsNotText(@TempDir Path folder) throws IOException {
        Path picture = Files.write(folder.resolve("p.csv"), new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        assertEquals("p.csv: this is not UTF-8 text; a table of comma-separated values is needed",
                assertThrows(PumpFileException.class, () -> PumpFile.read(picture)).getMessage());
        assertThrows(NoSuchFileException.class, () -> PumpFile.read(folder.resolve("none.csv")));
        Path huge = Files.write(folder.resolve("huge.csv"), new byte[(int) PumpFile.LARGEST_BYTES + 1]);
        assertTrue(assertThrows(PumpFileException.class, () -> PumpFile.read(huge)).getMessage().contains("at most"));
    }
}

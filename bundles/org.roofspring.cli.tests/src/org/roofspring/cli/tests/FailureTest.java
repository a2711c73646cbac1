package org.roofspring.cli.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Wrong input: nothing on standard output, one line on standard error that says where, what and what is accepted. */
class FailureTest {
    @TempDir
    Path folder;

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "pipe --flow 1.2 --bore 40mm --length 1m | --flow | has no unit | L/s",
        "pipe --flow 1.2L/x --bore 40mm --length 1m | --flow | not a known unit | L/s",
        "pipe --flow 1.2m --bore 40mm --length 1m | --flow | is a length | L/s",
        "pipe --flow 1,2L/s --bore 40mm --length 1m | --flow | comma | L/s",
        "pipe --flow NaN --bore 40mm --length 1m | --flow | not a number | L/s",
        "pipe --flow 1e999L/s --bore 40mm --length 1m | --flow | too large | --help",
        "pipe --flow -1L/s --bore 40mm --length 1m | --flow | -1 L/s | zero or more",
        "pipe --flow 1L/s --bore 0mm --length 1m | --bore | 0 mm | more than zero",
        "pipe --flow 1L/s --bore 40mm --length 1m --temperature 120degC | --temperature | 120 degC | 60 degC",
        "pipe --flow 1L/s --bore 40mm --length 1m --fittings 3m | --fittings | is a length | a bare number",
        "pipe --bore 40mm --length 1m | --flow | Missing | --help",
        "pipe --flow 1L/s --bore 40mm --length 1m --flux 3 | --flux | Unknown | --help",
        "pipe --flow 1L/s --bore 40mm --length 1m --roughnes 1mm | --roughnes | Unknown | did you mean --roughness",
        "pipe --flow 1L/s --flow 2L/s --bore 40mm --length 1m | --flow | only once | --help",
        "pipe --flow 1L/s --bore 40mm --length 1m more | \"more\" | one argument too many | --help",
        "pips | \"pips\" | not a command | pipe",
        "disinfect ozone | \"ozone\" | not a command | chlorine, uv, boil, solar",
        "disinfect chlorine --volume 1m3 --dose 5mg/L --strength 65 | --strength | 65 | 65%",
        "disinfect chlorine --volume 1m3 --dose 5mg/L --strength 65% --product pills | --product | pills | granules",
        "disinfect chlorine --volume 1m3 --dose 5mg/L --strength 65% --basis vv | --basis | vv | wv or ww",
        "disinfect chlorine --volume 1m3 --dose 5mg/L --strength 65% --product granules --basis wv"
            + "| --basis | wv | ww",
        "disinfect chlorine --volume 1m3 --dose 5mg --strength 65% | --dose | is a mass | mg/L",
        "disinfect chlorine --volume 1m3 --dose 5mg/L --strength 12% --ph 15 | --ph | 15 | 0 to 14",
        "disinfect uv --dose 40 | --dose | has no unit | mJ/cm2",
        "disinfect boil --altitude 10km | --altitude | 10 km | 9000 m",
        "disinfect boil --altitude 1km --agency who | --agency | who | cdc or epa",
        "disinfect solar --volume 1L --sky grey --turbidity 1NTU | --sky | grey | clear or cloudy",
        "disinfect solar --volume 0L --sky clear --turbidity 1NTU | --volume | 0 L | more than zero",
        "gutter --width 1m --length 1m --slope 0 --roof 1m2 --intensity 1mm/h --profile v | --profile | v | half-round",
        "gutter --width 1m --length 1m --slope 0 --roof 1m2 --intensity 1mm/h --profile rectangular"
            + "| --depth | missing | needs it",
        "gutter --profile vee | --length | Missing | --help",
        "firstflush --roof 60m2 | --depth | --share | Missing",
        "firstflush --roof 60m2 --depth 1mm --share 10% | --depth | --share | mutually exclusive",
        "firstflush --roof 60m2 --depth 51mm | --depth | 51 mm | 50 mm",
        "firstflush --roof 60m2 --share 0% | --share | 0 % | to 1",
        "firstflush --roof 60m2 --share 0.01% --half-depth 20mm | --share | 266 mm | 50 mm",
        "firstflush --roof 60m2 --depth 1mm --bore 100mm | --hole | Missing | --help",
        "firstflush --roof 60m2 --depth 20mm --bore 50mm --hole 3mm | --bore | 611 | to 20 m",
        "intensity | --rain | --relation | missing",
        "intensity --rain a.csv --relation talbot | --rain | --relation | exclude",
        "intensity --rain a.csv | --return-period | missing | 10yr",
        "intensity --rain a.csv --return-period 10 | --return-period | has no unit | a time",
        "intensity --rain a.csv --return-period 1yr | --return-period | 1 yr | 1.01 yr",
        "intensity --rain a.csv --return-period 10yr --duration 1min | --duration | 1 min | 5 min",
        "intensity --rain a.csv --return-period 10yr --law weibull | --law | weibull | gumbel or gev",
        "intensity --rain a.csv --return-period 10yr --ratios none | --ratios | none | third-power or brazilian",
        "intensity --rain a.csv --return-period 10yr --day-factor 0.9 | --day-factor | 0.9 | 1 to 2",
        "intensity --rain a.csv --return-period 10yr | a.csv | There is no | rain file",
        "intensity --relation hyperbola | --relation | hyperbola | talbot or sherman or wenzel",
        "intensity --relation sherman --a 1 --b 1 | --n | missing | relation",
        "intensity --relation talbot --a 0 --b 1 | --a | 0 | 100000",
        "rain | FILE | Missing | --help",
        "rain no-such-file.csv | no-such-file.csv | There is no | rain file",
        "duty --pump none.csv --static-head 1m --bore 40mm --length 1m | none.csv | There is no | pump file"})
    void badInput(String command, String where, String what, String accepted) {
        refused(command, where, what, accepted);
        refused(command + " --json", where, what);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--roof -100m2 --runoff 0.8 | --roof | -100 m2 | zero or more",
        "--roof 100m2 --runoff 1.2 | --runoff | 1.2 | 0 to 1", "--roof 100m2 --runoff -0.1 | --runoff | -0.1 | 0 to 1",
        "--roof 100m2 --runoff 0.8 --rule yab | --rule | yab | yas or ybs",
        "--roof 100m2 --runoff 0.8 --loss -1mm | --loss | -1 mm | zero or more",
        "--roof 100m2 --runoff 0.8 --start 2m3 | --start | 2 m3 | 1 m3",
        "--roof 100m2 --runoff 0.8 --gaps guess | --gaps | guess | refuse, zero, mean",
        "--roof 100m2 --runoff 0.8 --format xls | --format | xls | auto, dly, station, csv",
        "--roof 100m2 --runoff 0.8 --multi-day halve | --multi-day | halve | refuse or spread",
        "--roof 100m2 --runoff 0.8 --depth-unit cubit | --depth-unit | cubit | mm",
        "--roof 100 --runoff 0.8 | --roof | has no unit | m2"})
    void badStorageInput(String options, String where, String what, String accepted) {
        refused("storage --rain " + DemoData.realRain() + " --tank 1m3 --demand 100L/d " + options, where, what,
                accepted);
    }

    @Test
    void missingCommand() {
        refused("", "A command is missing", "rain, storage, size", "--help");
        refused("disinfect", "A method is missing", "chlorine, uv, boil, solar", "--help");
    }

    @Test
    void badTarget() {
        String size = "size --rain " + DemoData.realRain() + " --roof 100m2 --runoff 0.8 --demand 100L/d --target ";
        refused(size + "0", "--target", "more than zero");
        refused(size + "101%", "--target", "0 to 1");
    }

    /** Half of a file: the last line ends within a date, a number, or has lost its depth. */
    @Test
    void rainFileCutInTheMiddleOfALine() throws IOException {
        String whole = Files.readString(DemoData.realRain());
        String lines = whole.substring(0, whole.indexOf("2012-03-01"));
        Path withinDate = file("within-date.csv", lines + "2012-03");
        int line = (int) lines.lines().count() + 1;
        refused("rain " + withinDate, "within-date.csv", "line " + line);
        Path withoutDepth = file("without-depth.csv", lines + "2012-03-01");
        refused("rain " + withoutDepth, "without-depth.csv", "line " + line);
        refused("storage --roof 10m2 --runoff 1 --tank 1m3 --demand 1L/d --rain " + withoutDepth, "without-depth.csv",
                "line " + line);
    }

    @Test
    void rainFilesThatAreNone() throws IOException {
        refused("rain " + file("empty.csv", ""), "empty.csv");
        refused("rain " + file("words.csv", "it rained on Monday\n"), "words.csv");
        refused("rain " + file("leap.csv", "date,precipitation[mm]\n2001-02-28,0\n2001-02-29,1\n"), "leap.csv",
                "line 3");
        refused("rain " + file("twice.csv", "date,precipitation[mm]\n2001-02-28,0\n2001-02-28,1\n"), "twice.csv",
                "line 3");
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n', 0, 0, 0, 13, 'I', 'H', 'D', 'R', 0, 0};
        refused("rain " + Files.write(folder.resolve("picture.png"), picture), "picture.png");
        refused("rain " + folder, "folder");
    }

    @Test
    void pumpFilesThatAreNone() throws IOException {
        String duty = "duty --static-head 1m --bore 40mm --length 1m --pump ";
        refused(duty + file("empty.csv", ""), "empty.csv");
        refused(duty + file("unitless.csv", "flow,head\n0,10\n1,5\n"), "unitless.csv", "line 1");
        refused(duty + file("unit.csv", "flow[L/fortnight],head[m]\n0,10\n1,5\n"), "unit.csv", "line 1", "fortnight");
        refused(duty + file("text.csv", "flow[L/s],head[m]\n0,10\n1,high\n"), "text.csv", "line 3", "high");
        refused(duty + file("cut.csv", "flow[L/s],head[m]\n0,10\n1,"), "cut.csv", "line 3");
        refused(duty + file("two.csv", "flow[L/s],head[m]\n0,10\n1,5\n"), "two.csv", "3 points");
        refused(duty + file("good.csv", "flow[L/s],head[m]\n0,10\n1,8\n2,5\n") + " --series 0", "--series",
                "one or more");
        refused(duty + folder.resolve("good.csv") + " --speed 0", "--speed", "more than zero");
        refused(duty + folder.resolve("good.csv") + " --suction-length 3m", "--suction-bore", "missing");
        refused(duty + folder.resolve("good.csv") + " --motor-efficiency 120%", "--motor-efficiency", "0 to 1");
        refused(duty + folder.resolve("good.csv") + " --altitude 50km", "--altitude", "50 km");
    }

    private static void refused(String command, String... said) {
        String line = Asked.of(command).refusal();
        for (String words : said) {
            assertTrue(line.contains(words), () -> command + " must say \"" + words + "\": " + line);
        }
    }

    /** Sound input without an answer is told apart from wrong input. */
    @Test
    void soundInputWithoutAnAnswer() throws IOException {
        Path pump = file("pump.csv", "flow[L/s],head[m]\n0,10\n1,8\n2,5\n");
        for (String command : Arrays.asList(
                "duty --static-head 30m --bore 40mm --length 10m --pump " + pump,
                "intensity --return-period 10yr --rain " + DemoData.realRain(),
                "size --roof 10m2 --runoff 0.8 --demand 400L/d --target 95% --rain " + DemoData.realRain())) {
            for (String json : new String[] {"", " --json"}) {
                Asked.of(command + json).noAnswer();
            }
        }
    }

    @Test
    void traceIsGivenOnlyWhenAskedFor() {
        String command = "pipe --flow -1L/s --bore 40mm --length 1m";
        assertFalse(Asked.of(command).err().contains("\tat "));
        Asked traced = Asked.of(command + " --trace");
        assertTrue(traced.err().contains("\tat "));
        assertEquals(2, traced.status());
    }

    /** Standard error is plain text whatever was typed. */
    @Test
    void namesWithOddLettersAreRepeatedAsTyped() {
        Asked asked = Asked.of("rain r\u00e9gion-\u6c34.csv");
        assertTrue(asked.err().contains("r\u00e9gion-\u6c34.csv"), asked.err());
        assertTrue(StandardCharsets.UTF_8.newEncoder().canEncode(asked.err()));
    }
}

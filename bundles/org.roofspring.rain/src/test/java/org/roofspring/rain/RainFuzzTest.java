package org.roofspring.rain;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.roofspring.kernel.testkit.Fuzz;

class RainFuzzTest {
    private static final String STATION = "\"STATION\",\"DATE\",\"PRCP\",\"PRCP_ATTRIBUTES\"\n"
            + "\"XX000000001\",\"2001-01-01\",\"    10\",\",,X\"\n\"XX000000001\",\"2001-01-02\",\"     0\",\"T,,X\"\n";

    @Test
    void damagedFilesAreReadOrRefused() throws IOException {
        byte[] real = Files.readAllBytes(TestFiles.SEATTLE);
        List<byte[]> corpus = List.of(Arrays.copyOf(real, 20_000), TestFiles.allRainDly(5_000, 1),
                STATION.getBytes(StandardCharsets.UTF_8),
                "date;rain [mm]\n01.02.2001;1,5\n02.02.2001;0,0\n03.02.2001;\n".getBytes(StandardCharsets.UTF_8),
                "month,precipitation[mm],wet days\n1,50,8\n2,40,7\n".getBytes(StandardCharsets.UTF_8));
        new Fuzz("rain.csv", RainFormatException.class,
                content -> {
                    RainReading reading = RainReader.read("rain.csv", content, ReadOptions.AUTO, () -> false);
                    reading.quality();
                }).run(corpus);
    }
}

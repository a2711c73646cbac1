package org.roofspring.site.model;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.roofspring.codegen.Generate;

/** The committed code is, byte for byte, what the generator makes of the committed model. */
class GeneratedCodeTest {
    @Test
    void committedCodeIsWhatTheModelGives(@TempDir Path temporary) throws IOException {
        Path bundle = Path.of("").toAbsolutePath();
        Path fresh = Generate.generate(bundle, temporary);
        Path committed = bundle.resolve("src-gen");
        assertEquals(files(fresh), files(committed), "run releng/generate-model: the set of files differs");
        for (String file : files(fresh)) {
            assertArrayEquals(Files.readAllBytes(fresh.resolve(file)), Files.readAllBytes(committed.resolve(file)),
                    "run releng/generate-model: " + file + " differs from what the model gives");
        }
    }

    private static SortedSet<String> files(Path folder) throws IOException {
        try (Stream<Path> tree = Files.walk(folder)) {
            SortedSet<String> names = new TreeSet<>();
            tree.filter(Files::isRegularFile).forEach(path -> names.add(folder.relativize(path).toString()));
            return names;
        }
    }
}

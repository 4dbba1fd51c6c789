package rainlap.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own: statuses, encodings, pipes. */
class ProcessTest {
    private static final int SECONDS = 180;

    @TempDir
    Path folder;

    @BeforeEach void writeHut() {
        Run.file(folder, "hut.json", Run.SOUND.replace("Sound wall", "Hütte → ½"));
        Run.file(folder, "bad.json", Run.BAD);
    }

    private ProcessBuilder rainlap(String... args) {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        String classPath = Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(p -> Path.of(p).toAbsolutePath().toString()).reduce((a, b) -> a + File.pathSeparator + b).orElseThrow();
        List<String> command = new ArrayList<>(List.of(java, "-Dfile.encoding=US-ASCII", "-cp", classPath, "rainlap.cli.Main"));
        command.addAll(List.of(args));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().put("LC_ALL", "C");
        return builder;
    }

    private record Ended(int status, String out, String err) {}

    private Ended run(String... args) throws IOException, InterruptedException {
        Path out = folder.resolve("stdout"), err = folder.resolve("stderr");
        Process process = rainlap(args).redirectOutput(out.toFile()).redirectError(err.toFile()).start();
        assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS), "ends in time");
        return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    @Test void statusesReachTheShell() throws Exception {
        assertEquals(2, run().status());
        assertEquals(3, run("check", "bad.json").status());
        Ended good = run("check", "hut.json", "--sheet", "out.png", "--dpi", "40");
        assertEquals(0, good.status(), good.err());
        assertTrue(Files.size(folder.resolve("out.png")) > 1000);
        assertTrue(good.out().endsWith("\nsheet: out.png\n"), good.out());
    }

    @Test void textIsUtf8WhateverTheMachineSays() throws Exception {
        Ended good = run("check", "hut.json", "--no-sheet");
        assertEquals(0, good.status(), good.err());
        assertTrue(good.out().startsWith("Hütte → ½ (hut.json)\n"), good.out());
        Files.writeString(folder.resolve("hut.json"), "{ \"Hütte\": 1 }");
        assertTrue(run("check", "hut.json").err().contains("\"Hütte\""));
    }

    @Test void aReaderThatGoesAwayIsNoFailure() throws Exception {
        Process process = rainlap("practices").redirectError(folder.resolve("stderr").toFile()).start();
        try (InputStream out = process.getInputStream()) {
            assertTrue(out.read() >= 0);
        }
        assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS), "ends in time");
        assertEquals(0, process.exitValue());
        assertEquals("", Files.readString(folder.resolve("stderr")));
    }

    @Test void aFullDiskIsSaid() throws Exception {
        File full = new File("/dev/full");
        assumeTrue(full.exists(), "no device here that is always full");
        Process process = rainlap("practices").redirectOutput(full).redirectError(folder.resolve("stderr").toFile()).start();
        assertTrue(process.waitFor(SECONDS, TimeUnit.SECONDS), "ends in time");
        assertEquals(ExitStatus.USAGE.code(), process.exitValue());
        assertTrue(Files.readString(folder.resolve("stderr"), StandardCharsets.UTF_8).contains("could not be written"));
    }
}

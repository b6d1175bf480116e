package org.stillroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the scripts of a checkout say when something is missing: one sentence that helps. */
class ScriptsTest {

    private final Path checkout = Path.of(System.getProperty("stillroom.root"));

    @TempDir Path folder;

    @Test
    void aMissingJdkIsOneSentenceThatSaysWhatToDo() throws Exception {
        Path jdk = folder.resolve("old-jdk");
        Path bin = Files.createDirectories(jdk.resolve("bin"));
        for (String tool : List.of("java", "javac")) {
            Path script = Files.writeString(bin.resolve(tool), "#!/bin/sh\nexit 1\n");
            assertTrue(script.toFile().setExecutable(true));
        }
        Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"17.0.1\"\n");
        String said =
                say(
                        69,
                        Map.of(
                                "PATH", bin + ":" + System.getenv("PATH"),
                                "STILLROOM_JVM_DIRS", folder.resolve("none").toString(),
                                "STILLROOM_CACHE", folder.resolve("cache").toString()),
                        "releng/format");
        assertEquals(1, said.lines().count(), said);
        assertTrue(said.contains("JDK 21"), said);
        assertTrue(said.contains("STILLROOM_JAVA_HOME"), said);
    }

    @Test
    void aMissingDisplayIsOneSentenceThatSaysWhatToDo() throws Exception {
        String said = say(69, Map.of(), "releng/stillroom");
        assertEquals(1, said.lines().count(), said);
        assertTrue(said.contains("DISPLAY"), said);
    }

    @Test
    void anUnknownBenchmarkPointsToTheList() throws Exception {
        String said = say(69, Map.of(), "releng/benchmark", "NoSuchBenchmark");
        assertTrue(said.contains("releng/benchmark lists them"), said);
    }

    /** Runs a script without display and JAVA_HOME; returns all that it said. */
    private String say(int expected, Map<String, String> environment, String... command)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command).directory(checkout.toFile());
        builder.command().set(0, checkout.resolve(command[0]).toString());
        for (String name :
                List.of("JAVA_HOME", "STILLROOM_JAVA_HOME", "DISPLAY", "WAYLAND_DISPLAY")) {
            builder.environment().remove(name);
        }
        builder.environment().putAll(environment);
        Process process = builder.redirectErrorStream(true).start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(expected, process.waitFor(), said);
        return said;
    }
}

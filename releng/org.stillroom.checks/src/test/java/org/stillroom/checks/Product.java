package org.stillroom.checks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The built product, used the way a person does: through its start script. */
record Product(Path folder, Path personal) {

    /** What one run of the start script left behind. */
    record Run(int exitCode, String out, String err) {}

    /** The product that this build made, with a fresh folder for everything personal. */
    static Product built(Path personal) {
        return new Product(Path.of(System.getProperty("stillroom.product")), personal);
    }

    Run run(String... words) throws IOException, InterruptedException {
        return run(Map.of(), words);
    }

    /**
     * Runs the start script with these words.
     *
     * @param environment what to set beyond the environment of the test; an empty value removes
     */
    Run run(Map<String, String> environment, String... words)
            throws IOException, InterruptedException {
        Path out = Files.createTempFile(personal, "out", ".txt");
        Path err = Files.createTempFile(personal, "err", ".txt");
        Process process =
                builder(environment, words)
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile())
                        .start();
        process.getOutputStream().close();
        if (!process.waitFor(5, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new AssertionError("still running after five minutes: " + List.of(words));
        }
        return new Run(
                process.exitValue(),
                Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
    }

    ProcessBuilder builder(Map<String, String> environment, String... words) {
        List<String> command = new ArrayList<>();
        command.add(folder.resolve("stillroom").toString());
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).directory(personal.toFile());
        Map<String, String> inherited = builder.environment();
        inherited.put("STILLROOM_HOME", personal.toString());
        inherited.put("STILLROOM_JAVA_HOME", System.getProperty("java.home"));
        environment.forEach(
                (name, value) -> {
                    if (value.isEmpty()) {
                        inherited.remove(name);
                    } else {
                        inherited.put(name, value);
                    }
                });
        return builder;
    }
}

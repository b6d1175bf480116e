package org.stillroom.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.equinox.app.IApplicationContext;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceRegistration;
import org.stillroom.cli.CommandLineApplication;
import org.stillroom.inquiry.Inquiry;

/** The command line inside OSGi, on the example library. */
class CommandLineTest {

    @TempDir Path folder;

    private final PrintStream out = System.out;
    private final PrintStream err = System.err;
    private final ByteArrayOutputStream said = new ByteArrayOutputStream();
    private final ByteArrayOutputStream complained = new ByteArrayOutputStream();

    private static ServiceRegistration<Inquiry> town;

    @BeforeAll
    static void register() {
        town =
                FrameworkUtil.getBundle(CommandLineTest.class)
                        .getBundleContext()
                        .registerService(Inquiry.class, new TownInquiry(), null);
    }

    @AfterAll
    static void unregister() {
        town.unregister();
    }

    @BeforeEach
    void listen() {
        System.setProperty("stillroom.example", example().toString());
        System.setProperty("stillroom.cache", folder.resolve("cache").toString());
        System.setProperty("stillroom.data", folder.resolve("data").toString());
        System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
        System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
    }

    @AfterEach
    void restore() {
        System.setOut(out);
        System.setErr(err);
    }

    private static Path example() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(at.resolve("corpus-example"))) {
            at = at.getParent();
        }
        return at.resolve("corpus-example");
    }

    private Object run(String... words) {
        said.reset();
        complained.reset();
        return new CommandLineApplication().start(new Words(words));
    }

    private String answer() {
        return said.toString(StandardCharsets.UTF_8);
    }

    /** Only the arguments are asked for. */
    private record Words(String[] words) implements IApplicationContext {
        @Override
        public Map<Object, Object> getArguments() {
            return Map.of(IApplicationContext.APPLICATION_ARGS, words);
        }

        @Override
        public void applicationRunning() {
            // a command line shows no splash screen
        }

        @Override
        public String getBrandingApplication() {
            return "";
        }

        @Override
        public String getBrandingName() {
            return "";
        }

        @Override
        public String getBrandingDescription() {
            return "";
        }

        @Override
        public String getBrandingId() {
            return "";
        }

        @Override
        public String getBrandingProperty(String key) {
            return "";
        }

        @Override
        public Bundle getBrandingBundle() {
            return null;
        }

        @Override
        public void setResult(Object result, org.eclipse.equinox.app.IApplication application) {
            throw new UnsupportedOperationException("the result is returned");
        }
    }

    @Test
    void anInquiryOfAnotherBundleIsACommandByItself() throws IOException {
        assertEquals(0, run("help"));
        assertTrue(answer().contains("count the sources of one town"), answer());
        assertEquals(0, run("help", "town"));
        assertTrue(answer().contains("Example: stillroom town Saltreath"), answer());
        assertEquals(0, run("town", "Saltreath", "--json"));
        assertTrue(new ObjectMapper().readTree(answer()).get("sources").asInt() > 5);
    }

    @Test
    void everyInquiryOfTheMainJobAnswers() throws IOException {
        for (String[] words :
                new String[][] {
                    {"sources", "--json"},
                    {"find", "ingredient:gin", "--json"},
                    {"versions", "harbour master's punch", "--json"},
                    {"lineage", "harbour master's punch", "--json"},
                    {"drift", "harbour master's punch", "--json"},
                    {"measure", "2 wineglasses", "--date", "1862", "--place", "GB", "--json"}
                }) {
            assertEquals(0, run(words), words[0] + complained.toString(StandardCharsets.UTF_8));
            JsonNode json = new ObjectMapper().readTree(answer());
            assertFalse(json.isEmpty(), words[0]);
        }
    }

    @Test
    void theExampleLibraryHasNothingToComplainOf() {
        assertEquals(0, run("sources"));
        String complaints = complained.toString(StandardCharsets.UTF_8);
        assertFalse(complaints.lines().anyMatch(l -> l.matches("\\S+:\\d+: .*")), complaints);
    }

    @Test
    void figuresTablesAndPageAreWritten() throws IOException {
        Path figures = folder.resolve("figures");
        Path page = folder.resolve("page.html");
        int code =
                (Integer)
                        run(
                                "lineage",
                                "harbour master's punch",
                                "--figures",
                                figures.toString(),
                                "--tables",
                                folder.resolve("tables").toString(),
                                "--report",
                                page.toString());
        assertEquals(0, code, complained.toString(StandardCharsets.UTF_8));
        assertTrue(Files.readString(figures.resolve("lineage.svg")).contains("<svg"));
        assertTrue(Files.size(figures.resolve("lineage.png")) > 1000);
        assertTrue(Files.readString(page).contains("<figure>"));
    }

    @Test
    void wrongWordsAreAnsweredWithTheNearestThatWouldWork() {
        assertEquals(2, run("verions", "punch"));
        assertTrue(complained.toString(StandardCharsets.UTF_8).contains("versions"));
        assertEquals(1, run("find", "ingrediant:gin"));
        assertTrue(complained.toString(StandardCharsets.UTF_8).contains("ingredient:"));
        assertEquals(1, run("versions", "no such drink anywhere"));
        assertEquals(1, run("sources", "--library", folder.resolve("absent").toString()));
        assertEquals(1, run("measure", "3 wineglases"));
        assertFalse(complained.toString(StandardCharsets.UTF_8).contains("Exception"));
    }
}

package org.stillroom.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Whoever receives the product finds every part of somebody else's named with its licence. */
class NoticesTest {

    private final Path product = Path.of(System.getProperty("stillroom.product"));

    @Test
    void everyShippedBundleIsInTheNoticesWithVersionAndLicence() throws IOException {
        Map<String, List<String>> notices = notices();
        TreeSet<String> wrong = new TreeSet<>();
        for (String[] bundle : shippedBundles()) {
            List<String> notice = notices.get(bundle[0]);
            if (notice == null) {
                wrong.add(bundle[0] + " " + bundle[1] + " is not listed");
            } else if (!bundle[1].startsWith(notice.get(0))) {
                wrong.add(bundle[0] + " is " + bundle[1] + ", listed as " + notice.get(0));
            } else if (notice.get(1).isBlank()) {
                wrong.add(bundle[0] + " has no licence");
            }
        }
        assertEquals(new TreeSet<>(), wrong);
    }

    @Test
    void theLicenceItselfTravelsWithTheProduct() throws IOException {
        String licence = Files.readString(product.resolve("LICENSE"));
        assertTrue(licence.startsWith("Eclipse Public License - v 2.0"));
        assertTrue(licence.contains("Exhibit A"));
    }

    /** Symbolic name and version of every bundle that is not ours. */
    private List<String[]> shippedBundles() throws IOException {
        Path info =
                product.resolve(
                        "configuration/org.eclipse.equinox.simpleconfigurator/bundles.info");
        List<String[]> bundles =
                Files.readAllLines(info).stream()
                        .filter(line -> !line.startsWith("#"))
                        .map(line -> line.split(","))
                        .filter(fields -> !fields[0].startsWith("org.stillroom."))
                        .toList();
        assertFalse(bundles.isEmpty());
        return bundles;
    }

    /** The rows of the notices: symbolic name to version and licence. */
    private Map<String, List<String>> notices() throws IOException {
        Map<String, List<String>> rows = new HashMap<>();
        for (String line : Files.readAllLines(product.resolve("THIRD-PARTY.md"))) {
            String[] cells = line.split("\\s*\\|\\s*");
            if (line.startsWith("| `") && cells.length >= 4) {
                rows.put(cells[1].replace("`", ""), List.of(cells[2], cells[3]));
            }
        }
        return rows;
    }
}

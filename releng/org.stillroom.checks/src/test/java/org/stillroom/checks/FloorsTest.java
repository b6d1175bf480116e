package org.stillroom.checks;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.EvaluationResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The floors of the house. A bundle may use what lies below it; on its own floor only what is
 * listed here; nothing above. Manifests cannot say this, because any of them can be widened.
 */
class FloorsTest {

    private static final String ROOT = "org.stillroom.";

    /** Each bundle's floor, from the JDK up. */
    private static final Map<String, Integer> FLOOR =
            new TreeMap<>(
                    Map.ofEntries(
                            Map.entry("model", 1),
                            Map.entry("measures", 2),
                            Map.entry("ingredients", 2),
                            Map.entry("library", 3),
                            Map.entry("reading", 3),
                            Map.entry("search", 4),
                            Map.entry("lineage", 4),
                            Map.entry("drift", 4),
                            Map.entry("inquiry", 5),
                            Map.entry("report", 6),
                            Map.entry("cli", 6),
                            Map.entry("workbench", 6),
                            Map.entry("workbench.library", 7),
                            Map.entry("workbench.trace", 7)));

    /** The few neighbours that may be used from the same floor. */
    private static final Map<String, Set<String>> NEIGHBOURS = Map.of("cli", Set.of("report"));

    /** Bundles that need less than the floors below them would allow. */
    private static final Map<String, Set<String>> ONLY =
            Map.of(
                    "library", Set.of("model"),
                    "search", Set.of("model"),
                    "lineage", Set.of("model"),
                    "drift", Set.of("model"));

    private static JavaClasses ours;

    @BeforeAll
    static void importOurClasses() {
        ours =
                new ClassFileImporter()
                        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                        .importPackages("org.stillroom");
    }

    @Test
    void everyBundleHasCodeAndAFloor() {
        Set<String> found = new TreeSet<>();
        for (JavaClass type : ours) {
            found.add(bundleOf(type.getPackageName()));
        }
        assertEquals(FLOOR.keySet(), found);
    }

    @TestFactory
    List<DynamicTest> noBundleReachesUpwardOrSideways() {
        List<DynamicTest> tests = new ArrayList<>();
        for (String bundle : FLOOR.keySet()) {
            tests.add(DynamicTest.dynamicTest(bundle, () -> checkFloor(bundle)));
        }
        return tests;
    }

    private static void checkFloor(String bundle) {
        Set<String> mayUse = allowedFor(bundle);
        DescribedPredicate<JavaClass> forbidden =
                DescribedPredicate.describe(
                        "are in another bundle than " + mayUse,
                        type ->
                                type.getPackageName().startsWith(ROOT)
                                        && !mayUse.contains(bundleOf(type.getPackageName())));
        check(
                noClasses()
                        .that(areIn(bundle))
                        .should()
                        .dependOnClassesThat(forbidden)
                        .evaluate(ours));
    }

    private static Set<String> allowedFor(String bundle) {
        Set<String> allowed = new TreeSet<>(Set.of(bundle));
        allowed.addAll(NEIGHBOURS.getOrDefault(bundle, Set.of()));
        if (ONLY.containsKey(bundle)) {
            allowed.addAll(ONLY.get(bundle));
            return allowed;
        }
        FLOOR.forEach(
                (other, floor) -> {
                    if (floor < FLOOR.get(bundle)) {
                        allowed.add(other);
                    }
                });
        return allowed;
    }

    @Test
    void theModelStandsOnTheJdkAlone() {
        check(
                classes()
                        .that(areIn("model"))
                        .should()
                        .onlyDependOnClassesThat()
                        .resideInAnyPackage("java..", "org.stillroom.model..")
                        .evaluate(ours));
    }

    @Test
    void onlySearchKnowsLucene() {
        check(
                noClasses()
                        .that(DescribedPredicate.not(areIn("search")))
                        .should()
                        .dependOnClassesThat()
                        .resideInAPackage("org.apache.lucene..")
                        .evaluate(ours));
    }

    @Test
    void onlyTheWorkbenchKnowsWidgets() {
        check(
                noClasses()
                        .that()
                        .resideOutsideOfPackage("org.stillroom.workbench..")
                        .should()
                        .dependOnClassesThat()
                        .resideInAnyPackage(
                                "org.eclipse.swt..", "org.eclipse.jface..", "org.eclipse.e4..")
                        .evaluate(ours));
    }

    @Test
    void noFieldIsStaticAndMutable() {
        check(
                fields().that()
                        .areStatic()
                        .and()
                        .haveNameNotMatching("\\$.*") // the compiler keeps a table per switch
                        .and()
                        .areDeclaredInClassesThat()
                        .resideInAPackage("org.stillroom..")
                        .should()
                        .beFinal()
                        .evaluate(ours));
    }

    /**
     * A bundle's root package is its front: it holds the nouns that the parts behind it use, and may
     * use those parts itself. Among themselves the parts form no circle.
     */
    @Test
    void partsOfABundleFormNoCircle() {
        check(
                slices().matching("org.stillroom.(**)")
                        .should()
                        .beFreeOfCycles()
                        .ignoreDependency(
                                DescribedPredicate.describe(
                                        "stand at the front of a bundle", FloorsTest::isFront),
                                DescribedPredicate.alwaysTrue())
                        .evaluate(ours));
    }

    private static boolean isFront(JavaClass type) {
        String packageName = type.getPackageName();
        return packageName.equals(ROOT + bundleOf(packageName));
    }

    private static DescribedPredicate<JavaClass> areIn(String bundle) {
        return DescribedPredicate.describe(
                "are in " + bundle, type -> bundleOf(type.getPackageName()).equals(bundle));
    }

    /** The bundle that a package lies in: the longest bundle name that the package starts with. */
    private static String bundleOf(String packageName) {
        String rest =
                packageName.startsWith(ROOT) ? packageName.substring(ROOT.length()) : packageName;
        String best = "";
        for (String bundle : FLOOR.keySet()) {
            boolean inside = rest.equals(bundle) || rest.startsWith(bundle + ".");
            if (inside && bundle.length() > best.length()) {
                best = bundle;
            }
        }
        return best.isEmpty() ? rest : best;
    }

    private static void check(EvaluationResult result) {
        List<String> details = result.getFailureReport().getDetails();
        assertTrue(
                details.isEmpty(),
                () ->
                        details.size()
                                + " breaches, the first of them:\n"
                                + String.join(
                                        "\n", details.subList(0, Math.min(20, details.size()))));
    }
}

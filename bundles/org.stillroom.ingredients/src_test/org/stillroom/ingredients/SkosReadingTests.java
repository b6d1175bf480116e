package org.stillroom.ingredients;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.eclipse.rdf4j.model.Model;
import org.eclipse.rdf4j.model.impl.LinkedHashModel;
import org.eclipse.rdf4j.model.vocabulary.RDF;
import org.eclipse.rdf4j.model.vocabulary.SKOS;
import org.eclipse.rdf4j.rio.helpers.BasicParserSettings;
import org.eclipse.rdf4j.rio.helpers.StatementCollector;
import org.eclipse.rdf4j.rio.turtle.TurtleParser;
import org.junit.jupiter.api.Test;
import org.stillroom.ingredients.knowledge.AllergenRow;
import org.stillroom.ingredients.knowledge.FigureRow;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.KnowledgeReader;
import org.stillroom.ingredients.knowledge.LabelRow;
import org.stillroom.ingredients.skos.SkosTurtle;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/** SKOS files of a user, and our own export read back; Turtle and RDF/XML by Eclipse RDF4J. */
class SkosReadingTests {

    private static final String PREFIXES =
            "@prefix skos: <http://www.w3.org/2004/02/skos/core#> .\n"
                    + "@prefix dcterms: <http://purl.org/dc/terms/> .\n"
                    + "@prefix q: <https://quay.example/thesaurus/> .\n";

    private static Thesaurus.Loaded read(String path, String text) {
        return Thesaurus.shipped().with(List.of(new KnowledgeFile(path, text)));
    }

    /** The library's own reader of Turtle finds in the export what the thesaurus holds. */
    @Test
    void theExportIsTurtleForAnIndependentParser() throws Exception {
        Model model = new LinkedHashModel();
        TurtleParser parser = new TurtleParser();
        parser.getParserConfig()
                .set(BasicParserSettings.DATATYPE_HANDLERS, List.of())
                .set(BasicParserSettings.LANGUAGE_HANDLERS, List.of());
        parser.setRDFHandler(new StatementCollector(model));
        parser.parse(new StringReader(SkosTurtle.write(Thesaurus.shipped())), "urn:x:");
        assertEquals(
                Thesaurus.shipped().senses().size(),
                model.filter(null, RDF.TYPE, SKOS.CONCEPT).size());
        assertEquals(
                Thesaurus.shipped().senses().size(),
                model.filter(null, SKOS.PREF_LABEL, null).size());
        long broader =
                Thesaurus.shipped().senses().values().stream()
                        .mapToLong(s -> s.broader().size())
                        .sum();
        assertEquals(broader, model.filter(null, SKOS.BROADER, null).size());
    }

    private static Knowledge readBack(Thesaurus thesaurus) {
        List<Problem> problems = new ArrayList<>();
        Knowledge back =
                KnowledgeReader.read(
                        List.of(new KnowledgeFile("export.ttl", SkosTurtle.write(thesaurus))),
                        ShippedData.read().sources().forUser(),
                        Knowledge.NONE,
                        problems);
        assertEquals(List.of(), problems);
        return back;
    }

    /** Every field of every row, sources with their status included. */
    private static void assertNothingIsLost(Knowledge ours, Knowledge back) {
        assertEquals(ours.senses().keySet(), back.senses().keySet());
        ours.senses().forEach((id, sense) -> assertEquals(sense, back.senses().get(id), id));
        Map<String, Set<String>> names = names(ours);
        Map<String, Set<String>> namesBack = names(back);
        names.forEach(
                (id, set) -> {
                    Set<String> lost = new TreeSet<>(set);
                    lost.removeAll(namesBack.get(id));
                    Set<String> more = new TreeSet<>(namesBack.get(id));
                    more.removeAll(set);
                    assertEquals(Set.of(), lost, id + " lost");
                    assertEquals(Set.of(), more, id + " gained");
                });
        assertEquals(figures(ours), figures(back));
        assertEquals(allergens(ours), allergens(back));
        assertEquals(byId(ours.hazards(), Hazard::id), byId(back.hazards(), Hazard::id));
        assertEquals(
                byId(ours.milestones(), Milestone::id), byId(back.milestones(), Milestone::id));
        assertEquals(ours.moved(), back.moved());
    }

    @Test
    void theExportReadBackLosesNothing() {
        Knowledge ours = ShippedData.read().knowledge();
        assertNothingIsLost(ours, readBack(Thesaurus.shipped()));
    }

    /** What a user added, merged and wrote goes out and comes back too. */
    @Test
    void rowsAndDecisionsOfAUserAreNotLostEither() {
        Thesaurus.Loaded more =
                Thesaurus.shipped()
                        .with(
                                List.of(
                                        new KnowledgeFile(
                                                "ingredients-quay.csv",
                                                "id,label,role,scope,source\n"
                                                        + "zorbwort,zorbwort,herb,\"a \"\"bitter\"\" weed\",me\n"),
                                        new KnowledgeFile(
                                                "ingredients-quay-a.csv",
                                                "sense,allergen,presence,source\n"
                                                        + "zorbwort,celery,possible,me\nrum,unknown,,me\n"),
                                        new KnowledgeFile(
                                                "ingredients-quay-h.csv",
                                                "id,level,senses,words,region,what,rule,source\n"
                                                        + "zorb,stop,zorbwort,zorbing;in zorb,GB,A weed.,None sold.,me\n"),
                                        new KnowledgeFile(
                                                "ingredients-quay-m.csv",
                                                "id,kind,subjects,first,last,place,statement,source\n"
                                                        + "zorb,ingredient,zorbwort,1820,1860,GB,Grown there.,me\n")));
        assertEquals(List.of(), more.problems());
        Thesaurus.Loaded edited =
                more.thesaurus()
                        .apply(
                                List.of(
                                        new ThesaurusEdit.Merge("calamus", "ginger"),
                                        new ThesaurusEdit.AddLabel(
                                                "rum", "quaywater", Label.Kind.ALTERNATIVE, "en")));
        assertEquals(List.of(), edited.problems());
        assertNothingIsLost(moved(edited.thesaurus().rows()), readBack(edited.thesaurus()));
    }

    /** Rows under the ids that stand for them after merges, as an export has them. */
    private static Knowledge moved(Knowledge rows) {
        return new Knowledge(
                rows.senses(),
                rows.labels().stream().map(l -> l.withSense(rows.current(l.sense()))).toList(),
                rows.figures().stream().map(f -> f.withSense(rows.current(f.sense()))).toList(),
                rows.allergens().stream().map(a -> a.withSense(rows.current(a.sense()))).toList(),
                rows.hazards().stream()
                        .map(
                                h ->
                                        new Hazard(
                                                h.id(),
                                                h.level(),
                                                h.senses().stream()
                                                        .map(rows::current)
                                                        .distinct()
                                                        .toList(),
                                                h.triggers(),
                                                h.region(),
                                                h.what(),
                                                h.rule(),
                                                h.source()))
                        .toList(),
                rows.milestones(),
                rows.moved());
    }

    private static Set<AllergenRow> allergens(Knowledge rows) {
        return new HashSet<>(rows.allergens());
    }

    private static <T> Map<String, T> byId(List<T> all, Function<T, String> id) {
        Map<String, T> byId = new TreeMap<>();
        all.forEach(one -> byId.put(id.apply(one), one));
        return byId;
    }

    @Test
    void aPersonReadsAllergensHazardsAndDatesAsNotes() {
        String text = SkosTurtle.write(Thesaurus.shipped());
        String calamus = text.substring(text.indexOf("\n<urn:stillroom:ingredient:calamus> "));
        calamus = calamus.substring(0, calamus.indexOf(" .\n"));
        assertTrue(calamus.contains("skos:note \"Caution, not to be served: "), calamus);
        String milk = text.substring(text.indexOf("\n<urn:stillroom:ingredient:milk> "));
        milk = milk.substring(0, milk.indexOf(" .\n"));
        assertTrue(milk.contains("skos:note \"Allergen: contains milk ("), milk);
        assertTrue(text.contains("skos:historyNote "));
    }

    @Test
    void statementsInOurTermsThatMakeNoSenseAreReported() {
        String terms = PREFIXES + "@prefix st: <urn:stillroom:terms:> .\n";
        Problem allergen =
                only(
                        "a.ttl",
                        terms
                                + "q:abc a skos:Concept ; skos:prefLabel \"abc\"@en ;\n"
                                + " dcterms:type \"herb\" ;\n st:allergenStatement"
                                + " [ st:allergen \"celrey\" ; st:presence \"contains\" ] .\n");
        assertEquals("celrey", allergen.words());
        assertTrue(allergen.remedy().startsWith("The nearest is celery"), allergen.remedy());
        Problem presence =
                only(
                        "a.ttl",
                        terms
                                + "q:abc a skos:Concept ; skos:prefLabel \"abc\"@en ;\n"
                                + " dcterms:type \"herb\" ;\n"
                                + " st:allergenStatement [ st:presence \"contains\" ] .\n");
        assertTrue(presence.reason().contains("does not fit"), presence.reason());
        Problem level =
                only(
                        "a.ttl",
                        terms + "<urn:stillroom:hazard:x> a st:Hazard ; st:level \"stopp\" .\n");
        assertTrue(level.remedy().startsWith("The nearest is stop"), level.remedy());
        Problem half =
                only(
                        "a.ttl",
                        terms + "<urn:stillroom:hazard:x> a st:Hazard ; st:level \"stop\" .\n");
        assertTrue(half.reason().contains("not whole"), half.reason());
        Problem sense =
                only(
                        "a.ttl",
                        terms
                                + "<urn:stillroom:hazard:x> a st:Hazard ; st:level \"stop\" ;"
                                + " dcterms:description \"A.\" ; st:rule \"B.\" ;"
                                + " st:goesWith <urn:stillroom:ingredient:no-such> .\n");
        assertEquals("no-such", sense.words());
        Problem kind =
                only(
                        "a.ttl",
                        terms
                                + "<urn:stillroom:milestone:x> a st:Milestone ;"
                                + " st:milestoneKind \"untit\" .\n");
        assertTrue(kind.remedy().startsWith("The nearest is unit"), kind.remedy());
    }

    /** Every name with its language and limits; the sort of a name that is given twice may differ. */
    private static Map<String, Set<String>> names(Knowledge rows) {
        Map<String, Set<String>> names = new TreeMap<>();
        rows.senses()
                .forEach(
                        (id, s) ->
                                names.computeIfAbsent(id, x -> new TreeSet<>())
                                        .add(
                                                s.label()
                                                        + "@en "
                                                        + Validity.ALWAYS
                                                        + ' '
                                                        + s.source()));
        for (LabelRow row : rows.labels()) {
            Label l = row.label();
            names.get(row.sense())
                    .add(
                            l.text()
                                    + '@'
                                    + l.language().toLowerCase(java.util.Locale.ROOT)
                                    + ' '
                                    + l.validity()
                                    + ' '
                                    + l.source());
        }
        return names;
    }

    private static Set<String> figures(Knowledge rows) {
        Map<String, String> last = new TreeMap<>();
        for (FigureRow f : rows.figures()) {
            last.put(
                    f.sense() + ' ' + f.quantity(),
                    f.low() + " " + f.likely() + " " + f.high() + " " + f.source());
        }
        Set<String> all = new TreeSet<>();
        last.forEach((k, v) -> all.add(k + ' ' + v));
        return all;
    }

    @Test
    void aUsersConceptsBecomeSenses() {
        Thesaurus.Loaded loaded =
                read(
                        "knowledge/quay.ttl",
                        PREFIXES
                                + "q:scheme a skos:ConceptScheme ; dcterms:title \"Words of the quay\" .\n"
                                + "q:zorbwort a skos:Concept ;\n"
                                + "  skos:prefLabel \"zorbwort\"@en, \"Zorbwurz\"@de ;\n"
                                + "  skos:altLabel \"quay weed\"@en ; skos:hiddenLabel \"sorbwort\"@en ;\n"
                                + "  skos:definition \"a bitter weed\"@en ; dcterms:type \"herb\" ;\n"
                                + "  skos:broader <urn:stillroom:ingredient:herb> ;\n"
                                + "  dcterms:temporal \"1820/1860\" ; dcterms:spatial \"GB\" .\n"
                                + "q:n1 skos:exactMatch <urn:stillroom:ingredient:rum> ;\n"
                                + "  a skos:Concept ; skos:altLabel \"quaywater\"@en .\n");
        assertEquals(List.of(), loaded.problems());
        Sense sense = loaded.thesaurus().sense("zorbwort").orElseThrow();
        assertEquals(IngredientKind.HERB, sense.kind());
        assertEquals(List.of("herb"), sense.broader());
        assertEquals("1820–1860", sense.validity().years());
        assertEquals("a bitter weed", sense.scope());
        assertEquals("Words of the quay", sense.source().work());
        for (String name : List.of("quay weed", "sorbwort", "Zorbwurz")) {
            assertEquals(
                    "zorbwort",
                    loaded.thesaurus().find(name, Circumstances.UNKNOWN).get(0).sense().id(),
                    name);
        }
        assertEquals(
                "rum",
                loaded.thesaurus().find("quaywater", Circumstances.UNKNOWN).get(0).sense().id());
        assertEquals(
                Thesaurus.shipped().sense("rum").orElseThrow(),
                loaded.thesaurus().sense("rum").orElseThrow());
    }

    @Test
    void rdfXmlIsReadToo() {
        Thesaurus.Loaded loaded =
                read(
                        "knowledge/quay.rdf",
                        "<?xml version=\"1.0\"?>\n"
                                + "<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"\n"
                                + "  xmlns:skos=\"http://www.w3.org/2004/02/skos/core#\"\n"
                                + "  xmlns:dcterms=\"http://purl.org/dc/terms/\">\n"
                                + "<skos:Concept rdf:about=\"https://quay.example/7\">\n"
                                + "  <skos:notation>zorbwort</skos:notation>\n"
                                + "  <skos:prefLabel xml:lang=\"en\">zorbwort</skos:prefLabel>\n"
                                + "  <dcterms:type>herb</dcterms:type>\n"
                                + "</skos:Concept></rdf:RDF>\n");
        assertEquals(List.of(), loaded.problems());
        assertTrue(loaded.thesaurus().sense("zorbwort").isPresent());
    }

    private static Problem only(String path, String text) {
        Thesaurus.Loaded loaded = read(path, text);
        assertEquals(1, loaded.problems().size(), loaded.problems().toString());
        return loaded.problems().getFirst();
    }

    @Test
    void badFilesAreReportedWithLineAndReason() {
        Problem syntax =
                only(
                        "a.ttl",
                        PREFIXES + "q:a a skos:Concept ;\n  skos:prefLabel \"never closed@en .\n");
        assertEquals(5, syntax.line().orElseThrow());
        assertTrue(syntax.reason().startsWith("It is not Turtle"), syntax.reason());
        Problem prefix = only("a.ttl", "q:a a skos:Concept .\n");
        assertEquals(1, prefix.line().orElseThrow());
        Problem xml = only("a.rdf", "<rdf:RDF>\n<oops>\n");
        assertTrue(xml.reason().startsWith("It is not RDF/XML"), xml.reason());
        Problem entity =
                only(
                        "a.rdf",
                        "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]>\n<x>&e;</x>\n");
        assertEquals(Problem.Severity.ERROR, entity.severity());
        Problem bare =
                only("a.ttl", PREFIXES + "\nq:abc a skos:Concept ; dcterms:type \"herb\" .\n");
        assertEquals(5, bare.line().orElseThrow());
        assertTrue(bare.reason().contains("no skos:prefLabel"));
        Problem role =
                read(
                                "a.ttl",
                                PREFIXES
                                        + "q:abc a skos:Concept ; skos:prefLabel \"abc\"@en ;"
                                        + " dcterms:type \"hreb\" .\n")
                        .problems()
                        .getFirst();
        assertEquals("hreb", role.words());
        Problem missing =
                only(
                        "a.ttl",
                        PREFIXES
                                + "q:abc a skos:Concept ; skos:prefLabel \"abc\"@en ;"
                                + " dcterms:type \"herb\" ; skos:broader q:nowhere .\n");
        assertTrue(missing.reason().contains("not in the file"), missing.reason());
        Problem circle =
                read(
                                "a.ttl",
                                PREFIXES
                                        + "q:abc a skos:Concept ; skos:prefLabel \"abc\"@en ; dcterms:type"
                                        + " \"herb\" ; skos:broader q:def .\n"
                                        + "q:def a skos:Concept ; skos:prefLabel \"def\"@en ; dcterms:type"
                                        + " \"herb\" ; skos:broader q:abc .\n")
                        .problems()
                        .getFirst();
        assertTrue(circle.reason().contains("broader than itself"), circle.reason());
        Problem twice =
                only(
                        "a.ttl",
                        PREFIXES
                                + "q:abc a skos:Concept ; skos:prefLabel \"abc\"@en, \"other\"@en ;"
                                + " dcterms:type \"herb\" .\n");
        assertTrue(twice.reason().contains("S14"), twice.reason());
        Problem match =
                only(
                        "a.ttl",
                        PREFIXES
                                + "q:abc a skos:Concept ; skos:altLabel \"abc\"@en ;"
                                + " skos:exactMatch <urn:stillroom:ingredient:no-such> .\n");
        assertEquals("no-such", match.words());
    }
}

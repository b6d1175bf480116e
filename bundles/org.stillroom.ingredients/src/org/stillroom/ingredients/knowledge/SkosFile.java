package org.stillroom.ingredients.knowledge;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.rdf4j.model.IRI;
import org.eclipse.rdf4j.model.Literal;
import org.eclipse.rdf4j.model.Resource;
import org.eclipse.rdf4j.model.Statement;
import org.eclipse.rdf4j.model.Value;
import org.eclipse.rdf4j.model.vocabulary.RDF;
import org.eclipse.rdf4j.model.vocabulary.SKOS;
import org.eclipse.rdf4j.model.vocabulary.SKOSXL;
import org.eclipse.rdf4j.rio.RDFParseException;
import org.eclipse.rdf4j.rio.RDFParser;
import org.eclipse.rdf4j.rio.helpers.AbstractRDFHandler;
import org.eclipse.rdf4j.rio.helpers.BasicParserSettings;
import org.eclipse.rdf4j.rio.helpers.XMLParserSettings;
import org.eclipse.rdf4j.rio.rdfxml.RDFXMLParser;
import org.eclipse.rdf4j.rio.turtle.TurtleParser;
import org.stillroom.ingredients.KnowledgeFile;
import org.stillroom.model.explain.Problem;

/** The statements of a file in Turtle or RDF/XML, with the line on which each subject stands. */
final class SkosFile {

    private final String path;
    private final Map<Resource, List<Statement>> bySubject = new HashMap<>();
    private final Map<Resource, Integer> lines = new HashMap<>();
    private final List<Resource> subjects = new ArrayList<>();

    private SkosFile(String path) {
        this.path = path;
    }

    /** Tells whether a file is one of RDF by its name. */
    static boolean isOne(KnowledgeFile file) {
        return isTurtle(file) || file.path().endsWith(".rdf");
    }

    private static boolean isTurtle(KnowledgeFile file) {
        return file.path().endsWith(".ttl");
    }

    /** Reads a file; one that is no RDF is reported with its line and left out. */
    static Optional<SkosFile> read(KnowledgeFile file, List<Problem> problems) {
        SkosFile read = new SkosFile(file.path());
        RDFParser parser = isTurtle(file) ? new TurtleParser() : new RDFXMLParser();
        parser.getParserConfig()
                .set(BasicParserSettings.DATATYPE_HANDLERS, List.of())
                .set(BasicParserSettings.LANGUAGE_HANDLERS, List.of())
                .set(XMLParserSettings.DISALLOW_DOCTYPE_DECL, true)
                .set(XMLParserSettings.LOAD_EXTERNAL_DTD, false)
                .set(XMLParserSettings.EXTERNAL_GENERAL_ENTITIES, false)
                .set(XMLParserSettings.EXTERNAL_PARAMETER_ENTITIES, false)
                .set(XMLParserSettings.SECURE_PROCESSING, true);
        Collector collector = read.new Collector();
        parser.setParseLocationListener((line, column) -> collector.line = (int) line);
        parser.setRDFHandler(collector);
        try {
            parser.parse(new StringReader(file.text()), "urn:stillroom:file:");
            return Optional.of(read);
        } catch (RDFParseException e) {
            int line = e.getLineNumber() > 0 ? (int) e.getLineNumber() : 1;
            problems.add(bad(file, line, e.getMessage()));
        } catch (IOException | RuntimeException e) {
            problems.add(bad(file, Math.max(1, collector.line), String.valueOf(e.getMessage())));
        }
        return Optional.empty();
    }

    private static Problem bad(KnowledgeFile file, int line, String message) {
        String form = isTurtle(file) ? "Turtle" : "RDF/XML";
        String first = message.lines().findFirst().orElse("").replaceAll(" ?\\[line .*", "");
        String words =
                file.text().lines().skip(line - 1L).findFirst().map(String::strip).orElse("");
        return Problem.error(
                file.path(),
                line,
                words.length() > 60 ? words.substring(0, 60) + "…" : words,
                "It is not " + form + ": " + first.replaceAll("[.\\s]+$", "") + ".",
                "Mend this line; until then the whole file is left out and all others are read.");
    }

    /** Takes the statements one by one. */
    private final class Collector extends AbstractRDFHandler {
        private int line = 1;

        @Override
        public void handleStatement(Statement s) {
            Resource subject = s.getSubject();
            if (!bySubject.containsKey(subject)) {
                subjects.add(subject);
                lines.put(subject, Math.max(1, line));
            }
            bySubject.computeIfAbsent(subject, x -> new ArrayList<>()).add(s);
        }
    }

    /** Returns the file's path as the user knows it. */
    String path() {
        return path;
    }

    /** Returns the line on which a subject stands first. */
    int line(Resource subject) {
        return lines.getOrDefault(subject, 1);
    }

    /** Returns the concepts, in the order of the file. */
    List<Resource> concepts() {
        return subjects.stream()
                .filter(
                        s ->
                                all(s, RDF.TYPE).contains(SKOS.CONCEPT)
                                        || !all(s, SKOS.PREF_LABEL).isEmpty()
                                        || !all(s, SKOSXL.PREF_LABEL).isEmpty())
                .toList();
    }

    /** Returns every subject, in the order of the file. */
    List<Resource> subjects() {
        return List.copyOf(subjects);
    }

    /** Returns the subjects of a class, in the order of the file. */
    List<Resource> ofType(IRI type) {
        return subjects.stream().filter(s -> all(s, RDF.TYPE).contains(type)).toList();
    }

    /** Returns the concept schemes, in the order of the file. */
    List<Resource> schemes() {
        return subjects.stream()
                .filter(s -> all(s, RDF.TYPE).contains(SKOS.CONCEPT_SCHEME))
                .toList();
    }

    /** Returns the objects of a subject's statements with one of these properties. */
    List<Value> all(Resource subject, IRI... properties) {
        Set<IRI> wanted = Set.of(properties);
        return bySubject.getOrDefault(subject, List.of()).stream()
                .filter(s -> wanted.contains(s.getPredicate()))
                .map(Statement::getObject)
                .toList();
    }

    /** Returns the resources among the objects. */
    List<Resource> resources(Resource subject, IRI... properties) {
        return all(subject, properties).stream()
                .filter(Value::isResource)
                .map(v -> (Resource) v)
                .toList();
    }

    /** Returns the literals among the objects. */
    List<Literal> literals(Resource subject, IRI... properties) {
        return all(subject, properties).stream()
                .filter(Value::isLiteral)
                .map(v -> (Literal) v)
                .toList();
    }

    /** Returns the words of the first literal, English before others. */
    Optional<String> words(Resource subject, IRI... properties) {
        List<Literal> found = literals(subject, properties);
        return found.stream()
                .filter(l -> l.getLanguage().orElse("en").startsWith("en"))
                .findFirst()
                .or(() -> found.stream().findFirst())
                .map(Literal::getLabel)
                .map(String::strip)
                .filter(w -> !w.isEmpty());
    }

    /** Returns the words of every literal, sorted. */
    Set<String> everyWord(Resource subject, IRI... properties) {
        Set<String> words = new TreeSet<>();
        literals(subject, properties).forEach(l -> words.add(l.getLabel().strip()));
        return words;
    }
}

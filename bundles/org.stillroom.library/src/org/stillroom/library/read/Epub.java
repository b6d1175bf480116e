package org.stillroom.library.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import javax.xml.stream.XMLStreamReader;
import org.jsoup.nodes.Document;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/** Reads EPUB (3.3 and 2.0.1): the chapters in their order, with the pages of the printed book. */
final class Epub implements SourceReader {

    private static final String KIND = "EPUB";

    private final FileAccess access;

    Epub(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".epub");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        return TimedReading.of(
                id,
                access.limits(),
                budget -> draft(id, file, budget).bind(id, file, defaults, access));
    }

    private Draft draft(String id, Path file, TimeBudget budget) throws Refused {
        Limits limits = access.limits();
        String digest = access.digest(id, file, limits.containerBytes(), budget);
        try (Container container = Container.open(id, file, KIND, limits, budget)) {
            OwnFields fields = new OwnFields(id);
            String part = root(id, container);
            EpubPackage book = new EpubPackage(part, fields);
            container.read(part, book);
            EpubLock lock = new EpubLock();
            container.read("META-INF/encryption.xml", lock);
            if (book.order().stream().anyMatch(lock::holds)) {
                throw Refused.of(
                        id,
                        "Its words are encrypted (digital rights management).",
                        "Only the shop’s own program opens it: use another copy, or transcribe "
                                + "what you need from the printed book.");
            }
            List<Problem> problems = new ArrayList<>();
            BlockText words = new BlockText(budget);
            new Chapters(id, container, book, budget).add(words, problems);
            return new Draft(words.text(), words.marks(), fields.fields(), digest, problems);
        }
    }

    /** Returns the name of the package document. */
    private static String root(String id, Container container) throws Refused {
        Root root = new Root();
        container.read("META-INF/container.xml", root);
        return root.part
                .filter(container::has)
                .or(() -> container.names().stream().filter(n -> n.endsWith(".opf")).findFirst())
                .orElseThrow(
                        () ->
                                Refused.of(
                                        id,
                                        "It is not an EPUB file: it has no package document "
                                                + "(.opf).",
                                        "Look whether its name has the right ending, or get it "
                                                + "again from where it came."));
    }

    /** Finds the package document. */
    private static final class Root implements SafeXml.Handler {
        private Optional<String> part = Optional.empty();

        @Override
        public void start(String name, XMLStreamReader xml) {
            if (name.equals("rootfile") && part.isEmpty()) {
                String path = OdtStyles.attribute(xml, "full-path");
                part = Optional.of(Hrefs.resolve("", path));
            }
        }

        @Override
        public void end(String name, XMLStreamReader xml) {
            // everything stands in attributes
        }

        @Override
        public void words(String characters) {
            // everything stands in attributes
        }
    }

    /** The chapters of one book. */
    private record Chapters(String id, Container container, EpubPackage book, TimeBudget budget) {

        void add(BlockText words, List<Problem> problems) throws Refused {
            EpubPages pages = pages();
            for (String part : book.order()) {
                Optional<Document> chapter = parse(part);
                if (chapter.isEmpty()) {
                    problems.add(missing(part));
                    continue;
                }
                words.breakLine(2);
                Map<String, String> labels = pages.of(part);
                Optional.ofNullable(labels.get("")).ifPresent(words::page);
                new HtmlWords(words, labels).add(chapter.get());
            }
            if (book.lost() > 0) {
                problems.add(missing(book.lost() + " without a name"));
            }
        }

        private EpubPages pages() throws Refused {
            EpubPages pages = new EpubPages();
            Optional<String> navigation = book.navigation();
            if (navigation.isPresent()) {
                parse(navigation.get()).ifPresent(n -> pages.take(navigation.get(), n));
            }
            Optional<String> table = book.table();
            if (table.isPresent()) {
                pages.take(table.get(), container);
            }
            return pages;
        }

        private Optional<Document> parse(String part) throws Refused {
            Optional<byte[]> bytes = container.part(part);
            if (bytes.isEmpty()) {
                return Optional.empty();
            }
            FileText text = FileText.of(id, bytes.get(), Html.charset(id, bytes.get()));
            return Optional.of(Html.parse(id, part, text.text(), true, budget));
        }

        private Problem missing(String part) {
            return new Problem(
                    Problem.Severity.WARNING,
                    id,
                    OptionalInt.empty(),
                    part,
                    "A part of the book is named in its order of reading and not there.",
                    "The other parts were read; get the file again from where it came.");
        }
    }
}

package org.stillroom.library.read;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.stillroom.model.explain.Problem;
import org.stillroom.model.source.Circumstances;

/** Reads the text of PDF files (ISO 32000), page by page, in the order in which it was set. */
final class Pdf implements SourceReader {

    private final FileAccess access;

    Pdf(FileAccess access) {
        this.access = access;
    }

    @Override
    public List<String> endings() {
        return List.of(".pdf");
    }

    @Override
    public Result read(String id, Path file, Circumstances defaults) {
        return TimedReading.of(
                id,
                access.limits(),
                budget -> draft(id, file, budget).bind(id, file, defaults, access));
    }

    private Draft draft(String id, Path file, TimeBudget budget) throws Refused {
        String digest = access.digest(id, file, access.limits().pdfBytes(), budget);
        FontMappers.set(Fonts.ALL);
        try {
            new PdfStreams(id, access.limits(), budget).check(file);
            try (PdfFile bytes = new PdfFile(file, budget);
                    PDDocument document = Loader.loadPDF(bytes)) {
                return draft(id, document, digest, budget);
            }
        } catch (InvalidPasswordException e) {
            throw locked(id);
        } catch (IOException e) {
            throw broken(id, file, e);
        } catch (LinkageError e) {
            // protection by certificates needs a library that is not shipped
            throw locked(id);
        }
    }

    /** Made when the first PDF is read. */
    private static final class Fonts {
        private static final PdfFonts ALL = new PdfFonts();
    }

    private static Refused locked(String id) {
        return Refused.of(
                id,
                "It is protected with a password or a certificate.",
                "Open it in a program that you can give the password to, and save it without.");
    }

    private static Refused broken(String id, Path file, IOException e) {
        String what =
                Signature.of(file)
                        .filter(s -> s != Signature.PDF)
                        .map(s -> "It is not a PDF file: " + s.what() + ".")
                        .orElse("It is not a whole PDF file (" + e.getMessage() + ").");
        return Refused.of(
                id,
                what,
                "Copy it again, or print it to a new PDF file; or save its words as plain text.");
    }

    private Draft draft(String id, PDDocument document, String digest, TimeBudget budget)
            throws IOException, Refused {
        int size = document.getNumberOfPages();
        if (size > access.limits().pages()) {
            throw Refused.of(
                    id,
                    "It has "
                            + size
                            + " pages; of more than "
                            + access.limits().pages()
                            + " none is read.",
                    "Cut it into one file for each book.");
        }
        if (!document.getCurrentAccessPermission().canExtractContent()) {
            throw Refused.of(
                    id,
                    "Its maker does not allow its words to be taken out.",
                    "Ask for a copy without that restriction, or transcribe what you need.");
        }
        PdfStripper stripper = new PdfStripper(budget);
        List<PdfPage> pages = stripper.pages(document);
        List<Problem> problems = problems(id, pages, stripper.damaged());
        BlockText words = new BlockText(budget);
        PdfLabels labels = new PdfLabels(document, pages);
        PdfWords text = new PdfWords(words, pages);
        for (int i = 0; i < pages.size(); i++) {
            text.add(pages.get(i), labels.of(i));
        }
        return new Draft(
                words.text(), words.marks(), fields(id, document).fields(), digest, problems);
    }

    private static List<Problem> problems(String id, List<PdfPage> pages, List<Integer> damaged)
            throws Refused {
        long pictures = pages.stream().filter(p -> p.isBlank() && p.pictured()).count();
        if (pages.stream().allMatch(PdfPage::isBlank) && damaged.isEmpty()) {
            throw Refused.of(
                    id,
                    pictures == 0
                            ? "There is no text in it."
                            : "It holds pictures of " + pictures + " pages and no text.",
                    "Run text recognition over it and save PDF with text, hOCR or plain text.");
        }
        List<Problem> problems = new ArrayList<>();
        if (pictures > 0) {
            problems.add(
                    Problem.warning(
                            id,
                            "Of its "
                                    + pages.size()
                                    + " pages "
                                    + pictures
                                    + " are pictures without text.",
                            "If they hold recipes, run text recognition over it."));
        }
        if (!damaged.isEmpty()) {
            problems.add(
                    Problem.warning(
                            id,
                            "Damaged pages were left out: " + list(damaged) + ".",
                            "Print it to a new PDF file, or type those pages in."));
        }
        return problems;
    }

    private static String list(List<Integer> numbers) {
        List<String> first = numbers.stream().limit(10).map(String::valueOf).toList();
        return String.join(", ", first) + (numbers.size() > 10 ? " and more" : "");
    }

    private static OwnFields fields(String id, PDDocument document) {
        OwnFields fields = new OwnFields(id);
        PDDocumentInformation said = document.getDocumentInformation();
        fields.title(said.getTitle() == null ? "" : said.getTitle());
        fields.maker(said.getAuthor() == null ? "" : said.getAuthor());
        String language = document.getDocumentCatalog().getLanguage();
        fields.language(language == null ? "" : language);
        for (String key : said.getMetadataKeys()) {
            String value = said.getCustomMetadataValue(key);
            if (!key.equals("Title") && !key.equals("Author") && value != null) {
                fields.named(key, value);
            }
        }
        return fields;
    }
}

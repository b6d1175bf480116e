package org.stillroom.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.inquiry.Answer;
import org.stillroom.inquiry.Answer.Block;
import org.stillroom.library.AtomicFile;
import org.stillroom.report.Drawing;
import org.stillroom.report.Figures;
import org.stillroom.report.Look;
import org.stillroom.report.page.AnswerPage;
import org.stillroom.report.page.AnswerTables;
import picocli.CommandLine.ParseResult;

/** Writes an answer's figures, tables and page where the options say so. */
final class AnswerFiles {

    private static final double PNG_SCALE = 2;

    private final Answer answer;
    private final Terminal terminal;

    AnswerFiles(Answer answer, Terminal terminal) {
        this.answer = answer;
        this.terminal = terminal;
    }

    void write(ParseResult parsed) throws IOException {
        String figures = parsed.matchedOptionValue(LibraryOptions.FIGURES, "");
        if (!figures.isEmpty()) {
            figures(Path.of(figures)).forEach(this::tell);
        }
        String tables = parsed.matchedOptionValue(LibraryOptions.TABLES, "");
        if (!tables.isEmpty()) {
            tables(Path.of(tables)).forEach(this::tell);
        }
        String report = parsed.matchedOptionValue(LibraryOptions.REPORT, "");
        if (!report.isEmpty()) {
            Path file = Path.of(report);
            AtomicFile.write(file, AnswerPage.of(answer));
            tell(file);
        }
    }

    private void tell(Path file) {
        terminal.err().println("Written: " + file);
    }

    /** Writes every figure as SVG and PNG and returns the files. */
    List<Path> figures(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        for (Block block : answer.blocks()) {
            if (block instanceof Block.Picture picture) {
                Drawing drawing = Figures.draw(picture.figure(), Look.LIGHT);
                Path svg = folder.resolve(picture.name() + ".svg");
                AtomicFile.write(svg, drawing.svg());
                Path png = folder.resolve(picture.name() + ".png");
                AtomicFile.write(png, Figures.toPng(drawing, PNG_SCALE));
                files.add(svg);
                files.add(png);
            }
        }
        return files;
    }

    private List<Path> tables(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        int number = 0;
        for (Block block : answer.blocks()) {
            if (block instanceof Block.Table table) {
                number++;
                String words =
                        table.caption()
                                .toLowerCase(Locale.ROOT)
                                .replaceAll("[^\\p{L}\\p{N}]+", "-");
                String name = number + "-" + words.replaceAll("^-|-$", "");
                Path file =
                        folder.resolve(
                                (name.length() > 60 ? name.substring(0, 60) : name) + ".csv");
                AtomicFile.write(file, AnswerTables.toCsv(table));
                files.add(file);
            }
        }
        return files;
    }
}

package org.stillroom.search;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.IntField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.document.TextField;
import org.apache.lucene.facet.sortedset.SortedSetDocValuesFacetField;
import org.apache.lucene.index.IndexOptions;
import org.stillroom.model.source.Bibliography;
import org.stillroom.model.source.Source;
import org.stillroom.model.spec.SpecLine;
import org.stillroom.model.spec.Version;
import org.stillroom.model.text.EditedText;
import org.stillroom.search.analysis.PutRightWords;

/** Turns a version into what the index holds of it. */
final class VersionDocument {

    private static final FieldType WORDS = wordsType();

    private VersionDocument() {}

    private static FieldType wordsType() {
        FieldType type = new FieldType(TextField.TYPE_NOT_STORED);
        type.setIndexOptions(IndexOptions.DOCS_AND_FREQS_AND_POSITIONS_AND_OFFSETS);
        type.freeze();
        return type;
    }

    static Document of(Version version) {
        Document document = new Document();
        Source source = version.source();
        document.add(new StringField(Fields.ID, version.id(), Field.Store.YES));
        document.add(new StringField(Fields.SOURCE_ID, source.id(), Field.Store.YES));
        document.add(new StoredField(Fields.START, version.witness().span().start()));
        document.add(words(version));
        document.add(new TextField(Fields.TITLE, version.witness().title(), Field.Store.NO));
        document.add(new StoredField(Fields.TITLE_STORED, version.witness().title()));
        bibliography(document, source);
        lines(document, version);
        Set<String> vessels = new TreeSet<>();
        version.reading().vessels().forEach(v -> vessels.add(v.word()));
        vessels.forEach(v -> add(document, Fields.VESSEL, v, v));
        return document;
    }

    private static Field words(Version version) {
        if (version.putRight().isEmpty()) {
            return new Field(Fields.WORDS, version.words(), WORDS);
        }
        int start = version.witness().span().start();
        List<EditedText.Edit> edits =
                version.putRight().stream()
                        .map(e -> new EditedText.Edit(e.span().shift(-start), e.words()))
                        .toList();
        return new Field(Fields.WORDS, PutRightWords.over(version.words(), edits), WORDS);
    }

    private static void bibliography(Document document, Source source) {
        Bibliography b = source.bibliography();
        add(
                document,
                Fields.SOURCE,
                b.title() + " " + b.author().orElse("") + " " + source.id(),
                source.shortName());
        b.place().ifPresent(p -> add(document, Fields.PLACE, p.toText(), p.toText()));
        b.trade().ifPresent(t -> add(document, Fields.TRADE, t.word(), t.word()));
        int earliest = b.date().map(d -> d.earliestYear().orElse(0)).orElse(0);
        int latest = b.date().map(d -> d.latestYear().orElse(9999)).orElse(9999);
        document.add(new IntField(Fields.EARLIEST, earliest, Field.Store.YES));
        document.add(new IntField(Fields.LATEST, latest, Field.Store.YES));
        double middle = b.date().map(d -> d.middleYear()).orElse(Double.NaN);
        String decade = Double.isNaN(middle) ? "undated" : (int) Math.floor(middle / 10) * 10 + "s";
        document.add(new SortedSetDocValuesFacetField(Fields.DECADE, decade));
    }

    private static void lines(Document document, Version version) {
        Set<String> labels = new TreeSet<>();
        Set<String> words = new TreeSet<>();
        Set<String> measures = new TreeSet<>();
        for (SpecLine line : version.spec().lines()) {
            labels.add(line.ingredient().label());
            words.add(line.ingredient().label());
            words.add(line.ingredient().family().replace('-', ' '));
            words.add(line.line().ingredientName());
            measures.add(line.line().measure());
        }
        labels.remove("");
        measures.remove("");
        words.forEach(w -> document.add(new TextField(Fields.INGREDIENT, w, Field.Store.NO)));
        labels.forEach(l -> document.add(new SortedSetDocValuesFacetField(Fields.INGREDIENT, l)));
        measures.forEach(m -> add(document, Fields.MEASURE, m, m));
    }

    private static void add(Document document, String field, String words, String label) {
        document.add(new TextField(field, words, Field.Store.NO));
        if (!label.isEmpty()) {
            document.add(new SortedSetDocValuesFacetField(field, label));
        }
    }
}

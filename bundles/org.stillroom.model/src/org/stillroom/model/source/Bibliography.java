package org.stillroom.model.source;

import java.util.Optional;
import org.stillroom.model.date.UncertainDate;

/**
 * What a bibliographer says of an edition; every field may be missing but the title.
 *
 * @param title the title, or the file's name where none is given
 * @param author author as printed
 * @param edition edition statement
 * @param place place of printing
 * @param textDate when the words were written or first printed; lineage uses this one
 * @param printingDate when this copy's edition was printed
 * @param language language tag by BCP 47
 * @param trade for whose work it was written
 * @param rights who may do what with the text
 * @param scan where the images came from
 * @param transcriber who transcribed it
 * @param notes anything else
 * @param measures the system of measures that it goes by, where its transcriber says so
 */
public record Bibliography(
        String title,
        Optional<String> author,
        Optional<String> edition,
        Optional<Place> place,
        Optional<UncertainDate> textDate,
        Optional<UncertainDate> printingDate,
        Optional<String> language,
        Optional<Trade> trade,
        Optional<String> rights,
        Optional<String> scan,
        Optional<String> transcriber,
        Optional<String> notes,
        Optional<String> measures) {

    /** Makes the bibliography of an edition whose system of measures nobody has told. */
    public Bibliography(
            String title,
            Optional<String> author,
            Optional<String> edition,
            Optional<Place> place,
            Optional<UncertainDate> textDate,
            Optional<UncertainDate> printingDate,
            Optional<String> language,
            Optional<Trade> trade,
            Optional<String> rights,
            Optional<String> scan,
            Optional<String> transcriber,
            Optional<String> notes) {
        this(
                title,
                author,
                edition,
                place,
                textDate,
                printingDate,
                language,
                trade,
                rights,
                scan,
                transcriber,
                notes,
                Optional.empty());
    }

    /** Returns a bibliography of which only the title is known. */
    public static Bibliography titled(String title) {
        return new Bibliography(
                title,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    /** Returns the date that lineage goes by: of the text, else of the printing. */
    public Optional<UncertainDate> date() {
        return textDate.or(() -> printingDate);
    }

    /** Returns when, where and for whom it was written. */
    public Circumstances circumstances() {
        return new Circumstances(place, date(), trade, language);
    }
}

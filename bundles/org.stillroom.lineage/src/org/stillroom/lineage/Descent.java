package org.stillroom.lineage;

import java.util.List;
import java.util.Optional;
import org.stillroom.model.spec.Version;

/**
 * Where one version comes from, as far as this library can tell.
 *
 * @param version the version
 * @param standing what can be said
 * @param candidates possible parents, likeliest first
 * @param margin how many edits the first candidate is ahead of the second; below 1 they are tied
 * @param reason the finding in one sentence
 */
public record Descent(
        Version version,
        Standing standing,
        List<Candidate> candidates,
        double margin,
        String reason) {

    /** What can be said of a version's descent. */
    public enum Standing {
        /** Nothing earlier is held. */
        EARLIEST("earliest held"),
        /** The same text but for accidentals. */
        REPRINT("reprint"),
        /** One earlier version is clearly the nearest. */
        TAKEN("taken from"),
        /** Two or more earlier versions are equally near. */
        TIED("tied"),
        /** No earlier version is near enough to be its source. */
        INDEPENDENT("independent"),
        /** Its date is unknown, so that its place is a guess. */
        UNPLACED("undated");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** Returns the standing in words for tables. */
        public String words() {
            return words;
        }
    }

    /** Keeps the candidates as an unchangeable list. */
    public Descent {
        candidates = List.copyOf(candidates);
    }

    /** Returns the parent, where one can be named. */
    public Optional<Version> parent() {
        boolean named = standing == Standing.REPRINT || standing == Standing.TAKEN;
        return named ? candidates.stream().findFirst().map(Candidate::parent) : Optional.empty();
    }
}

package org.stillroom.drift;

import java.util.List;
import java.util.Optional;

/**
 * How a drink's proportions moved over time.
 *
 * @param versions how many versions were looked at
 * @param independent how many independent lines of copies they make
 * @param roles the roles that occur, as words, in a fixed order
 * @param points one for each version whose amounts can be compared, earliest first
 * @param distances Aitchison distances between each version and the one before it
 * @param events ingredients that enter or leave
 * @param trends one for each role, tested or refused
 * @param words the result in plain words, effect first
 * @param left versions that were left out, each with the reason
 */
public record Drift(
        int versions,
        int independent,
        List<String> roles,
        List<Point> points,
        List<Distance> distances,
        List<Event> events,
        List<Trend> trends,
        List<String> words,
        List<String> left) {

    /** Keeps the lists unchangeable. */
    public Drift {
        roles = List.copyOf(roles);
        points = List.copyOf(points);
        distances = List.copyOf(distances);
        events = List.copyOf(events);
        trends = List.copyOf(trends);
        words = List.copyOf(words);
        left = List.copyOf(left);
    }

    /**
     * One version's shares of the whole.
     *
     * @param version the version's id
     * @param label short name of its source
     * @param year middle of its date
     * @param independent whether it stands for its line of copies
     * @param shares one for each role; 0 where the role does not occur
     */
    public record Point(
            String version, String label, double year, boolean independent, List<Share> shares) {

        /** Keeps the shares as an unchangeable list. */
        public Point {
            shares = List.copyOf(shares);
        }
    }

    /**
     * A share of the whole, 0 to 1, as limits and likely value.
     *
     * @param low least
     * @param likely likeliest
     * @param high greatest
     */
    public record Share(double low, double likely, double high) {}

    /**
     * How far two versions lie apart, on the ingredients that both have.
     *
     * @param from id of the earlier version
     * @param to id of the later version
     * @param aitchison the distance, or nothing where they share fewer than two ingredients
     * @param added ingredients that only the later one has
     * @param dropped ingredients that only the earlier one has
     */
    public record Distance(
            String from,
            String to,
            Optional<Double> aitchison,
            List<String> added,
            List<String> dropped) {

        /** Keeps the lists unchangeable. */
        public Distance {
            added = List.copyOf(added);
            dropped = List.copyOf(dropped);
        }
    }

    /**
     * An ingredient that enters or leaves.
     *
     * @param ingredient its label
     * @param enters whether it enters (else it leaves)
     * @param after label and year of the last version before the change
     * @param by label and year of the first version after it
     * @param words the event in a sentence
     */
    public record Event(String ingredient, boolean enters, String after, String by, String words) {}

    /** What can be said of one role's movement. */
    public sealed interface Trend {

        /** Returns the role. */
        String role();

        /** Returns the finding in a sentence. */
        String words();

        /**
         * A trend that was tested on independent versions.
         *
         * @param role the role
         * @param n independent versions
         * @param slopePerDecade change of the share in a decade (Theil–Sen)
         * @param low lower limit of the slope at 95 %
         * @param high upper limit of the slope at 95 %
         * @param p two-sided probability by the exact Mann–Kendall test
         * @param words the finding
         */
        record Tested(
                String role,
                int n,
                double slopePerDecade,
                double low,
                double high,
                double p,
                String words)
                implements Trend {}

        /**
         * A trend that is not tested.
         *
         * @param role the role
         * @param words the reason
         */
        record Refused(String role, String words) implements Trend {}
    }
}

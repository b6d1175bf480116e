package org.stillroom.model.date;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the Extended Date/Time Format. */
final class EdtfParser {

    /** A year, month and day, each with its qualifiers before or after it, or a whole-date one. */
    private static final Pattern DATE =
            Pattern.compile(
                    "([?~%]?)(-?[0-9X]{4})([?~%]?)"
                            + "(?:-([?~%]?)([0-9X]{2})([?~%]?))?"
                            + "(?:-([?~%]?)([0-9X]{2})([?~%]?))?");

    private static final Pattern LONG_YEAR = Pattern.compile("Y(-?[1-9]\\d{4,8})([?~%]?)");
    private static final Pattern TIME =
            Pattern.compile(
                    "(\\d{4}-\\d{2}-\\d{2})T(\\d{2}:\\d{2}:\\d{2})(Z|[+-]\\d{2}(?::\\d{2})?)?");

    private EdtfParser() {}

    /** The limits and qualifiers of a part. */
    private record Part(
            Optional<LocalDate> earliest,
            Optional<LocalDate> latest,
            boolean uncertain,
            boolean approximate) {

        static Part of(LocalDate from, LocalDate to, String qualifiers) {
            boolean both = qualifiers.indexOf('%') >= 0;
            return new Part(
                    Optional.of(from),
                    Optional.of(to),
                    both || qualifiers.indexOf('?') >= 0,
                    both || qualifiers.indexOf('~') >= 0);
        }

        static final Part OPEN = new Part(Optional.empty(), Optional.empty(), false, false);
    }

    static Optional<UncertainDate> parse(String edtf) {
        if (edtf.length() > 1 && (edtf.charAt(0) == '[' || edtf.charAt(0) == '{')) {
            return set(edtf);
        }
        int slash = edtf.indexOf('/');
        if (slash >= 0) {
            return interval(edtf, slash);
        }
        return single(edtf).map(p -> make(edtf, UncertainDate.Form.DATE, p));
    }

    private static UncertainDate make(String edtf, UncertainDate.Form form, Part p) {
        return new UncertainDate(
                edtf, form, p.earliest(), p.latest(), p.uncertain(), p.approximate());
    }

    private static Optional<UncertainDate> interval(String edtf, int slash) {
        Optional<Part> from = end(edtf.substring(0, slash));
        Optional<Part> to = end(edtf.substring(slash + 1));
        if (from.isEmpty() || to.isEmpty() || edtf.equals("/")) {
            return Optional.empty();
        }
        Part a = from.get();
        Part b = to.get();
        boolean backward =
                a.earliest().isPresent()
                        && b.latest().isPresent()
                        && b.latest().get().isBefore(a.earliest().get());
        if (backward) {
            return Optional.empty();
        }
        return Optional.of(
                new UncertainDate(
                        edtf,
                        UncertainDate.Form.INTERVAL,
                        a.earliest(),
                        b.latest(),
                        a.uncertain() || b.uncertain(),
                        a.approximate() || b.approximate()));
    }

    private static Optional<Part> end(String words) {
        return words.isEmpty() || words.equals("..") ? Optional.of(Part.OPEN) : single(words);
    }

    private static Optional<UncertainDate> set(String edtf) {
        boolean oneOf = edtf.charAt(0) == '[';
        if (edtf.charAt(edtf.length() - 1) != (oneOf ? ']' : '}')) {
            return Optional.empty();
        }
        List<Part> parts = new ArrayList<>();
        for (String member : edtf.substring(1, edtf.length() - 1).split(",", -1)) {
            if (!member(member.strip(), parts)) {
                return Optional.empty();
            }
        }
        Part hull = parts.get(0);
        for (Part p : parts) {
            hull = hull(hull, p);
        }
        UncertainDate.Form form = oneOf ? UncertainDate.Form.ONE_OF : UncertainDate.Form.ALL_OF;
        return Optional.of(make(edtf, form, hull));
    }

    /** Adds a member of a set, which may be a stretch such as {@code 1862..1865}. */
    private static boolean member(String words, List<Part> parts) {
        int dots = words.indexOf("..");
        if (dots < 0) {
            Optional<Part> part = single(words);
            part.ifPresent(parts::add);
            return part.isPresent();
        }
        Optional<Part> from = end(words.substring(0, dots));
        Optional<Part> to = end(words.substring(dots + 2));
        if (from.isEmpty() || to.isEmpty() || words.length() == 2) {
            return false;
        }
        parts.add(
                new Part(
                        from.get().earliest(),
                        to.get().latest(),
                        from.get().uncertain() || to.get().uncertain(),
                        from.get().approximate() || to.get().approximate()));
        return true;
    }

    private static Part hull(Part a, Part b) {
        Optional<LocalDate> first =
                a.earliest().flatMap(x -> b.earliest().map(y -> x.isBefore(y) ? x : y));
        Optional<LocalDate> last =
                a.latest().flatMap(x -> b.latest().map(y -> x.isAfter(y) ? x : y));
        return new Part(
                first, last, a.uncertain() || b.uncertain(), a.approximate() || b.approximate());
    }

    private static Optional<Part> single(String words) {
        Matcher time = TIME.matcher(words);
        if (time.matches()) {
            return time(time);
        }
        Matcher longYear = LONG_YEAR.matcher(words);
        if (longYear.matches()) {
            int year = Integer.parseInt(longYear.group(1));
            return Optional.of(
                    Part.of(
                            LocalDate.of(year, 1, 1),
                            LocalDate.of(year, 12, 31),
                            longYear.group(2)));
        }
        Matcher date = DATE.matcher(words);
        return date.matches() ? date(date) : Optional.empty();
    }

    private static Optional<Part> time(Matcher m) {
        try {
            LocalTime.parse(m.group(2));
            LocalDate day = LocalDate.parse(m.group(1));
            return Optional.of(Part.of(day, day, ""));
        } catch (DateTimeException notATime) {
            return Optional.empty();
        }
    }

    private static Optional<Part> date(Matcher m) {
        String year = m.group(2);
        if (year.equals("-0000") || year.endsWith("XXXX")) {
            return Optional.empty();
        }
        StringBuilder qualifiers = new StringBuilder();
        for (int group : new int[] {1, 3, 4, 6, 7, 9}) {
            qualifiers.append(m.group(group) == null ? "" : m.group(group));
        }
        int[] years = limits(year);
        String month = m.group(5);
        String day = m.group(8);
        try {
            return Optional.of(part(years, month, day, qualifiers.toString()));
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }

    private static Part part(int[] years, String month, String day, String qualifiers) {
        if (month == null) {
            return Part.of(
                    LocalDate.of(years[0], 1, 1), LocalDate.of(years[1], 12, 31), qualifiers);
        }
        int[] months = digits(month, 1, 12);
        if (months[0] >= 21 && months[0] <= 24 && day == null) {
            return Part.of(
                    LocalDate.of(years[0], 1, 1), LocalDate.of(years[1], 12, 31), qualifiers);
        }
        if (day == null) {
            LocalDate last = LocalDate.of(years[1], months[1], 1);
            return Part.of(
                    LocalDate.of(years[0], months[0], 1),
                    last.withDayOfMonth(last.lengthOfMonth()),
                    qualifiers);
        }
        int longest = LocalDate.of(years[1], months[1], 1).lengthOfMonth();
        int[] days = digits(day, 1, longest);
        return Part.of(
                LocalDate.of(years[0], months[0], days[0]),
                LocalDate.of(years[1], months[1], days[1]),
                qualifiers);
    }

    private static int[] limits(String year) {
        int low = Integer.parseInt(year.replace('X', '0'));
        int high = Integer.parseInt(year.replace('X', '9'));
        return new int[] {Math.min(low, high), Math.max(low, high)};
    }

    /** Returns the limits of two digits that may be unspecified, within a least and a greatest. */
    private static int[] digits(String two, int least, int greatest) {
        if (two.indexOf('X') < 0) {
            int value = Integer.parseInt(two);
            return new int[] {value, value};
        }
        int low = Math.max(least, Integer.parseInt(two.replace('X', '0')));
        int high = Math.min(greatest, Integer.parseInt(two.replace('X', '9')));
        return new int[] {low, Math.max(low, high)};
    }
}

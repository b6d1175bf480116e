package org.stillroom.model.date;

import java.util.regex.Pattern;

/** Puts a date into words for a reader. */
final class DateWords {

    private static final Pattern DECADE = Pattern.compile("\\d{3}X");
    private static final Pattern CENTURY = Pattern.compile("\\d{2}XX");

    private DateWords() {}

    static String of(UncertainDate date) {
        String edtf = date.toString();
        if (date.form() == UncertainDate.Form.DATE) {
            return single(edtf);
        }
        if (date.form() == UncertainDate.Form.INTERVAL) {
            return interval(edtf);
        }
        String inside = edtf.substring(1, edtf.length() - 1).replace("..", "–").replace(",", ", ");
        return (date.form() == UncertainDate.Form.ONE_OF ? "one of " : "") + inside;
    }

    private static String interval(String edtf) {
        int slash = edtf.indexOf('/');
        String from = edtf.substring(0, slash);
        String to = edtf.substring(slash + 1);
        boolean noStart = from.isEmpty() || from.equals("..");
        boolean noEnd = to.isEmpty() || to.equals("..");
        if (noStart && noEnd) {
            return "at any time";
        }
        if (noStart) {
            return "until " + single(to);
        }
        if (noEnd) {
            return "from " + single(from) + " on";
        }
        return single(from) + "–" + single(to);
    }

    private static String single(String edtf) {
        String bare = edtf.replaceAll("[?~%]", "");
        String words = bare;
        if (DECADE.matcher(bare).matches()) {
            words = "the " + bare.replace('X', '0') + "s";
        } else if (CENTURY.matcher(bare).matches()) {
            words = "the " + bare.replace('X', '0') + "s (century)";
        }
        boolean both = edtf.indexOf('%') >= 0;
        String about = both || edtf.indexOf('~') >= 0 ? "about " : "";
        return about + words + (both || edtf.indexOf('?') >= 0 ? "?" : "");
    }
}

package org.stillroom.ingredients;

/** Puts into a sentence why words may have a sense. */
final class Reasons {

    private Reasons() {}

    static Candidate candidate(Matching.Hit hit, Sense sense, Setting setting, double weight) {
        Label label = hit.name().label();
        double fit = setting.fit(label, sense);
        double hidden = label.kind() == Label.Kind.HIDDEN ? 0.995 : 1;
        double score = Math.min(1, hit.likeness() * fit * hidden * (0.90 + weight));
        return new Candidate(sense, score, label, reason(hit, sense));
    }

    private static String reason(Matching.Hit hit, Sense sense) {
        Label label = hit.name().label();
        if (label.kind() == Label.Kind.HIDDEN) {
            return "It is, or nearly is, a known misspelling or trade word for "
                    + sense.label()
                    + '.'
                    + scope(sense);
        }
        String name = "“" + label.text() + "”";
        String found =
                switch (hit.how()) {
                    case SAME -> name + " is a name of " + sense.label();
                    case REORDERED ->
                            "In another order it is " + name + ", a name of " + sense.label();
                    case ABBREVIATED -> "It is short for " + name + ", a name of " + sense.label();
                    case MISPRINT ->
                            "But for a slip of type it is " + name + ", a name of " + sense.label();
                    case WITHOUT_PRAISE ->
                            "Without words of praise and preparation it is "
                                    + name
                                    + ", a name of "
                                    + sense.label();
                    case NEAR -> "It is spelt nearly as " + name + ", a name of " + sense.label();
                    case PART -> "It holds " + name + ", a name of " + sense.label();
                };
        return found + limits(label.validity()) + '.' + scope(sense);
    }

    private static String limits(Validity validity) {
        StringBuilder limits = new StringBuilder();
        if (validity.isDated()) {
            limits.append(", ").append(validity.years());
        }
        if (!validity.places().isEmpty()) {
            limits.append(", in ").append(String.join(", ", validity.places()));
        }
        return limits.toString();
    }

    private static String scope(Sense sense) {
        String scope = sense.scope();
        if (scope.isEmpty()) {
            return "";
        }
        String end = scope.endsWith(".") ? "" : ".";
        return " " + Character.toUpperCase(scope.charAt(0)) + scope.substring(1) + end;
    }
}

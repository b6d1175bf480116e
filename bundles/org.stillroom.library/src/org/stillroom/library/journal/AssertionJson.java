package org.stillroom.library.journal;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonPropertyOrder;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.text.Anchor;
import org.stillroom.model.text.Span;

/** A decision as it stands in the journal; absent fields are left out. */
@JsonInclude(JsonInclude.Include.NON_NULL)
@JsonPropertyOrder({"id", "at", "by", "kind", "source", "anchor", "values", "replaces"})
record AssertionJson(
        String id,
        String at,
        String by,
        String kind,
        String source,
        AnchorJson anchor,
        Map<String, String> values,
        String replaces) {

    /** The words that a decision is about. */
    record AnchorJson(String exact, String prefix, String suffix, int start, int end) {}

    static AssertionJson of(Assertion a) {
        return new AssertionJson(
                a.id(),
                a.at(),
                a.by(),
                a.kind(),
                a.source(),
                a.anchor()
                        .map(
                                x ->
                                        new AnchorJson(
                                                x.exact(),
                                                x.prefix(),
                                                x.suffix(),
                                                x.position().start(),
                                                x.position().end()))
                        .orElse(null),
                a.values(),
                a.replaces().orElse(null));
    }

    Assertion toAssertion() {
        if (id == null || kind == null) {
            throw new IllegalArgumentException("A decision needs an id and a kind");
        }
        Optional<Anchor> where =
                Optional.ofNullable(anchor)
                        .map(
                                x ->
                                        new Anchor(
                                                x.exact,
                                                x.prefix,
                                                x.suffix,
                                                new Span(x.start, x.end)));
        return new Assertion(
                id,
                at == null ? "" : at,
                by == null ? "" : by,
                kind,
                source == null ? "" : source,
                where,
                new TreeMap<>(values == null ? Map.of() : values),
                Optional.ofNullable(replaces));
    }
}

package org.stillroom.inquiry.ask;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;
import java.util.Optional;
import org.stillroom.model.estimate.Estimate;
import org.stillroom.model.text.Span;

/** Builds the answers for programs; the same values give the same bytes. */
final class Json {

    private static final MathContext DIGITS = new MathContext(6);

    private Json() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static ArrayNode array() {
        return JsonNodeFactory.instance.arrayNode();
    }

    static ArrayNode strings(Collection<String> words) {
        ArrayNode array = array();
        words.forEach(array::add);
        return array;
    }

    static ObjectNode span(Span span) {
        return object().put("start", span.start()).put("end", span.end());
    }

    static void put(ObjectNode node, String name, Optional<String> value) {
        if (value.isPresent()) {
            node.put(name, value.get());
        } else {
            node.putNull(name);
        }
    }

    /** Puts low, likely and high, or null. */
    static void put(ObjectNode node, String name, Optional<Estimate> value, double factor) {
        if (value.isPresent()) {
            node.set(name, estimate(value.get(), factor));
        } else {
            node.putNull(name);
        }
    }

    static ObjectNode estimate(Estimate value, double factor) {
        return object().put("low", number(value.low() * factor))
                .put("likely", number(value.likely() * factor))
                .put("high", number(value.high() * factor));
    }

    /** Returns a number of six digits, without an exponent’s noise. */
    static BigDecimal number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}

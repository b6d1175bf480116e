package org.stillroom.library.journal;

import java.security.SecureRandom;
import java.time.Clock;
import java.util.HexFormat;
import java.util.function.Supplier;

/**
 * Who decides: a name, a clock, and a source of endings that keep two people's ids apart.
 *
 * @param name as the user calls himself
 * @param clock tells when
 * @param tails gives the end of an id, a few letters or digits; two hands that write at the same
 *     microsecond must get different ones
 */
public record Hand(String name, Clock clock, Supplier<String> tails) {

    /** Returns the hand of a person at this machine, by the clock in UTC. */
    public static Hand of(String name) {
        SecureRandom chance = new SecureRandom();
        return new Hand(name, Clock.systemUTC(), () -> tail(chance));
    }

    private static String tail(SecureRandom chance) {
        byte[] bytes = new byte[4];
        chance.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }
}

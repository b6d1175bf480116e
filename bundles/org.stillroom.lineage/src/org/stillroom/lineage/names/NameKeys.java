package org.stillroom.lineage.names;

import java.util.Set;
import java.util.TreeSet;
import org.apache.commons.codec.language.DoubleMetaphone;

/**
 * Keys under which names that may be the same meet, so that not every name need be held against every
 * other. A shared key decides nothing.
 *
 * <p>By sound: Double Metaphone (Philips 2000), which gives “vermuth” and “vermouth” one key.
 */
public final class NameKeys {

    private NameKeys() {}

    /** Returns the keys of a name: the sound of each word that says something, and its initials. */
    public static Set<String> of(NameForm name) {
        DoubleMetaphone sound = new DoubleMetaphone();
        Set<String> keys = new TreeSet<>();
        StringBuilder initials = new StringBuilder();
        for (String word : name.words()) {
            initials.append(word.charAt(0));
            String key = sound.doubleMetaphone(word);
            if (word.length() > 1 && key != null && !key.isEmpty()) {
                keys.add(name.isGeneric() || NameForm.weight(word) >= 1 ? key : "");
            }
        }
        keys.remove("");
        String joined = sound.doubleMetaphone(name.joined());
        if (joined != null && !joined.isEmpty()) {
            keys.add("=" + joined);
        }
        if (initials.length() > 1) {
            keys.add("." + initials);
        }
        return keys;
    }
}

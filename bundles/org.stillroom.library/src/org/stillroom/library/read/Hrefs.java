package org.stillroom.library.read;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/** Names of parts as other parts of a packed file write them. */
final class Hrefs {

    private Hrefs() {}

    /** Returns the part that a reference in a folder leads to; it never leads out of the file. */
    static String resolve(String folder, String href) {
        String path = decode(href.replaceFirst("[#?].*", ""));
        Deque<String> steps = new ArrayDeque<>();
        String whole = path.startsWith("/") ? path : folder + path;
        for (String step : whole.split("/")) {
            if (step.equals("..")) {
                steps.pollLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return String.join("/", steps);
    }

    /** Returns what follows the number sign, or nothing. */
    static String fragment(String href) {
        int at = href.indexOf('#');
        return at < 0 ? "" : decode(href.substring(at + 1));
    }

    /** Returns the folder of a part, with a slash at its end unless it is the file itself. */
    static String folder(String part) {
        return part.substring(0, part.lastIndexOf('/') + 1);
    }

    private static String decode(String href) {
        byte[] in = href.getBytes(StandardCharsets.UTF_8);
        byte[] out = new byte[in.length];
        int n = 0;
        for (int i = 0; i < in.length; i++) {
            int high = i + 2 < in.length ? Character.digit(in[i + 1], 16) : -1;
            int low = i + 2 < in.length ? Character.digit(in[i + 2], 16) : -1;
            if (in[i] == '%' && high >= 0 && low >= 0) {
                out[n++] = (byte) (high * 16 + low);
                i += 2;
            } else {
                out[n++] = in[i];
            }
        }
        return new String(out, 0, n, StandardCharsets.UTF_8);
    }
}

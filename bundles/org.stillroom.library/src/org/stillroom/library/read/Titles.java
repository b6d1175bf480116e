package org.stillroom.library.read;

import java.nio.file.Path;

/** Makes a title out of a file's name. */
final class Titles {

    private Titles() {}

    static String fromFile(Path file) {
        String name = file.getFileName().toString();
        int dot = name.lastIndexOf('.');
        String words = (dot > 0 ? name.substring(0, dot) : name).replaceAll("[-_]+", " ").strip();
        return words.isEmpty() ? name : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}

package org.stillroom.ingredients;

/**
 * One of a library’s {@code knowledge/ingredients*.csv} files.
 *
 * @param path its path as the user knows it
 * @param text its whole text
 */
public record KnowledgeFile(String path, String text) {}

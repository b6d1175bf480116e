package org.stillroom.report;

/**
 * A figure drawn once, for screen, page and file alike.
 *
 * @param title what it shows, in words
 * @param description the same information in sentences, for those who cannot see it
 * @param width width in points at natural size
 * @param height height in points at natural size
 * @param svg the drawing as a document in Scalable Vector Graphics 1.1
 */
public record Drawing(String title, String description, int width, int height, String svg) {}

package org.stillroom.drift;

import org.stillroom.model.spec.Version;

/**
 * A version with the line of copies that it belongs to.
 *
 * @param version the version
 * @param root id of the version at the root of its line of copies; itself where it is independent
 */
public record Observation(Version version, String root) {}

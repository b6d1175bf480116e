package org.stillroom.measures;

import org.stillroom.measures.system.SystemPosterior;
import org.stillroom.measures.system.Where;

/** Circumstances looked up, with the systems that are likely in them. */
record Setting(Where where, SystemPosterior systems) {}

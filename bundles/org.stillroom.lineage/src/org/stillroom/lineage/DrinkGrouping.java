package org.stillroom.lineage;

import java.util.List;
import org.stillroom.lineage.grouping.Grouping;
import org.stillroom.model.assertion.Assertion;
import org.stillroom.model.progress.Progress;
import org.stillroom.model.spec.Version;

/**
 * Groups versions into drinks by name, ingredients and wording together.
 *
 * <p>One name for two drinks is split, one drink under two names is joined, and what a person
 * decided outranks both. The same versions give the same drinks in any order.
 */
public final class DrinkGrouping {

    /**
     * Groups versions.
     *
     * @param decisions decisions of the kind {@code drink}: two versions are the same or different,
     *     or a drink bears a name; others are passed over
     */
    public Drinks group(List<Version> versions, List<Assertion> decisions, Progress progress) {
        return new Grouping(decisions).group(versions, progress);
    }
}

package org.stillroom.lineage.grouping;

import java.util.Set;
import org.stillroom.lineage.names.NameForm;

/**
 * What a version is called, in the forms that names are compared by.
 *
 * @param name the name, folded
 * @param head what stands before a comma in it, folded; the whole where that says nothing
 * @param classes the kinds of drink that it says it is
 * @param generic whether it has no word of its own
 */
record Call(NameForm name, NameForm head, Set<String> classes, boolean generic) {

    static Call of(String title) {
        NameForm name = NameForm.of(title);
        NameForm before = NameForm.of(title.replaceFirst("[,;(].*", ""));
        NameForm head = before.isGeneric() ? name : before;
        return new Call(name, head, name.classes(), name.isGeneric());
    }
}

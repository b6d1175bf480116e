package org.stillroom.ingredients.knowledge;

import org.stillroom.ingredients.Label;

/**
 * A name and the sense that it belongs to.
 *
 * @param sense id of the sense
 * @param label the name
 */
public record LabelRow(String sense, Label label) {

    /** Returns the same name for another sense. */
    public LabelRow withSense(String other) {
        return new LabelRow(other, label);
    }

    /** Returns the same name as another kind of label. */
    public LabelRow withKind(Label.Kind kind) {
        return new LabelRow(
                sense,
                new Label(label.text(), kind, label.language(), label.validity(), label.source()));
    }
}

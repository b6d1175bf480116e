package org.stillroom.ingredients;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.stillroom.ingredients.ThesaurusEdit.AddLabel;
import org.stillroom.ingredients.ThesaurusEdit.AddSense;
import org.stillroom.ingredients.ThesaurusEdit.Merge;
import org.stillroom.ingredients.ThesaurusEdit.RemoveLabel;
import org.stillroom.ingredients.ThesaurusEdit.Split;
import org.stillroom.ingredients.knowledge.Knowledge;
import org.stillroom.ingredients.knowledge.LabelRow;
import org.stillroom.ingredients.knowledge.SenseRow;
import org.stillroom.model.explain.Citation;
import org.stillroom.model.explain.Problem;

/** Applies one edit to rows. */
final class Editing {

    private static final Citation DECISION =
            new Citation("", "a decision of this library", Citation.Status.USER);

    private final Knowledge rows;
    private final List<Problem> problems;

    Editing(Knowledge rows, List<Problem> problems) {
        this.rows = rows;
        this.problems = problems;
    }

    Knowledge apply(ThesaurusEdit edit) {
        return switch (edit) {
            case AddSense e -> addSense(e);
            case AddLabel e -> addLabel(e);
            case RemoveLabel e -> removeLabel(e);
            case Merge e -> merge(e);
            case Split e -> split(e);
        };
    }

    private Knowledge addSense(AddSense edit) {
        if (isTaken(edit.id())) {
            return rows;
        }
        List<String> broader = new ArrayList<>();
        for (String id : edit.broader()) {
            if (exists(id)) {
                broader.add(rows.current(id));
            }
        }
        SenseRow sense =
                new SenseRow(
                        edit.id(),
                        edit.label(),
                        edit.kind(),
                        broader,
                        List.of(),
                        Validity.ALWAYS,
                        edit.scope(),
                        DECISION);
        SortedMap<String, SenseRow> senses = new TreeMap<>(rows.senses());
        senses.put(edit.id(), sense);
        List<LabelRow> labels = new ArrayList<>(rows.labels());
        labels.add(label(edit.id(), edit.label(), Label.Kind.PREFERRED, "en"));
        return with(senses, labels, rows.moved());
    }

    private Knowledge addLabel(AddLabel edit) {
        if (!exists(edit.sense())) {
            return rows;
        }
        List<LabelRow> labels = new ArrayList<>(rows.labels());
        labels.add(label(rows.current(edit.sense()), edit.text(), edit.kind(), edit.language()));
        return with(rows.senses(), labels, rows.moved());
    }

    private Knowledge removeLabel(RemoveLabel edit) {
        if (!exists(edit.sense())) {
            return rows;
        }
        String sense = rows.current(edit.sense());
        String wanted = edit.text().strip();
        List<LabelRow> labels = new ArrayList<>();
        for (LabelRow row : rows.labels()) {
            boolean gone =
                    rows.current(row.sense()).equals(sense)
                            && row.label().kind() != Label.Kind.PREFERRED
                            && !wanted.equalsIgnoreCase(rows.senses().get(sense).label())
                            && row.label().text().equalsIgnoreCase(wanted);
            if (!gone) {
                labels.add(row);
            }
        }
        if (labels.size() == rows.labels().size()) {
            problems.add(
                    Problem.warning(
                            "",
                            "The sense "
                                    + sense
                                    + " has no such name that could be taken away; the one that is"
                                    + " shown has to stay.",
                            "Take the decision back, or name one of the sense's other names."));
        }
        return with(rows.senses(), labels, rows.moved());
    }

    private Knowledge merge(Merge edit) {
        if (!exists(edit.from()) || !exists(edit.into())) {
            return rows;
        }
        String from = rows.current(edit.from());
        String into = rows.current(edit.into());
        if (from.equals(into)) {
            return rows;
        }
        SortedMap<String, String> moved = new TreeMap<>(rows.moved());
        moved.put(from, into);
        SortedMap<String, SenseRow> senses = new TreeMap<>();
        rows.senses()
                .forEach(
                        (id, sense) -> {
                            if (!id.equals(from)) {
                                senses.put(id, redirected(sense, from, into));
                            }
                        });
        List<LabelRow> labels = new ArrayList<>();
        for (LabelRow row : rows.labels()) {
            boolean goes = rows.current(row.sense()).equals(from);
            boolean shown = row.label().kind() == Label.Kind.PREFERRED;
            LabelRow there = goes ? row.withSense(into) : row;
            labels.add(goes && shown ? there.withKind(Label.Kind.ALTERNATIVE) : there);
        }
        return with(senses, labels, moved);
    }

    /** A sense that would become broader than itself loses that broader sense. */
    private SenseRow redirected(SenseRow sense, String from, String into) {
        List<String> broader = replaced(sense, sense.broader(), from, into);
        if (sense.id().equals(into)) {
            broader = broader.stream().filter(b -> !isBelow(b, into)).toList();
        } else if (sense.broader().contains(from) && isBelow(into, sense.id())) {
            broader = broader.stream().filter(b -> !b.equals(into)).toList();
        }
        return sense.withBroader(broader).withClose(replaced(sense, sense.close(), from, into));
    }

    private boolean isBelow(String id, String broader) {
        Set<String> seen = new HashSet<>();
        List<String> open = new ArrayList<>(List.of(id));
        while (!open.isEmpty()) {
            String next = open.removeLast();
            if (next.equals(broader)) {
                return true;
            }
            SenseRow sense = rows.senses().get(next);
            if (sense != null && seen.add(next)) {
                open.addAll(sense.broader());
            }
        }
        return false;
    }

    private static List<String> replaced(
            SenseRow sense, List<String> ids, String from, String into) {
        Set<String> kept = new LinkedHashSet<>();
        ids.forEach(id -> kept.add(id.equals(from) ? into : id));
        kept.remove(sense.id());
        return List.copyOf(kept);
    }

    private Knowledge split(Split edit) {
        if (!exists(edit.sense()) || isTaken(edit.id())) {
            return rows;
        }
        String id = rows.current(edit.sense());
        SenseRow old = rows.senses().get(id);
        SortedMap<String, SenseRow> senses = new TreeMap<>(rows.senses());
        senses.put(
                edit.id(),
                new SenseRow(
                        edit.id(),
                        edit.label(),
                        old.kind(),
                        old.broader(),
                        List.of(id),
                        old.validity(),
                        "",
                        DECISION));
        Set<String> going = new HashSet<>();
        edit.labels().forEach(l -> going.add(l.toLowerCase(Locale.ROOT)));
        List<LabelRow> labels = new ArrayList<>();
        for (LabelRow row : rows.labels()) {
            boolean goes =
                    rows.current(row.sense()).equals(id)
                            && row.label().kind() != Label.Kind.PREFERRED
                            && going.contains(row.label().text().toLowerCase(Locale.ROOT));
            labels.add(goes ? row.withSense(edit.id()) : row);
        }
        labels.add(label(edit.id(), edit.label(), Label.Kind.PREFERRED, "en"));
        return with(senses, labels, rows.moved());
    }

    private static LabelRow label(String sense, String text, Label.Kind kind, String language) {
        return new LabelRow(sense, new Label(text, kind, language, Validity.ALWAYS, DECISION));
    }

    private boolean exists(String id) {
        if (rows.senses().containsKey(rows.current(id))) {
            return true;
        }
        problems.add(
                Problem.warning(
                        "",
                        "A decision names the sense "
                                + id
                                + ", which there is not; it was passed"
                                + " over.",
                        "Take the decision back, or add a sense of this id."));
        return false;
    }

    private boolean isTaken(String id) {
        boolean taken = rows.senses().containsKey(id) || rows.moved().containsKey(id);
        if (taken) {
            problems.add(
                    Problem.warning(
                            "",
                            "A decision makes a sense "
                                    + id
                                    + ", which there is already; it was"
                                    + " passed over.",
                            "Take the decision back, or give the new sense another id."));
        }
        return taken;
    }

    private Knowledge with(
            SortedMap<String, SenseRow> senses,
            List<LabelRow> labels,
            SortedMap<String, String> moved) {
        return new Knowledge(
                senses,
                labels,
                rows.figures(),
                rows.allergens(),
                rows.hazards(),
                rows.milestones(),
                moved);
    }
}

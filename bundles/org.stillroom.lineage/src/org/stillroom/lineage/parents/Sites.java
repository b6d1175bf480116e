package org.stillroom.lineage.parents;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.stillroom.lineage.collation.Alignment;
import org.stillroom.lineage.collation.Token;

/**
 * Where an earlier text agrees with a later one, place by place of the later one.
 *
 * @param agrees for each word of the later text whether the earlier one has it there
 * @param opposite for each word of the later text the place in the earlier one, or −1
 * @param dropped for each gap before a word of the later text, and after the last one, the words of
 *     the earlier one that stand there
 * @param moved stretches of two words or more that stand elsewhere in the earlier text
 */
record Sites(boolean[] agrees, int[] opposite, List<List<Token>> dropped, int moved) {

    static Sites of(List<Token> earlier, List<Token> later) {
        Alignment alignment = Alignment.of(earlier, later);
        boolean[] agrees = new boolean[later.size()];
        int[] opposite = new int[later.size()];
        Arrays.fill(opposite, -1);
        boolean[] left = new boolean[earlier.size()];
        List<List<Integer>> gaps = new ArrayList<>();
        for (int j = 0; j <= later.size(); j++) {
            gaps.add(new ArrayList<>());
        }
        int at = 0;
        for (Alignment.Pair pair : alignment.pairs()) {
            if (pair.isBoth()) {
                opposite[pair.second()] = pair.first();
                agrees[pair.second()] = earlier.get(pair.first()).equals(later.get(pair.second()));
            } else if (pair.second() < 0) {
                gaps.get(at).add(pair.first());
                left[pair.first()] = true;
            }
            at = pair.second() >= 0 ? pair.second() + 1 : at;
        }
        int moved = moves(earlier, later, opposite, agrees, left);
        List<List<Token>> dropped =
                gaps.stream()
                        .map(g -> g.stream().filter(i -> left[i]).map(earlier::get).toList())
                        .toList();
        return new Sites(agrees, opposite, dropped, moved);
    }

    /** Finds stretches that only changed their place: one change, not two of each word. */
    private static int moves(
            List<Token> earlier,
            List<Token> later,
            int[] opposite,
            boolean[] agrees,
            boolean[] left) {
        int moved = 0;
        for (int j = 0; j + 1 < later.size(); j++) {
            int best = 0;
            int from = -1;
            for (int i = 0; i + 1 < earlier.size(); i++) {
                int length = 0;
                while (i + length < earlier.size()
                        && j + length < later.size()
                        && left[i + length]
                        && opposite[j + length] < 0
                        && earlier.get(i + length).equals(later.get(j + length))) {
                    length++;
                }
                if (length > best) {
                    best = length;
                    from = i;
                }
            }
            if (best >= 2) {
                moved++;
                for (int k = 0; k < best; k++) {
                    left[from + k] = false;
                    opposite[j + k] = from + k;
                    agrees[j + k] = true;
                }
            }
        }
        return moved;
    }

    int alike() {
        int alike = 0;
        for (boolean a : agrees) {
            alike += a ? 1 : 0;
        }
        return alike;
    }

    /** Returns the changes in edits: each by what sort of word it is. */
    double cost(List<Token> earlier, List<Token> later) {
        double cost = moved;
        for (int j = 0; j < agrees.length; j++) {
            if (!agrees[j]) {
                double was = opposite[j] < 0 ? 0 : earlier.get(opposite[j]).kind().weight();
                cost += Math.max(was, later.get(j).kind().weight());
            }
        }
        return cost
                + dropped.stream().flatMap(List::stream).mapToDouble(t -> t.kind().weight()).sum();
    }

    /** Returns the part of the changes that is not in common words. */
    double substantive(List<Token> earlier, List<Token> later) {
        double cost = 0;
        for (int j = 0; j < agrees.length; j++) {
            if (!agrees[j]) {
                double was = opposite[j] < 0 ? 0 : weight(earlier.get(opposite[j]));
                cost += Math.max(was, weight(later.get(j)));
            }
        }
        return cost + dropped.stream().flatMap(List::stream).mapToDouble(Sites::weight).sum();
    }

    private static double weight(Token token) {
        return token.kind() == Token.Kind.WORD ? 0 : token.kind().weight();
    }
}

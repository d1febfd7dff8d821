package boilwright.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * The accepted word that looks most like the one found, for "did you mean" in a refusal: units, names of fields, fluids.
 * Optimal string alignment distance (a neighbouring pair exchanged counts as one slip), in which a wrong capital counts
 * half.
 */
public final class NearestSpelling {
    private static final int CAPITAL = 1;
    private static final int SLIP = 2;
    private static final int LONGEST = 200;
    private static final int SHORTEST_STEM = 3;

    private NearestSpelling() {}

    /**
     * The nearest accepted word.
     *
     * @param found what was written
     * @param accepted the words to choose from; of two equally near ones the first wins
     * @return empty when nothing is near enough to be a help (about one slip in three letters), and for a text of more
     *     than 200 characters
     */
    public static Optional<String> of(String found, Collection<String> accepted) {
        if (found.isEmpty() || found.length() > LONGEST) {
            return Optional.empty();
        }
        String nearest = null;
        int least = Integer.MAX_VALUE;
        for (String word : accepted) {
            int distance = distance(found, word);
            if (distance < least && distance <= tolerated(found, word)) {
                least = distance;
                nearest = word;
            }
        }
        return nearest != null ? Optional.of(nearest) : sameStem(found, accepted);
    }

    /** Words of one letter may only differ by their capital: otherwise nothing of the word is left. */
    private static int tolerated(String found, String word) {
        int longer = Math.max(found.length(), word.length());
        return longer == 1 ? CAPITAL : SLIP * Math.max(1, longer / 3);
    }

    private static Optional<String> sameStem(String found, Collection<String> accepted) {
        String wanted = found.toLowerCase(Locale.ROOT);
        return accepted.stream()
                .filter(word -> Math.min(word.length(), found.length()) >= SHORTEST_STEM)
                .filter(word -> {
                    String candidate = word.toLowerCase(Locale.ROOT);
                    return candidate.startsWith(wanted) || wanted.startsWith(candidate);
                })
                .findFirst();
    }

    /** Cost of turning one word into the other: 2 a letter, 1 for a capital alone. */
    static int distance(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            cost[i][0] = SLIP * i;
        }
        for (int j = 0; j <= to.length(); j++) {
            cost[0][j] = SLIP * j;
        }
        for (int i = 1; i <= from.length(); i++) {
            for (int j = 1; j <= to.length(); j++) {
                int exchanged = cost[i - 1][j - 1] + letter(from.charAt(i - 1), to.charAt(j - 1));
                int leftOut = Math.min(cost[i - 1][j], cost[i][j - 1]) + SLIP;
                cost[i][j] = Math.min(exchanged, leftOut);
                if (i > 1
                        && j > 1
                        && from.charAt(i - 1) == to.charAt(j - 2)
                        && from.charAt(i - 2) == to.charAt(j - 1)) {
                    cost[i][j] = Math.min(cost[i][j], cost[i - 2][j - 2] + SLIP);
                }
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int letter(char one, char other) {
        if (one == other) {
            return 0;
        }
        return Character.toLowerCase(one) == Character.toLowerCase(other) ? CAPITAL : SLIP;
    }
}

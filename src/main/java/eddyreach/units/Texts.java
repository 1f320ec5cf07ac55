package eddyreach.units;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Small helps for messages. */
public final class Texts {

    private static final int LONGEST = 40;

    private Texts() {}

    /** The text on one line, cut to 40 characters, control characters replaced by spaces. */
    public static String excerpt(String text) {
        StringBuilder out = new StringBuilder();
        int[] points = text.codePoints().limit(LONGEST + 1L).toArray();
        for (int i = 0; i < Math.min(points.length, LONGEST); i++) {
            out.appendCodePoint(isHidden(points[i]) || isSurrogate(points[i]) ? ' ' : points[i]);
        }
        return points.length > LONGEST ? out + "..." : out.toString();
    }

    /** The text with its first letter as a capital, to begin a sentence. */
    public static String capitalised(String text) {
        return text.isEmpty() ? text : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    /** True for what controls a terminal or the direction of writing instead of being seen. */
    public static boolean isHidden(int point) {
        return Character.isISOControl(point)
                || point == 0x2028
                || point == 0x2029
                || point >= 0x202a && point <= 0x202e
                || point >= 0x2066 && point <= 0x2069;
    }

    private static boolean isSurrogate(int point) {
        return point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
    }

    /**
     * The known word nearest to the given one by edit distance; empty when nothing is near, that is within one
     * edit, or a third of the length of a longer word.
     */
    public static Optional<String> nearest(String word, Collection<String> known) {
        if (word.length() > 2 * LONGEST) {
            return Optional.empty();
        }
        String best = null;
        int least = Math.max(1, word.length() / 3) + 1;
        for (String candidate : known) {
            int distance = distance(word.toLowerCase(Locale.ROOT), candidate);
            if (distance < least) {
                least = distance;
                best = candidate;
            }
        }
        return Optional.ofNullable(best);
    }

    /** Edit distance with insertion, deletion, replacement and exchange of neighbours (Damerau 1964, restricted form). */
    static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}

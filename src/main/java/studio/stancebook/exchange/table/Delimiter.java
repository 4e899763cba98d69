package studio.stancebook.exchange.table;

import java.util.ArrayList;
import java.util.List;

/**
 * Finds what separates the cells of a CSV file. Each candidate splits the first lines, quoted parts left whole; the one
 * that gives most lines the width of the heading wins, among equals the one with more columns.
 */
final class Delimiter {

    /** Characters looked at. */
    static final int SAMPLE = 1 << 16;

    private static final char[] CANDIDATES = {',', ';', '\t'};
    private static final int LINES = 50;

    private Delimiter() {}

    /** The delimiter of a text that begins with {@code sample}; a comma when there is but one column. */
    static char of(String sample) {
        char best = ',';
        double bestScore = 0;
        for (char candidate : CANDIDATES) {
            double score = score(widths(sample, candidate));
            if (score > bestScore) {
                best = candidate;
                bestScore = score;
            }
        }
        return best;
    }

    /** Agreement with the heading counts first; the number of columns decides between equals. */
    private static double score(List<Integer> widths) {
        int heading = widths.get(0);
        if (heading < 2) {
            return 0;
        }
        double agreeing = widths.stream().filter(width -> width == heading).count() / (double) widths.size();
        return agreeing + Math.min(heading, 999) / 1e4;
    }

    private static List<Integer> widths(String sample, char delimiter) {
        List<Integer> widths = new ArrayList<>();
        int width = 1;
        boolean quoted = false;
        boolean empty = true;
        for (int i = 0; i < sample.length() && widths.size() < LINES; i++) {
            char c = sample.charAt(i);
            quoted ^= c == '"';
            if (!quoted && (c == '\n' || c == '\r')) {
                if (!empty) {
                    widths.add(width);
                }
                width = 1;
                empty = true;
                continue;
            }
            empty = false;
            if (!quoted && c == delimiter) {
                width++;
            }
        }
        boolean whole = sample.length() < SAMPLE;
        if (widths.isEmpty() || (whole && !empty && widths.size() < LINES)) {
            widths.add(width);
        }
        return widths;
    }
}

package studio.stancebook.activity;

import org.jspecify.annotations.Nullable;

/**
 * What a verification of the chain found.
 *
 * @param whole that every line is as it was written and in its place
 * @param lines how many lines were found good, from the first on
 * @param lastHash the hash of the last of these. Whoever notes it elsewhere can tell later that nothing up to there was
 *     written anew as a whole
 * @param brokenLine the number of the first line that is not good; null if there is none
 * @param finding the same as a plain sentence
 */
public record ChainCheck(
        boolean whole,
        long lines,
        String lastHash,
        @Nullable Long brokenLine,
        String finding) {

    /** Every line is good. */
    public static ChainCheck good(long lines, String lastHash) {
        String finding = lines == 0
                ? "The activity record is empty."
                : "The activity record is whole: " + count(lines) + ", the last with the hash " + lastHash + ".";
        return new ChainCheck(true, lines, lastHash, null, finding);
    }

    /** All is good before a line. */
    public static ChainCheck broken(long line, String lastHash, String why) {
        return new ChainCheck(
                false, line - 1, lastHash, line, "The activity record is broken at line " + line + ": " + why);
    }

    private static String count(long lines) {
        return lines == 1 ? "1 line" : lines + " lines";
    }
}

package studio.stancebook.review.internal;

/**
 * The end of the chain.
 *
 * @param lineCount how many lines there are
 * @param hash of the last one
 */
public record Head(long lineCount, String hash) {}

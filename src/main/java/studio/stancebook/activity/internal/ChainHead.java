package studio.stancebook.activity.internal;

/**
 * The end of the chain.
 *
 * @param lineCount how many lines there are
 * @param hash of the last one
 */
public record ChainHead(long lineCount, String hash) {}

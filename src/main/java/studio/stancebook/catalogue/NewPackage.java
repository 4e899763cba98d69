package studio.stancebook.catalogue;

/**
 * A package that was written a moment ago.
 *
 * @param digest that of its draft
 */
public record NewPackage(long id, String digest) {}

package studio.stancebook.classes;

/**
 * A class as it was when something was judged by it, as far as it is kept.
 *
 * @param missing how many packages are left out because they were changed, moved or deleted since; what they were is not
 *     kept
 */
public record PastClass(ClassSnapshot snapshot, int missing) {}

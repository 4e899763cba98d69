package studio.stancebook.catalogue;

/** What raised a query. */
public enum IssueCause {
    /** Whoever brought the package in asked. */
    BROUGHT_IN,
    /** A value was recorded twice and the two disagree. */
    DOES_NOT_CLOSE,
    /** A value is far from the rest of the class: modified z-score above 3.5. */
    FAR_FROM_CLASS,
    /** Another package has exactly the same dimensions. */
    SAME_DIMENSIONS
}

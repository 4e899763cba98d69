package studio.stancebook.drawing;

/**
 * A part of a page as markup, made by a template, which has escaped what it was given. Only {@link Prints} make one, so that
 * no other text gets into a page unescaped.
 */
public final class Print {

    private final String markup;

    Print(String markup) {
        this.markup = markup;
    }

    /** The markup, as {@code fragments/print} puts it into a page. */
    public String markup() {
        return markup;
    }
}

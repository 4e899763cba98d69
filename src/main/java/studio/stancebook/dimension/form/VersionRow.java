package studio.stancebook.dimension.form;

/**
 * One input of a form in two versions, for the fragment {@code conflict}.
 *
 * @param name of the input
 * @param label in words
 * @param yours the text of who sends the form
 * @param theirs the text of who saved before
 */
public record VersionRow(String name, String label, String yours, String theirs) {

    /** Line ends of a browser and of the server are the same. */
    public VersionRow {
        yours = yours.replace("\r\n", "\n");
        theirs = theirs.replace("\r\n", "\n");
    }

    public boolean differs() {
        return !yours.equals(theirs);
    }
}

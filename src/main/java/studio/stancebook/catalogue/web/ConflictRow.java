package studio.stancebook.catalogue.web;

/**
 * One field of a form in two versions, as {@code fragments/conflict} shows it.
 *
 * @param name of the form field
 */
record ConflictRow(String name, String label, String yours, String theirs) {

    /** Public because the page asks. */
    public boolean differs() {
        return !yours.equals(theirs);
    }
}

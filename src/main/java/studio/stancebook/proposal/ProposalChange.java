package studio.stancebook.proposal;

/**
 * What a proposal is to be called, judged in and how far it has come.
 *
 * @param name 1 to 200 characters on one line; blanks around it are dropped
 * @param segment the key of a segment; another one than before makes a new revision, judged by its bands
 */
public record ProposalChange(String name, String segment, Stage stage) {

    public ProposalChange {
        name = name.strip();
    }
}

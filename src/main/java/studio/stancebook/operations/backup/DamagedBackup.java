package studio.stancebook.operations.backup;

/** A file is no backup, or not the one that was written. */
public final class DamagedBackup extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** @param why the end of a sentence that begins with the file */
    DamagedBackup(String why) {
        super(why);
    }

    DamagedBackup(String why, Throwable cause) {
        super(why, cause);
    }
}

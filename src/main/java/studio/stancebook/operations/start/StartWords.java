package studio.stancebook.operations.start;

import java.nio.file.Path;
import java.util.Optional;
import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.CannotStart;

/** The sentences for trouble with the store at start. */
final class StartWords {

    private StartWords() {}

    static CannotStart noRoom(Path place) {
        return new CannotStart(
                "There is no room left on the disk that holds " + place + ".",
                "Make room on that disk and start again. Nothing that was recorded is lost.");
    }

    /** What to tell about trouble with the database at a URL. */
    static CannotStart about(StoreTrouble trouble, String url) {
        Optional<Path> file = DatabaseUrl.file(url);
        String database = "The database " + file.map(Path::toString).orElse(DatabaseUrl.withoutSecrets(url));
        return switch (trouble) {
            case OPEN_ELSEWHERE ->
                new CannotStart(
                        database + " is open in another process, most likely in a Stancebook that runs already.",
                        "Stop that one first, or set STANCEBOOK_DATA to another folder for a second studio. Several servers for"
                                + " one studio need PostgreSQL.");
            case NO_ROOM -> noRoom(file.orElse(Path.of(".")));
            case NOT_WRITABLE ->
                new CannotStart(
                        database + " cannot be written.",
                        "Give the user who runs the server the right to write it. A standby of PostgreSQL cannot serve a studio.");
            case DAMAGED ->
                new CannotStart(
                        database + " is damaged.",
                        "Nothing was changed in it. Move it to a safe place, then start with an empty data folder and the last"
                                + " backup: --stancebook.restore=FILE.");
            case OTHER_VERSION ->
                new CannotStart(
                        database + " was written by a version of the database software that this program cannot read.",
                        "Start the Stancebook that wrote it, back up there, and restore the backup here into an empty data"
                                + " folder: --stancebook.restore=FILE.");
            case WRONG_LOGIN ->
                new CannotStart(
                        database + " refuses the user or the password.",
                        "Check STANCEBOOK_DB_USER and STANCEBOOK_DB_PASSWORD.");
            case NO_SUCH_DATABASE ->
                new CannotStart(
                        database + " does not exist.",
                        "Make an empty database of that name, or correct STANCEBOOK_DB_URL.");
            case UNREACHABLE ->
                new CannotStart(
                        database + " cannot be reached.",
                        "See that the database server runs and that this machine may connect to it; or correct"
                                + " STANCEBOOK_DB_URL.");
        };
    }
}

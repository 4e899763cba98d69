package studio.stancebook.operations;

import studio.stancebook.operations.store.StoreTrouble;
import studio.stancebook.problem.ProblemType;
import studio.stancebook.problem.Refusal;

/** The store cannot do what was asked for at this moment, whatever was sent. */
public final class OutOfService extends Refusal {

    private static final long serialVersionUID = 1L;

    private OutOfService(ProblemType type, String message) {
        super(type, message);
    }

    /** Nothing is recorded because room is short; nothing was tried. */
    public static OutOfService becauseRoomIsShort() {
        return new OutOfService(
                ProblemType.NO_ROOM,
                "The disk that holds the studio's data is nearly full, so nothing is recorded until there is room again."
                        + " Reading goes on. Tell whoever runs this server.");
    }

    /** What to tell about trouble of the store that came up while it was used. */
    static OutOfService because(StoreTrouble trouble) {
        return switch (trouble) {
            case NO_ROOM ->
                new OutOfService(
                        ProblemType.NO_ROOM,
                        "There is no room left on the disk that holds the studio's data. Tell whoever runs this server; once"
                                + " there is room, look whether what you sent was recorded, and send it again if not.");
            case DAMAGED ->
                new OutOfService(
                        ProblemType.UNAVAILABLE,
                        "The studio's data cannot be read from the disk as it was written. Tell whoever runs this server.");
            case NOT_WRITABLE ->
                new OutOfService(
                        ProblemType.UNAVAILABLE,
                        "The studio's data can be read but not changed at this moment. Tell whoever runs this server.");
            default ->
                new OutOfService(
                        ProblemType.UNAVAILABLE,
                        "The studio's data cannot be reached at this moment. Try again shortly; look first whether what you"
                                + " sent was recorded.");
        };
    }
}

package studio.stancebook.problem;

import java.util.Locale;

/** The kinds of problem that an answer can carry; described for people in {@code docs/problems.md}. */
public enum ProblemType {
    MALFORMED(400, "The request cannot be read"),
    UNAUTHENTICATED(401, "Sign in first"),
    FORBIDDEN(403, "Not allowed"),
    NOT_FOUND(404, "Not found"),
    METHOD_NOT_ALLOWED(405, "Not a method of this address"),
    NOT_ACCEPTABLE(406, "Not available in that form"),
    CONFLICT(409, "In conflict with what is there"),
    STALE(412, "Changed by someone else meanwhile"),
    TOO_LARGE(413, "Too large"),
    UNSUPPORTED_MEDIA(415, "Unsupported kind of content"),
    IMPOSSIBLE(422, "Understood, but impossible"),
    PRECONDITION_REQUIRED(428, "If-Match is missing"),
    TOO_MANY(429, "Too many requests"),
    INTERNAL(500, "Something went wrong here"),
    UNAVAILABLE(503, "Not available at this moment"),
    NO_ROOM(507, "No room left");

    private final int status;
    private final String title;

    ProblemType(int status, String title) {
        this.status = status;
        this.title = title;
    }

    /** The HTTP status code. */
    public int status() {
        return status;
    }

    /** A short sentence that is the same for every problem of this kind. */
    public String title() {
        return title;
    }

    /** The last part of the problem's type URI, such as {@code not-found}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

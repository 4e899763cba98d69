package studio.stancebook.account.internal;

/**
 * A token at the one moment its secret is known.
 *
 * @param secret what the program sends
 */
public record IssuedToken(TokenEntry entry, String secret) {

    public long id() {
        return entry.id();
    }

    public String name() {
        return entry.name();
    }

    /** Leaves out the secret. */
    @Override
    public String toString() {
        return "IssuedToken[" + id() + ", " + name() + "]";
    }
}

package studio.stancebook.account.internal;

/**
 * A token at the one moment its secret is known.
 *
 * @param secret what the program sends
 */
public record IssuedToken(long id, String name, String secret) {

    /** Leaves out the secret. */
    @Override
    public String toString() {
        return "IssuedToken[" + id + ", " + name + "]";
    }
}

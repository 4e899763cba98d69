package studio.stancebook.access;

import java.io.Serializable;
import java.util.Optional;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/**
 * The person a request acts for; the principal of every authentication, by page or by token.
 *
 * @param personId the id of the person
 * @param name the name to show
 * @param email the address to sign in with, in lower case
 * @param role the role at the time of the request
 */
public record SignedIn(long personId, String name, String email, Role role) implements Serializable {

    /** Who the work under way is for; empty when nobody is signed in, as for what the server does by itself. */
    public static Optional<SignedIn> current() {
        return Optional.ofNullable(SecurityContextHolder.getContext().getAuthentication())
                .map(Authentication::getPrincipal)
                .filter(SignedIn.class::isInstance)
                .map(SignedIn.class::cast);
    }

    /** The person as the author of what they do. */
    public Author author() {
        return new Author(personId, name);
    }

    /** Whether the person has a permission, whoever owns the thing. */
    public boolean may(Permission permission) {
        return permission.isGrantedTo(role);
    }

    /** Whether the person has a permission for what somebody owns. */
    public boolean may(Permission permission, long ownerId) {
        return scope(permission).includes(ownerId);
    }

    /** Whose things the person has a permission for. */
    public OwnerScope scope(Permission permission) {
        return OwnerScope.of(this, permission);
    }

    /** The id only: this text ends up in logs and in the session table, where address and name have no place. */
    @Override
    public String toString() {
        return principalName(personId);
    }

    /** What sessions of a person are found by. */
    public static String principalName(long personId) {
        return "person " + personId;
    }
}

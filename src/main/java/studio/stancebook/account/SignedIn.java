package studio.stancebook.account;

import java.io.Serializable;
import java.util.List;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.authority.SimpleGrantedAuthority;

/**
 * The person a request acts for; the principal of every authentication, by page or by token.
 *
 * @param personId the id of the person
 * @param name the name to show
 * @param email the address to sign in with, in lower case
 * @param role the role at the time of the request
 */
public record SignedIn(long personId, String name, String email, Role role) implements Serializable {

    /** The authorities that come with the role. */
    public List<GrantedAuthority> authorities() {
        return List.of(new SimpleGrantedAuthority(role.authority()));
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

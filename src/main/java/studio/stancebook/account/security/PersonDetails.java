package studio.stancebook.account.security;

import java.util.Collection;
import java.util.List;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;
import studio.stancebook.account.internal.Credentials;

/** A person in the words of Spring Security, while a password is being checked; never kept. */
record PersonDetails(Credentials credentials) implements UserDetails {

    /** None: what somebody may do comes from the role of the moment. */
    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return List.of();
    }

    @Override
    public String getPassword() {
        return credentials.passwordHash();
    }

    @Override
    public String getUsername() {
        return credentials.signedIn().email();
    }

    @Override
    public boolean isEnabled() {
        return credentials.active();
    }
}

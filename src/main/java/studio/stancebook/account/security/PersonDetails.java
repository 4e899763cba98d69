package studio.stancebook.account.security;

import java.util.Collection;
import org.springframework.security.core.GrantedAuthority;
import org.springframework.security.core.userdetails.UserDetails;
import studio.stancebook.account.internal.Credentials;

/** A person in the words of Spring Security, while a password is being checked; never kept. */
record PersonDetails(Credentials credentials) implements UserDetails {

    @Override
    public Collection<? extends GrantedAuthority> getAuthorities() {
        return credentials.signedIn().authorities();
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

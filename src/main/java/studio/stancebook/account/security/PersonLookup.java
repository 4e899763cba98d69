package studio.stancebook.account.security;

import org.jspecify.annotations.Nullable;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsPasswordService;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import studio.stancebook.account.internal.Credentials;
import studio.stancebook.account.internal.PersonService;

/**
 * Finds people by address for Spring Security, and renews hashes made at a lower cost than today's. Not a bean: Spring Security
 * would make another way in of it, around the limits of {@link PasswordSignIn}.
 */
class PersonLookup implements UserDetailsService, UserDetailsPasswordService {

    private final PersonService personService;

    PersonLookup(PersonService personService) {
        this.personService = personService;
    }

    @Override
    public UserDetails loadUserByUsername(String email) {
        return personService
                .credentialsOf(email)
                .map(PersonDetails::new)
                .orElseThrow(() -> new UsernameNotFoundException("no such address"));
    }

    @Override
    public UserDetails updatePassword(UserDetails user, @Nullable String newHash) {
        if (newHash == null || !(user instanceof PersonDetails person)) {
            return user;
        }
        Credentials old = person.credentials();
        personService.rehash(old.signedIn().personId(), newHash);
        return new PersonDetails(new Credentials(
                old.signedIn(), newHash, old.passwordChangedAt(), old.passwordChangeDue(), old.active()));
    }
}

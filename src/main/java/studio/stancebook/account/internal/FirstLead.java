package studio.stancebook.account.internal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Role;
import studio.stancebook.problem.Forbidden;

/** Lets whoever sees the console make the first lead of a studio that has nobody yet, once. */
@Component
public class FirstLead {

    private final PersonService people;
    private @Nullable String key;

    FirstLead(PersonService people) {
        this.people = people;
    }

    /** A new key for the link on the console; any earlier one is dead. */
    synchronized String newKey() {
        String made = Secret.key();
        key = made;
        return made;
    }

    /** @throws Forbidden unless the key is the one on the console and there is still nobody in the studio */
    public synchronized void check(@Nullable String typedKey) {
        if (!matches(typedKey) || !people.isEmpty()) {
            throw new Forbidden("This link does not work: the studio has somebody already, the server was started anew"
                    + " since, or the link was not copied whole.");
        }
    }

    /**
     * Makes the first lead, after which the key is dead.
     *
     * @throws Forbidden as {@link #check} does
     * @throws studio.stancebook.problem.Impossible naming every field that cannot be accepted
     */
    public synchronized void make(
            @Nullable String typedKey, @Nullable String email, @Nullable String name, @Nullable String password) {
        check(typedKey);
        people.addWithOwnPassword(new NewPerson(email, name, Role.LEAD.key(), password));
        key = null;
    }

    /** In a time that tells nothing about how much of the key was right. */
    private boolean matches(@Nullable String typed) {
        return key != null
                && typed != null
                && MessageDigest.isEqual(key.getBytes(StandardCharsets.UTF_8), typed.getBytes(StandardCharsets.UTF_8));
    }
}

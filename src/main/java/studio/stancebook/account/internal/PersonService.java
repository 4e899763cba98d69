package studio.stancebook.account.internal;

import java.time.Clock;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.data.domain.Page;
import org.springframework.data.domain.Pageable;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.NotFound;

/** The people of the studio and the rules for changing them; who may do so is the caller's to check. */
@Component
@Transactional
public class PersonService {

    /** The longest e-mail address there can be: RFC 5321, 4.5.3.1.3, as corrected by erratum 1690 of RFC 3696 (from memory). */
    public static final int LONGEST_EMAIL = 254;

    private final People people;
    private final AccessTokens tokens;
    private final Passkeys passkeys;
    private final PasswordEncoder passwords;
    private final PasswordPolicy policy;
    private final Clock clock;
    private final ApplicationEventPublisher events;

    PersonService(
            People people,
            AccessTokens tokens,
            Passkeys passkeys,
            PasswordEncoder passwords,
            PasswordPolicy policy,
            Clock clock,
            ApplicationEventPublisher events) {
        this.people = people;
        this.tokens = tokens;
        this.passkeys = passkeys;
        this.passwords = passwords;
        this.policy = policy;
        this.clock = clock;
        this.events = events;
    }

    @Transactional(readOnly = true)
    public boolean isEmpty() {
        return people.count() == 0;
    }

    @Transactional(readOnly = true)
    public Page<PersonEntry> list(Pageable page) {
        return people.findAllByOrderByDisplayNameAscIdAsc(page).map(Person::entry);
    }

    @Transactional(readOnly = true)
    public PersonEntry get(long id) {
        return find(id).entry();
    }

    /** What signing in needs to know of the owner of an address, however it is capitalised. */
    @Transactional(readOnly = true)
    public Optional<Credentials> credentialsOf(String email) {
        return people.findByEmail(Person.canonical(email)).map(Credentials::of);
    }

    /** What signing in needs to know of a person. */
    @Transactional(readOnly = true)
    public Optional<Credentials> credentialsOf(long id) {
        return people.findById(id).map(Credentials::of);
    }

    /**
     * Adds an active person, who has to choose another password before anything else.
     *
     * @throws studio.stancebook.problem.Impossible naming every field that cannot be accepted
     * @throws Conflict if the address belongs to somebody already, active or not
     */
    public PersonEntry add(NewPerson typed) {
        return add(typed, true);
    }

    /** Adds an active person whose password is their own already; refuses as {@link #add} does. */
    public PersonEntry addWithOwnPassword(NewPerson typed) {
        return add(typed, false);
    }

    private PersonEntry add(NewPerson typed, boolean passwordChangeDue) {
        PersonChecks checks = new PersonChecks();
        String email = checks.email(typed.email());
        String name = checks.displayName(typed.displayName());
        Role role = checks.role(typed.role());
        String password = newPassword(checks, "password", typed.password(), name, email);
        checks.refuseIfAny();
        if (people.existsByEmail(email)) {
            throw Conflict.ofField("email", "There is a person with the address " + email + " already.");
        }
        Person person = new Person(email, name, role, hash(password), passwordChangeDue, clock.instant());
        PersonEntry added = people.saveAndFlush(person).entry();
        tell("added", added, FieldValues.none(), facts(added));
        return added;
    }

    /**
     * Changes name and role, and whether the person may sign in. Whoever may no longer sign in loses their tokens and is
     * signed out for good: what ended then does not come back when they may sign in again.
     *
     * @throws studio.stancebook.problem.Stale if the person was changed since
     * @throws Conflict if nobody could run the studio afterwards
     */
    public PersonEntry change(long id, ExpectedVersion expected, PersonChange typed) {
        PersonChecks checks = new PersonChecks();
        String name = checks.displayName(typed.displayName());
        Role role = checks.role(typed.role());
        boolean active = checks.active(typed.active());
        checks.refuseIfAny();
        Person person = find(id);
        expected.check(person.version(), "person");
        if (person.isActiveLead() && !(active && role == Role.LEAD)) {
            refuseIfLastLead(person);
        }
        PersonEntry before = person.entry();
        person.become(name, role, active);
        PersonEntry changed = people.saveAndFlush(person).entry();
        FieldValues after = facts(changed);
        if (before.active() && !changed.active()) {
            after.and(endAccess(id));
        }
        tell("changed", changed, facts(before), after);
        return changed;
    }

    private Map<String, Integer> endAccess(long id) {
        events.publishEvent(new AccessEnded(id));
        int revoked = tokens.revokeAll(id);
        return revoked == 0 ? Map.of() : Map.of("tokens revoked", revoked);
    }

    /**
     * Gives a person another password, which they have to replace before anything else; whoever came in with the old one is
     * out, and so are the person's tokens and passkeys.
     */
    public void resetPassword(long id, @Nullable String newPassword) {
        Person person = find(id);
        PersonChecks checks = new PersonChecks();
        String password = newPassword(checks, "password", newPassword, person.displayName(), person.email());
        checks.refuseIfAny();
        setPassword(person, password, true);
        FieldValues gone =
                FieldValues.of("tokens revoked", tokens.revokeAll(id)).and("passkeys removed", passkeys.removeAll(id));
        tell("password reset", person.entry(), FieldValues.none(), gone);
    }

    /** Whether a person still has a password that somebody else set. */
    @Transactional(readOnly = true)
    public boolean isPasswordChangeDue(long id) {
        return find(id).passwordChangeDue();
    }

    /** Whether this is the password of a person. */
    @Transactional(readOnly = true)
    public boolean isPasswordOf(long id, @Nullable String typed) {
        return typed != null && matches(typed, find(id));
    }

    /**
     * Lets a person replace their own password, the current one of which was checked; their other sign-ins are over, tokens
     * and passkeys stay.
     */
    public Credentials changeOwnPassword(SignedIn who, @Nullable String newPassword) {
        Person person = find(who.personId());
        PersonChecks checks = new PersonChecks();
        String password = newPassword(checks, "newPassword", newPassword, person.displayName(), person.email());
        checks.refuseIfAny();
        if (passwords.matches(password, person.passwordHash())) {
            throw Impossible.ofField("newPassword", "This is the password you have now. Choose another.");
        }
        setPassword(person, password, false);
        tell("password changed", person.entry(), FieldValues.none(), FieldValues.none());
        return Credentials.of(person);
    }

    /** Stores the same password under a newer hash. */
    public void rehash(long id, String newHash) {
        find(id).rehash(newHash);
    }

    /** Never with a password or its hash. */
    private void tell(String action, PersonEntry person, FieldValues before, FieldValues after) {
        events.publishEvent(ActivityEvent.of(action, "person", person.id(), person.displayName(), before, after));
    }

    private static FieldValues facts(PersonEntry person) {
        return FieldValues.of("email", person.email())
                .and("name", person.displayName())
                .and("role", person.role().key())
                .and("active", person.active() ? "yes" : "no");
    }

    private void refuseIfLastLead(Person person) {
        boolean another = people.lockActive(Role.LEAD).stream().anyMatch(lead -> lead.id() != person.id());
        if (!another) {
            throw Conflict.ofField(
                    "role",
                    person.displayName()
                            + " is the only active lead: make somebody else a lead first, or nobody could run the studio.");
        }
    }

    private String newPassword(
            PersonChecks checks, String field, @Nullable String typed, String displayName, String email) {
        policy.objection(typed, displayName, email).ifPresent(objection -> checks.object(field, objection));
        return typed == null ? "" : typed;
    }

    private void setPassword(Person person, String password, boolean changeDue) {
        person.changePassword(hash(password), changeDue, clock.instant());
        people.saveAndFlush(person);
    }

    private boolean matches(String password, Person person) {
        return PasswordRules.objection(password).isEmpty() && passwords.matches(password, person.passwordHash());
    }

    private String hash(String password) {
        return Objects.requireNonNull(passwords.encode(password));
    }

    private Person find(long id) {
        return people.findById(id).orElseThrow(() -> new NotFound("person", id));
    }
}

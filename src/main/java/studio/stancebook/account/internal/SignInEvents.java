package studio.stancebook.account.internal;

import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityEvent;
import studio.stancebook.activity.FieldValues;

/** Tells of signing in and out by page, and of passwords that were refused, as signInEvents about the person whose they are. */
@Component
public class SignInEvents {

    /** What such signInEvents are about. */
    static final String KIND = "sign-in";

    /** Stands for the person where an address is nobody's; what was typed there may be a password. */
    static final String UNKNOWN = "unknown";

    private static final Logger LOG = LoggerFactory.getLogger(SignInEvents.class);

    private final PersonService people;
    private final ApplicationEventPublisher events;

    SignInEvents(PersonService people, ApplicationEventPublisher events) {
        this.people = people;
        this.events = events;
    }

    /**
     * Somebody signed in by page.
     *
     * @param by what proved who it is, such as {@code password}
     * @param machine browser and system in words; may be empty
     * @param address where the request came from
     */
    public void begun(SignedIn who, String by, String machine, String address) {
        tell("begun", who, FieldValues.of("by", by).and("machine", machine).and("address", address));
    }

    /** Somebody who was signed in proved once more who they are. */
    public void confirmed(SignedIn who, String address) {
        tell("confirmed", who, FieldValues.of("address", address));
    }

    /** Somebody signed out at the place where they were. */
    public void ended(SignedIn who) {
        tell("ended", who, FieldValues.none());
    }

    /** Somebody was signed out at one of the places where they are not. */
    public void endedElsewhere(long personId, String machine) {
        tell("ended from elsewhere", personId, FieldValues.of("machine", machine));
    }

    /** Somebody was signed out wherever they were. */
    public void endedEverywhere(long personId) {
        tell("ended everywhere", personId, FieldValues.none());
    }

    /**
     * An address and a password did not get in.
     *
     * @param email as it was typed; it is recorded only as whose it is
     */
    public void refused(String email, String address) {
        tellIfPossible(() -> {
            Optional<SignedIn> owner = people.credentialsOf(email).map(Credentials::signedIn);
            String subject =
                    owner.map(person -> String.valueOf(person.personId())).orElse(UNKNOWN);
            String title = owner.map(SignedIn::name).orElse("An address that nobody has here");
            return ActivityEvent.of(
                    "refused", KIND, subject, title, FieldValues.none(), FieldValues.of("address", address));
        });
    }

    /** Somebody who is signed in gave a wrong password where theirs was asked for. */
    public void passwordRefused(SignedIn who, String address) {
        tellIfPossible(() -> ActivityEvent.of(
                "refused",
                "password",
                who.personId(),
                who.name(),
                FieldValues.none(),
                FieldValues.of("address", address)));
    }

    /** Where it cannot be recorded, the refusal stands all the same. */
    private void tellIfPossible(Supplier<ActivityEvent> refused) {
        try {
            events.publishEvent(refused.get());
        } catch (RuntimeException failure) {
            LOG.warn("A refused password could not be recorded: {}", failure.toString());
        }
    }

    private void tell(String action, long personId, FieldValues facts) {
        people.credentialsOf(personId).ifPresent(person -> tell(action, person.signedIn(), facts));
    }

    private void tell(String action, SignedIn whose, FieldValues facts) {
        events.publishEvent(ActivityEvent.of(action, KIND, whose.personId(), whose.name(), FieldValues.none(), facts));
    }
}

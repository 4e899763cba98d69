package studio.stancebook.account.internal;

import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Component;
import studio.stancebook.account.Deed;
import studio.stancebook.account.Facts;
import studio.stancebook.account.SignedIn;

/** Tells of signing in and out by page, as deeds about the person whose sign-in it is. */
@Component
public class SignInDeeds {

    /** What such deeds are about. */
    static final String KIND = "sign-in";

    /** Stands for the person where an address is nobody's; what was typed there may be a password. */
    static final String UNKNOWN = "unknown";

    private static final Logger LOG = LoggerFactory.getLogger(SignInDeeds.class);

    private final Staff staff;
    private final ApplicationEventPublisher events;

    SignInDeeds(Staff staff, ApplicationEventPublisher events) {
        this.staff = staff;
        this.events = events;
    }

    /**
     * Somebody signed in by page.
     *
     * @param machine browser and system in words; may be empty
     * @param address where the request came from
     */
    public void begun(SignedIn who, String machine, String address) {
        tell("begun", who, Facts.of("machine", machine).and("address", address));
    }

    /** Somebody who was signed in proved once more who they are. */
    public void confirmed(SignedIn who, String address) {
        tell("confirmed", who, Facts.of("address", address));
    }

    /** Somebody signed out at the place where they were. */
    public void ended(SignedIn who) {
        tell("ended", who, Facts.none());
    }

    /** Somebody was signed out at one of the places where they are not. */
    public void endedElsewhere(long personId, String machine) {
        tell("ended from elsewhere", personId, Facts.of("machine", machine));
    }

    /** Somebody was signed out wherever they were. */
    public void endedEverywhere(long personId) {
        tell("ended everywhere", personId, Facts.none());
    }

    /**
     * An address and a password did not get in. Where that cannot be recorded, the refusal stands all the same.
     *
     * @param email as it was typed; it is recorded only as whose it is
     */
    public void refused(String email, String address) {
        try {
            Optional<SignedIn> owner = staff.credentialsOf(email).map(Credentials::signedIn);
            String subject =
                    owner.map(person -> String.valueOf(person.personId())).orElse(UNKNOWN);
            String title = owner.map(SignedIn::name).orElse("An address that nobody has here");
            events.publishEvent(Deed.of("refused", KIND, subject, title, Facts.none(), Facts.of("address", address)));
        } catch (RuntimeException failure) {
            LOG.warn("A refused sign-in could not be recorded: {}", failure.toString());
        }
    }

    private void tell(String action, long personId, Facts facts) {
        staff.credentialsOf(personId).ifPresent(person -> tell(action, person.signedIn(), facts));
    }

    private void tell(String action, SignedIn whose, Facts facts) {
        events.publishEvent(Deed.of(action, KIND, whose.personId(), whose.name(), Facts.none(), facts));
    }
}

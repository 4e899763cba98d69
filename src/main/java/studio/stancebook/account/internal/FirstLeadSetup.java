package studio.stancebook.account.internal;

import java.util.List;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import studio.stancebook.access.Role;
import studio.stancebook.problem.CannotStart;
import studio.stancebook.problem.Refusal;

/** Sees to it that somebody can come into a studio that has nobody yet. */
@Component
@Profile("!demo")
class FirstLeadSetup {

    private final PersonService people;
    private final FirstLead firstLead;
    private final AdminSettings admin;
    private final Console console;

    FirstLeadSetup(PersonService people, FirstLead firstLead, AdminSettings admin, Console console) {
        this.people = people;
        this.firstLead = firstLead;
        this.admin = admin;
        this.console = console;
    }

    @EventListener(ApplicationReadyEvent.class)
    void open() {
        if (!people.isEmpty()) {
            return;
        }
        if (admin.given()) {
            makeFromSettings();
        } else {
            tellLink();
        }
    }

    private void makeFromSettings() {
        if (!admin.whole()) {
            throw new CannotStart(
                    "The first lead needs both STANCEBOOK_ADMIN_EMAIL and STANCEBOOK_ADMIN_PASSWORD; only one of them is"
                            + " set.",
                    "Set both, or neither for a link on the console.");
        }
        try {
            people.addWithOwnPassword(new NewPerson(admin.email(), "Studio lead", Role.LEAD.key(), admin.password()));
        } catch (Refusal refusal) {
            throw new CannotStart(
                    "The first lead cannot be made from STANCEBOOK_ADMIN_EMAIL and STANCEBOOK_ADMIN_PASSWORD: "
                            + refusal.detail(),
                    "Correct the two, or leave both out for a link on the console.");
        }
        console.tell(List.of("The first lead can sign in at " + console.address() + " as " + admin.email() + "."));
    }

    private void tellLink() {
        console.tell(List.of(
                "There is nobody in this studio yet. Make its first lead here:",
                "",
                console.address() + "/setup?key=" + firstLead.newKey(),
                "",
                "The link works once, until the server stops."));
    }
}

package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.ExpectedVersion;

/** A studio always has somebody who can run it. Its database is its own: who else is a lead decides. */
abstract class LastLeadTest {

    @Autowired
    StudioClients studio;

    @Autowired
    PersonService people;

    @Autowired
    Directory directory;

    @Test
    void staysActiveAndALeadUntilThereIsAnother() {
        SignedIn first = studio.add("first@studio.example", "First", Role.LEAD);

        assertThatThrownBy(() -> change(first, "designer", true))
                .isInstanceOf(Conflict.class)
                .hasMessageContaining("only active lead");
        assertThatThrownBy(() -> change(first, "lead", false)).isInstanceOf(Conflict.class);
        change(first, "lead", true);

        SignedIn second = studio.add("second@studio.example", "Second", Role.LEAD);
        change(second, "lead", false);
        assertThatThrownBy(() -> change(first, "lead", false)).isInstanceOf(Conflict.class);
        change(second, "lead", true);

        List<Boolean> bothAtOnce =
                Stream.of(first, second)
                        .map(lead -> CompletableFuture.supplyAsync(() -> isChanged(lead)))
                        .toList()
                        .stream()
                        .map(CompletableFuture::join)
                        .toList();
        assertThat(bothAtOnce).containsExactlyInAnyOrder(true, false);
        assertThat(directory.active(Role.LEAD)).hasSize(1);
    }

    private boolean isChanged(SignedIn lead) {
        try {
            change(lead, "viewer", true);
            return true;
        } catch (Conflict | org.springframework.dao.ConcurrencyFailureException refused) {
            return false;
        }
    }

    private void change(SignedIn person, String role, boolean active) {
        ExpectedVersion now = new ExpectedVersion(people.get(person.personId()).version());
        people.change(person.personId(), now, new PersonChange(person.name(), role, active));
    }
}

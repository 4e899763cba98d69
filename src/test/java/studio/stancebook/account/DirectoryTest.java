package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

@StudioTest
class DirectoryTest {

    @Autowired
    StudioClients studio;

    @Autowired
    Directory directory;

    @Test
    void namesPeopleByTheirIds() {
        SignedIn tutor = studio.person(Role.TUTOR);
        SignedIn viewer = studio.person(Role.VIEWER);

        assertThat(directory.named(List.of(tutor.personId(), viewer.personId(), -1L)))
                .containsOnlyKeys(tutor.personId(), viewer.personId())
                .containsEntry(tutor.personId(), new PersonName(tutor.personId(), tutor.name(), Role.TUTOR, true));
        assertThat(directory.named(viewer.personId()))
                .hasValueSatisfying(person -> assertThat(person.name()).isEqualTo(viewer.name()));
        assertThat(directory.named(-1L)).isEmpty();
        assertThat(directory.named(List.of())).isEmpty();
        assertThat(directory.active(Role.TUTOR))
                .extracting(PersonName::id)
                .contains(tutor.personId())
                .doesNotContain(viewer.personId());
    }
}

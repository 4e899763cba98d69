package studio.stancebook.account.web;

import org.jspecify.annotations.Nullable;
import studio.stancebook.account.internal.NewPerson;
import studio.stancebook.account.internal.PersonChange;
import studio.stancebook.account.internal.PersonEntry;
import studio.stancebook.problem.ExpectedVersion;

/**
 * The form for a person, new or there already, as typed.
 *
 * @param role the key of a role
 * @param active {@code true} or nothing, as a box that is ticked or not
 * @param version that the form was filled from; 0 for a new person
 */
record PersonForm(
        @Nullable String email,
        @Nullable String displayName,
        @Nullable String role,
        @Nullable String password,
        @Nullable Boolean active,
        @Nullable Long version) {

    static PersonForm empty() {
        return new PersonForm("", "", "designer", "", true, 0L);
    }

    static PersonForm of(PersonEntry person) {
        return new PersonForm(
                person.email(), person.displayName(), person.role().key(), "", person.active(), person.version());
    }

    /** The same words on top of another version, for another try. */
    PersonForm atVersion(PersonEntry now) {
        return new PersonForm(now.email(), displayName, role, "", isActive(), now.version());
    }

    NewPerson asNew() {
        return new NewPerson(email, displayName, role, password);
    }

    PersonChange asChange() {
        return new PersonChange(displayName, role, isActive());
    }

    ExpectedVersion expected() {
        return new ExpectedVersion(version == null ? -1 : version);
    }

    /** Public because the page asks. */
    public boolean isActive() {
        return Boolean.TRUE.equals(active);
    }

    /** Leaves out the password. */
    @Override
    public String toString() {
        return "PersonForm[" + email + ", " + role + "]";
    }
}

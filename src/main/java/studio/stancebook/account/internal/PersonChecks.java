package studio.stancebook.account.internal;

import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import studio.stancebook.access.Role;
import studio.stancebook.problem.ErrorList;
import studio.stancebook.problem.FieldError;
import studio.stancebook.problem.Impossible;
import studio.stancebook.problem.Legible;

/** Reads what was typed about a person, collecting every objection before it refuses. */
final class PersonChecks {

    private static final Pattern EMAIL = Pattern.compile("[^\\s@\\p{Cntrl}]+@[^\\s@\\p{Cntrl}]+");
    private static final int MAX_NAME = 100;

    private final ErrorList objections = new ErrorList();

    String email(@Nullable String typed) {
        String email = Person.canonical(typed == null ? "" : typed);
        if (email.length() > PersonService.LONGEST_EMAIL
                || !EMAIL.matcher(email).matches()
                || !Legible.isLine(email)) {
            object(
                    "email",
                    told(email, "an e-mail address") + "it takes the form name@place, at most "
                            + PersonService.LONGEST_EMAIL + " characters.");
        }
        return email;
    }

    String displayName(@Nullable String typed) {
        String name = typed == null ? "" : typed.strip();
        Legible.faultOfLine("a name", name, MAX_NAME).ifPresent(fault -> object("displayName", fault));
        return name;
    }

    Role role(@Nullable String typed) {
        Optional<Role> role = Role.ofKey(typed == null ? "" : typed);
        if (role.isEmpty()) {
            object("role", told(typed, "a role") + "it is one of " + Role.keys() + ".");
        }
        return role.orElse(Role.VIEWER);
    }

    boolean active(@Nullable Boolean typed) {
        if (typed == null) {
            object("active", "Say true or false: whether the person may sign in.");
        }
        return Boolean.TRUE.equals(typed);
    }

    void object(String field, String message) {
        objections.add(new FieldError(field, message));
    }

    void refuseIfAny() {
        if (!objections.isEmpty()) {
            throw Impossible.of(objections);
        }
    }

    /** Begins a sentence about what was typed, or about nothing having been typed. */
    static String told(@Nullable String typed, String wanted) {
        String text = typed == null ? "" : Legible.shown(typed.strip());
        if (text.isEmpty()) {
            return "Give " + wanted + ": ";
        }
        String shown = text.length() <= MAX_NAME ? text : text.substring(0, MAX_NAME) + "…";
        return "\"" + shown + "\" is not " + wanted + ": ";
    }
}

package studio.stancebook.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class FieldErrorsTest {

    @Test
    void saysWhatIsWrongWithAFieldAndNothingOfTheOthers() {
        FieldErrors errors = new FieldErrors(List.of(
                new FieldError("wheelbase", "Too long."),
                new FieldError("wheelbase", "Not a number."),
                new FieldError("name", "Missing.")));

        assertThat(errors.on("wheelbase")).isEqualTo("Too long. Not a number.");
        assertThat(errors.on("cowl")).isNull();
        assertThat(errors.any()).isTrue();
        assertThat(errors.count()).isEqualTo(3);
    }

    @Test
    void tiesARefusalOfTheWholeToTheFieldGiven() {
        assertThat(FieldErrors.of(new Conflict("Taken."), "name").on("name")).isEqualTo("Taken.");
        assertThat(FieldErrors.of(Conflict.ofField("email", "Taken."), "name").on("name"))
                .isNull();
        assertThat(FieldErrors.none().any()).isFalse();
    }
}

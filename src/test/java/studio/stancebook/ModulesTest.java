package studio.stancebook;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;

import org.junit.jupiter.api.Test;
import org.springframework.modulith.core.ApplicationModules;

class ModulesTest {

    private static final ApplicationModules MODULES = ApplicationModules.of(Stancebook.class);

    @Test
    void dependOnEachOtherOnlyAsDeclared() {
        assertDoesNotThrow(() -> MODULES.verify());
    }
}

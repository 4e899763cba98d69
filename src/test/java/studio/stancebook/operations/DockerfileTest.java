package studio.stancebook.operations;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import studio.stancebook.operations.Dockerfile.Instruction;

/** That {@code docker build --build-arg} can pin every base image by digest, as docs/operations.md says. */
class DockerfileTest {

    private final List<Instruction> instructions =
            Dockerfile.read(Path.of("Dockerfile")).instructions();

    @Test
    void takesEveryBaseImageFromAnArgument() {
        assertThat(of("FROM")).containsExactly("${BUILD_IMAGE} AS build", "${RUN_IMAGE}");
        assertThat(before("FROM"))
                .extracting(text -> text.split("=", 2)[0])
                .containsExactly("BUILD_IMAGE", "RUN_IMAGE");
    }

    @Test
    void namesARepositoryAndATagForEachThatIsNotGiven() {
        assertThat(before("FROM"))
                .extracting(text -> text.split("=", 2)[1])
                .allSatisfy(image -> assertThat(image).matches("[a-z-]+:[a-z0-9.-]+"));
    }

    @Test
    void copiesFromNoImageThatHasNoArgument() {
        assertThat(of("COPY"))
                .flatExtracting(text -> Arrays.asList(text.split(" ")))
                .filteredOn(word -> word.startsWith("--from="))
                .isNotEmpty()
                .allMatch("--from=build"::equals);
    }

    private List<String> of(String keyword) {
        return instructions.stream()
                .filter(instruction -> instruction.keyword().equals(keyword))
                .map(Instruction::text)
                .toList();
    }

    /** What stands before the first FROM, which only ARG may. */
    private List<String> before(String keyword) {
        return instructions.stream()
                .takeWhile(instruction -> !instruction.keyword().equals(keyword))
                .map(Instruction::text)
                .toList();
    }
}

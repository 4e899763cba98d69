package studio.stancebook.exchange.importing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import studio.stancebook.dimension.Origin;
import studio.stancebook.problem.TooLarge;

class MemoryLimitTest {

    private static final ImportOptions OPTIONS = new ImportOptions(false, false, false, Origin.SPECIFICATION);

    /** Room for exactly ten packages. */
    private final MemoryLimit limit = new MemoryLimit(MemoryLimit.FOR_THE_SERVER + 10 * MemoryLimit.FOR_A_PACKAGE);

    @TempDir
    Path folder;

    @Test
    void takesAsManyAsThereIsRoomForAndNotOneMore() throws IOException {
        assertThat(limit.packages()).isEqualTo(10);
        assertThatCode(() -> limit.check(table(10), OPTIONS, 0, segment -> {})).doesNotThrowAnyException();
        assertThatCode(() -> limit.check(json(7), OPTIONS, 3, segment -> {})).doesNotThrowAnyException();
        assertThatThrownBy(() -> limit.check(table(11), OPTIONS, 0, segment -> {}))
                .isInstanceOf(TooLarge.class);
        assertThatThrownBy(() -> limit.check(json(8), OPTIONS, 3, segment -> {}))
                .isInstanceOf(TooLarge.class)
                .hasMessage(
                        "The file has more than 7 packages. With a heap of 128 MB this server keeps up to 10, and has 3."
                                + " Bring in fewer, or have whoever runs the server give it more memory.");
    }

    @Test
    void takesNothingWhereTheHeapIsTooSmallForAnything() throws IOException {
        MemoryLimit none = new MemoryLimit(1 << 20);

        assertThat(none.packages()).isZero();
        assertThatThrownBy(() -> none.check(table(1), OPTIONS, 5, segment -> {}))
                .isInstanceOf(TooLarge.class);
    }

    private PackageFile table(int rows) throws IOException {
        String lines = IntStream.range(0, rows)
                .mapToObj(i -> "Invented " + i + ",a,2800\n")
                .collect(Collectors.joining());
        return PackageFile.of(
                Files.writeString(folder.resolve("table" + rows), "name,segment,wheelbase\n" + lines), null, null);
    }

    private PackageFile json(int packages) throws IOException {
        String items = IntStream.range(0, packages)
                .mapToObj(i -> "{\"name\":\"Invented " + i + "\",\"dimensions\":{\"wheelbase\":2800,\"cowl\":[1,2]}}")
                .collect(Collectors.joining(","));
        return PackageFile.of(Files.writeString(folder.resolve("json" + packages), "[" + items + "]"), null, null);
    }
}

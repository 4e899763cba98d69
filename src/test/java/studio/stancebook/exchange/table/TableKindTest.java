package studio.stancebook.exchange.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TableKindTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({"png,PNG", "jpg,JPEG", "gif,GIF"})
    void refusesAPictureThatIsNamedLikeATable(String format, String said) throws IOException {
        ByteArrayOutputStream picture = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(4, 3, BufferedImage.TYPE_INT_RGB), format, picture);
        Path file = Files.write(folder.resolve("cars.csv"), picture.toByteArray());

        assertThatThrownBy(() -> TableFile.of(file))
                .isInstanceOf(NotATable.class)
                .hasMessageContaining(said)
                .hasMessageContaining("CSV");
    }

    @ParameterizedTest
    @ValueSource(strings = {"%PDF-1.7", "<html><body>", "  <?xml version=\"1.0\"?>", "\u0089PNG", "{\\rtf1"})
    void refusesWhatIsNoTable(String start) {
        byte[] bytes = start.getBytes(StandardCharsets.ISO_8859_1);

        assertThatThrownBy(() -> TableKind.of(bytes)).isInstanceOf(NotATable.class);
    }

    @Test
    void saysWhatAnOldWorkbookIs() {
        byte[] start = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

        assertThatThrownBy(() -> TableKind.of(start)).hasMessageContaining(".xls");
    }

    @ParameterizedTest
    @CsvSource({
        "'{\"packages\":[]}',JSON",
        "' \n[ {\"name\":1}]',JSON",
        "'[]',JSON",
        "'[mm],b',CSV",
        "'name,b',CSV",
        "'{x},b',JSON"
    })
    void tellsJsonFromCsv(String text, TableKind kind) {
        assertThat(TableKind.of(text.getBytes(StandardCharsets.UTF_8))).isEqualTo(kind);
    }
}

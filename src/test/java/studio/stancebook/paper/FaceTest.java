package studio.stancebook.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/** That a picture is lettered in the embedded face, not in whatever the machine has. */
class FaceTest {

    /** An em dash of 40 mm is one unbroken bar of nearly its width; another face's glyph of that number is not. */
    @Test
    void picturesAreLetteredInTheFaceOfThePdf() throws Exception {
        Mark.Writing dash = new Mark.Writing(10, 30, Anchor.START, 40, false, "#000000", null, "\u2014");
        VectorPage plate = new VectorPage(
                "Dash", "", 80, 50, null, List.of(Group.of("dash", Group.StructureRole.PARAGRAPH, List.of(dash))));

        BufferedImage image = ImageIO.read(new ByteArrayInputStream(PngWriter.of(plate, 800)));

        int longest = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            int run = 0;
            for (int x = 0; x < image.getWidth(); x++) {
                run = (image.getRGB(x, y) & 0xff) < 64 ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        double width = LetterWidths.em("\u2014", false) * 400;
        assertThat((double) longest).isBetween(0.7 * width, width);
    }
}

package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/**
 * A small picture of a page that later pages are held to. Both are brought to a quarter of their width in greys, so that
 * another version of the browser, which sets letters a little otherwise, is no difference. They are compared over the whole
 * page and square by square, so that a small part that is gone is not lost in a long page. Run with {@code
 * -Dstancebook.write-golden=true} to keep what is there now.
 */
final class GoldenPicture {

    private static final int SHARE = 4;

    /** Side of the squares in pixels of the small picture. */
    private static final int SQUARE = 12;

    /** Of 255, over the whole page. */
    static final double MOST_MEAN_DIFFERENCE = 3;

    /** Of 255, in the square that differs most. */
    static final double MOST_IN_SQUARE = 16;

    /** A pixel of the small picture has changed when its grey differs by more than this, of 255. */
    static final int CHANGED = 40;

    /** Share of changed pixels. */
    static final double MOST_CHANGED = 0.02;

    private static final Path FOLDER = Path.of("src/test/resources/golden");

    private final Path file;

    GoldenPicture(String name) {
        this.file = FOLDER.resolve(name + ".png");
    }

    /** Holds a screenshot to the picture. */
    void holds(byte[] png) {
        BufferedImage now = small(read(png));
        if (Boolean.getBoolean("stancebook.write-golden")) {
            write(now, file);
        }
        assertThat(file).as("run once with -Dstancebook.write-golden=true").exists();
        Difference difference = Difference.between(golden(), now);
        if (!difference.small()) {
            write(now, Path.of("target", file.getFileName().toString()));
        }
        assertThat(difference.small())
                .as("%s, seen in target/: %s", file, difference)
                .isTrue();
    }

    private BufferedImage golden() {
        try {
            return read(Files.readAllBytes(file));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * How far two pictures are apart.
     *
     * @param mean of the differences of grey, of 255
     * @param changed share of the pixels that differ by more than {@link #CHANGED}
     * @param worst mean of the square that differs most
     */
    record Difference(double mean, double changed, double worst) {

        /** Pictures of other sizes are as far apart as can be. */
        static Difference between(BufferedImage golden, BufferedImage now) {
            int height = Math.min(golden.getHeight(), now.getHeight());
            int width = golden.getWidth();
            if (width != now.getWidth() || Math.max(golden.getHeight(), now.getHeight()) - height > height / 100) {
                return new Difference(255, 1, 255);
            }
            double sum = 0;
            double changed = 0;
            double worst = 0;
            for (int top = 0; top < height; top += SQUARE) {
                for (int left = 0; left < width; left += SQUARE) {
                    int right = Math.min(width, left + SQUARE);
                    int bottom = Math.min(height, top + SQUARE);
                    double inSquare = 0;
                    for (int y = top; y < bottom; y++) {
                        for (int x = left; x < right; x++) {
                            int apart = Math.abs(grey(golden, x, y) - grey(now, x, y));
                            inSquare += apart;
                            changed += apart > CHANGED ? 1 : 0;
                        }
                    }
                    sum += inSquare;
                    worst = Math.max(worst, inSquare / (right - left) / (bottom - top));
                }
            }
            return new Difference(sum / width / height, changed / width / height, worst);
        }

        boolean small() {
            return mean <= MOST_MEAN_DIFFERENCE && changed <= MOST_CHANGED && worst <= MOST_IN_SQUARE;
        }

        private static int grey(BufferedImage image, int x, int y) {
            return image.getRaster().getSample(x, y, 0);
        }
    }

    static BufferedImage read(byte[] png) {
        try {
            return ImageIO.read(new ByteArrayInputStream(png));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /** A quarter as wide, in two steps, as a single one would leave out pixels. */
    static BufferedImage small(BufferedImage large) {
        return scaled(scaled(large, large.getWidth() / 2), large.getWidth() / SHARE);
    }

    private static BufferedImage scaled(BufferedImage from, int width) {
        int height = Math.max(1, (int) Math.round((double) from.getHeight() * width / from.getWidth()));
        BufferedImage to = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
        Graphics2D graphics = to.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(from, 0, 0, width, height, null);
        graphics.dispose();
        return to;
    }

    private static void write(BufferedImage image, Path to) {
        try {
            Files.createDirectories(to.getParent());
            ImageIO.write(image, "png", to.toFile());
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}

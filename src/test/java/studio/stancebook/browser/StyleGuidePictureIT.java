package studio.stancebook.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Browser.NewContextOptions;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.awt.image.BufferedImage;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import studio.stancebook.StudioClients;
import studio.stancebook.StudioTest;
import studio.stancebook.access.Role;

/** The style guide, with every fragment in every state, looks as it did. */
@StudioTest
class StyleGuidePictureIT {

    @RegisterExtension
    static final Chromium chromium = new Chromium();

    /** Taken once. */
    private static @Nullable BufferedImage unbroken;

    @Autowired
    StudioClients studio;

    private byte[] picture(String path, ColorScheme scheme, int width, String style) {
        NewContextOptions options = new NewContextOptions()
                .setColorScheme(scheme)
                .setReducedMotion(ReducedMotion.REDUCE)
                .setBypassCSP(!style.isEmpty())
                .setViewportSize(width, 900);
        try (BrowserVisit visit = BrowserVisit.of(studio.person(Role.DESIGNER), chromium, studio, options)) {
            Page page = visit.open(path);
            page.evaluate("document.fonts.ready");
            if (!style.isEmpty()) {
                page.addStyleTag(new Page.AddStyleTagOptions().setContent(style));
            }
            return page.screenshot(new Page.ScreenshotOptions().setFullPage(true));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/style-guide, LIGHT, 1280",
        "/style-guide, DARK, 1280",
        "/style-guide, LIGHT, 360",
        "/style-guide, DARK, 360",
        "/style-guide/dimensions, LIGHT, 1280",
        "/style-guide/dimensions, DARK, 360"
    })
    void looksAsItDid(String path, ColorScheme scheme, int width) {
        String name = path.substring(1).replace('/', '-') + "-" + scheme.name().toLowerCase(Locale.ROOT) + "-" + width;
        new GoldenPicture(name).holds(picture(path, scheme, width, ""));
    }

    /** The comparison sees what a person would wince at. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ".verdict__shape { display: none }",
                ".table td { text-align: end; padding-inline: 40px }",
                "body { font-size: 18px; font-family: serif }",
                ".button--primary, .side-view { visibility: hidden }"
            })
    void isSeenToBeBroken(String style) {
        GoldenPicture.Difference difference = GoldenPicture.Difference.between(
                whole(),
                GoldenPicture.small(GoldenPicture.read(picture("/style-guide", ColorScheme.LIGHT, 1280, style))));

        assertThat(difference.small()).as("%s", difference).isFalse();
    }

    private BufferedImage whole() {
        if (unbroken == null) {
            unbroken = GoldenPicture.small(GoldenPicture.read(picture("/style-guide", ColorScheme.LIGHT, 1280, "")));
        }
        return unbroken;
    }

    @Test
    void isTheSameTwice() {
        GoldenPicture.Difference difference = GoldenPicture.Difference.between(
                GoldenPicture.small(GoldenPicture.read(picture("/style-guide", ColorScheme.DARK, 1280, ""))),
                GoldenPicture.small(GoldenPicture.read(picture("/style-guide", ColorScheme.DARK, 1280, ""))));

        assertThat(difference.worst()).isLessThan(GoldenPicture.MOST_IN_SQUARE / 4);
    }
}

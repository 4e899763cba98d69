package studio.stancebook.web.shell;

import java.util.Map;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.resource.ResourceUrlProvider;
import studio.stancebook.drawing.Print;
import studio.stancebook.drawing.Prints;

/** The parts of the frame of a page that are the same for many requests, as {@code frame} in templates. */
@Component
class Frame {

    private final Prints prints;
    private final Shell shell;
    private final ResourceUrlProvider addresses;

    private record Links() {}

    private record Navigation(String nav) {}

    private record Themes(String chosen) {}

    private record TitleBlock(String title, String studio, String issue) {}

    Frame(Prints prints, Shell shell, ResourceUrlProvider addresses) {
        this.prints = prints;
        this.shell = shell;
        this.addresses = addresses;
    }

    /** The files that every page needs. */
    public Print links() {
        return prints.of(new Links(), "shell/links", () -> Map.of("frame", this));
    }

    /** The address of a file with its version. */
    public String address(String path) {
        return Objects.requireNonNullElse(addresses.getForLookupPath(path), path);
    }

    /** The parts of the studio. */
    public Print navigation(String nav) {
        return prints.of(new Navigation(nav), "shell/navigation", () -> Map.of("nav", nav));
    }

    /** The buttons of the switch between themes. */
    public Print themes() {
        Themes themes = new Themes(shell.themeChoice());
        return prints.of(themes, "shell/themes", () -> Map.of("chosen", themes.chosen()));
    }

    /** The title block at the foot of a page. */
    public Print titleBlock(String title) {
        TitleBlock block = new TitleBlock(title, shell.studio(), shell.issue());
        return prints.of(
                block,
                "shell/title-block",
                () -> Map.of("title", title, "studio", block.studio(), "issue", block.issue()));
    }
}

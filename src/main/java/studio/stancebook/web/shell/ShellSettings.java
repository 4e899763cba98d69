package studio.stancebook.web.shell;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * What the frame of the pages takes from the configuration.
 *
 * @param studioName the studio's name, shown on every page and printed on every sheet
 */
@ConfigurationProperties("stancebook")
record ShellSettings(@DefaultValue("The studio") String studioName) {

    ShellSettings {
        if (studioName.isBlank()) {
            throw new IllegalArgumentException(
                    "stancebook.studio-name is blank: it takes the name to show on every page.");
        }
    }
}

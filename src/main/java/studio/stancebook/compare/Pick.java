package studio.stancebook.compare;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import studio.stancebook.problem.Malformed;

/**
 * What is picked, as addresses name it: {@code package-12}, {@code proposal-3}, {@code proposal-3.2}.
 *
 * @param proposal false for a package
 * @param revision of a proposal; null for the newest
 */
public record Pick(boolean proposal, long id, @Nullable Integer revision) {

    private static final Pattern NAME = Pattern.compile("(package|proposal)-(\\d{1,18})(?:\\.(\\d{1,9}))?");

    public static Pick ofPackage(long id) {
        return new Pick(false, id, null);
    }

    public static Pick ofProposal(long id) {
        return new Pick(true, id, null);
    }

    /** @throws Malformed if the name is none */
    public static Pick of(String name) {
        Matcher parts = NAME.matcher(name);
        if (!parts.matches() || (parts.group(1).equals("package") && parts.group(3) != null)) {
            throw Malformed.ofField(
                    "of",
                    "package-12, proposal-3 and proposal-3.2 (its second revision) can be compared, \"" + name
                            + "\" cannot.");
        }
        Integer revision = parts.group(3) == null ? null : Integer.valueOf(parts.group(3));
        return new Pick(parts.group(1).equals("proposal"), Long.parseLong(parts.group(2)), revision);
    }

    public String key() {
        return (proposal ? "proposal-" : "package-") + id + (revision == null ? "" : "." + revision);
    }
}

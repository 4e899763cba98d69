package studio.stancebook.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The policy against what the studio is told about it. */
class PermissionTest {

    private static final long OWN = 7;
    private static final long OTHERS = 8;
    private static final Pattern NAMED_IN_TEMPLATE = Pattern.compile("shell\\.may\\('([^']*)'\\)");

    /** The table of roles in the manual, which people wrote by hand. */
    @Test
    void isWhatTheManualSays() throws IOException {
        Map<String, List<String>> told = new LinkedHashMap<>();
        Files.readAllLines(Path.of("docs", "operations.md")).stream()
                .dropWhile(line -> !line.startsWith("| may | lead |"))
                .skip(2)
                .takeWhile(line -> line.startsWith("|"))
                .map(line -> line.substring(1).split("\\|"))
                .forEach(cells -> told.put(
                        cells[0].split("[:,]")[0].strip(),
                        Arrays.stream(cells).skip(1).map(String::strip).toList()));

        assertThat(told).hasSize(Permission.values().length);
        assertThat(Permission.values())
                .allSatisfy(permission -> assertThat(told.get(words(permission)))
                        .as(words(permission))
                        .isEqualTo(Arrays.stream(Role.values())
                                .map(role -> cell(permission, role))
                                .toList()));
    }

    private static String words(Permission permission) {
        return permission.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private static String cell(Permission permission, Role role) {
        boolean owned = Arrays.stream(Role.values())
                .anyMatch(some -> !permission.isGrantedTo(some) && permission.isGrantedForOwn(some));
        if (permission.isGrantedTo(role)) {
            return owned ? "all" : "yes";
        }
        return permission.isGrantedForOwn(role) ? "own" : "";
    }

    @Test
    void reachesEverybodysThingsOrTheOwnOrNone() {
        SignedIn lead = person(Role.LEAD);
        SignedIn designer = person(Role.DESIGNER);
        SignedIn learner = person(Role.LEARNER);
        SignedIn viewer = person(Role.VIEWER);

        assertThat(lead.may(Permission.CHANGE_PROPOSALS, OTHERS)).isTrue();
        assertThat(designer.may(Permission.SEE_PROPOSALS, OTHERS)).isTrue();
        assertThat(designer.may(Permission.CHANGE_PROPOSALS, OTHERS)).isFalse();
        assertThat(designer.may(Permission.CHANGE_PROPOSALS, OWN)).isTrue();
        assertThat(learner.may(Permission.SEE_PROPOSALS, OTHERS)).isFalse();
        assertThat(learner.may(Permission.SEE_PROPOSALS, OWN)).isTrue();
        assertThat(viewer.may(Permission.SEE_PROPOSALS, OTHERS)).isTrue();
        assertThat(viewer.may(Permission.CHANGE_PROPOSALS, OWN)).isFalse();
    }

    /** Asked without an owner, a permission for the own things is none. */
    @Test
    void isForEverybodysThingsWhereNoOwnerIsNamed() {
        assertThat(person(Role.DESIGNER).may(Permission.CHANGE_PROPOSALS)).isFalse();
        assertThat(person(Role.LEAD).may(Permission.CHANGE_PROPOSALS)).isTrue();
    }

    @Test
    void letsNobodyChangeAnythingWhoMayNotContribute() {
        List<Permission> readings =
                List.of(Permission.SEE_PROPOSALS, Permission.READ_ACTIVITY, Permission.READ_METRICS);

        assertThat(Role.values())
                .filteredOn(role -> !Permission.CONTRIBUTE.isGrantedTo(role))
                .isNotEmpty()
                .allSatisfy(role -> assertThat(Permission.values())
                        .filteredOn(permission -> permission.isGrantedForOwn(role))
                        .isSubsetOf(readings));
    }

    /** A name that no permission has would fail a page only when somebody opens it. */
    @Test
    void isKnownWhereverATemplateAsksForIt() throws IOException {
        List<String> known =
                Arrays.stream(Permission.values()).map(Permission::name).toList();

        assertThat(templates().stream()
                        .flatMap(text -> NAMED_IN_TEMPLATE.matcher(text).results())
                        .map(found -> found.group(1)))
                .hasSizeGreaterThan(15)
                .isSubsetOf(known);
    }

    @Test
    void isAskedForByNoTemplateInAnotherWay() throws IOException {
        assertThat(templates())
                .hasSizeGreaterThan(50)
                .noneMatch(
                        text -> text.contains("sec:") || text.contains("hasRole") || text.contains("#authorization"));
    }

    private static List<String> templates() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src", "main", "resources", "templates"))) {
            return files.filter(Files::isRegularFile).map(PermissionTest::read).collect(Collectors.toList());
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static SignedIn person(Role role) {
        return new SignedIn(OWN, "Somebody", "somebody@studio.example", role);
    }
}

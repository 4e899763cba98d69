package studio.stancebook.account.internal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.ApplicationArguments;
import org.springframework.boot.ApplicationRunner;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.context.annotation.Profile;
import org.springframework.context.event.EventListener;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;
import org.springframework.transaction.support.TransactionTemplate;
import studio.stancebook.access.Role;

/**
 * The people of the demo studio, all invented, one for each role. Their passwords are drawn at the first start and kept in
 * a file that only the owner of the process can read, so that the console can tell them again.
 */
@Component
@Profile("demo")
@Order(Ordered.HIGHEST_PRECEDENCE)
class DemoPeople implements ApplicationRunner {

    private final PersonService personService;
    private final Console console;
    private final TransactionTemplate transaction;
    private final Path file;

    DemoPeople(
            PersonService personService,
            Console console,
            TransactionTemplate transaction,
            @Value("${stancebook.data}") Path data) {
        this.personService = personService;
        this.console = console;
        this.transaction = transaction;
        this.file = data.resolve("people.txt");
    }

    /** An invented person. */
    private record Invented(String name, Role role) {

        String email() {
            return role.key() + "@marshlane.example";
        }
    }

    private static final List<Invented> PEOPLE = List.of(
            new Invented("Maren Tollivar", Role.LEAD),
            new Invented("Idris Quennell", Role.DESIGNER),
            new Invented("Odile Harrowgate", Role.TUTOR),
            new Invented("Tavi Brackmere", Role.LEARNER),
            new Invented("Sunniva Pell", Role.VIEWER));

    @Override
    public void run(ApplicationArguments arguments) throws IOException {
        if (personService.isEmpty()) {
            List<NewPerson> people =
                    PEOPLE.stream().map(DemoPeople::withPassword).toList();
            write(people);
            transaction.executeWithoutResult(status -> people.forEach(personService::addWithOwnPassword));
        }
    }

    private static NewPerson withPassword(Invented person) {
        return new NewPerson(person.email(), person.name(), person.role().key(), Secret.readable());
    }

    private void write(List<NewPerson> people) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        Files.deleteIfExists(file);
        Files.createFile(file, readableByOwnerOnly());
        Files.write(file, people.stream().map(DemoPeople::line).toList(), StandardCharsets.UTF_8);
    }

    private static String line(NewPerson person) {
        return String.format(Locale.ROOT, "%-10s %-28s %s", person.role(), person.email(), person.password());
    }

    private static FileAttribute<?>[] readableByOwnerOnly() {
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    /** Tells address and passwords once the server can be reached. */
    @EventListener(ApplicationReadyEvent.class)
    void tell() throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("Demo studio. Everything in it is invented. Sign in at " + console.address());
        lines.add("");
        if (Files.isReadable(file)) {
            lines.addAll(Files.readAllLines(file, StandardCharsets.UTF_8));
            lines.add("");
            lines.add("Passwords are those of the first start; they are kept in " + file + ".");
        } else {
            lines.add("The passwords are gone with " + file + ": delete " + file.getParent() + " to begin anew.");
        }
        console.tell(lines);
    }
}

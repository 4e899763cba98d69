package studio.stancebook.exchange.importing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.springframework.stereotype.Component;
import org.springframework.web.multipart.MultipartFile;
import studio.stancebook.exchange.table.TableFile;
import studio.stancebook.exchange.table.TableKind;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.problem.Conflict;
import studio.stancebook.problem.NotFound;

/**
 * The files that people are about to bring in: one a person, kept for some hours after it was last looked at. They are
 * this server's own; a server that ends forgets them.
 */
@Component
public class Uploads {

    private static final Duration KEPT = Duration.ofHours(4);

    private final ReceivedFiles files;
    private final Clock clock;
    private final Map<Long, Upload> byPerson = new ConcurrentHashMap<>();

    Uploads(ReceivedFiles files, Clock clock) {
        this.files = files;
        this.clock = clock;
    }

    /**
     * Takes a file in place of the one that the person has here.
     *
     * @throws Conflict if a run still reads the one that is here
     * @throws studio.stancebook.problem.Refusal if it is no table
     */
    public Upload receive(long personId, MultipartFile sent) {
        dropExpired();
        Path path = files.keep(sent);
        try {
            Upload upload = new Upload(
                    UUID.randomUUID().toString(),
                    personId,
                    TextLimit.shown(sent.getOriginalFilename()),
                    path,
                    TableKind.of(path) == TableKind.JSON ? null : TableFile.of(path),
                    clock.instant());
            replace(upload);
            return upload;
        } catch (RuntimeException refused) {
            ReceivedFiles.delete(path);
            throw refused;
        } catch (IOException failure) {
            ReceivedFiles.delete(path);
            throw new UncheckedIOException(failure);
        }
    }

    private void replace(Upload upload) {
        byPerson.compute(upload.personId(), (person, old) -> {
            if (old != null && old.busy()) {
                throw new Conflict("A file of yours is being brought in at this moment; wait until it is done.");
            }
            if (old != null) {
                old.delete();
            }
            return upload;
        });
    }

    /** The file that the person has here. */
    public Optional<Upload> of(long personId) {
        dropExpired();
        return Optional.ofNullable(byPerson.get(personId));
    }

    /** @throws NotFound if the person has no such file here */
    public Upload get(long personId, String id) {
        Upload upload = of(personId)
                .filter(own -> own.id().equals(id))
                .orElseThrow(() -> new NotFound("file of yours", TextLimit.shown(id)));
        upload.touch(clock.instant());
        return upload;
    }

    /** Forgets a file, unless a run reads it. */
    public void discard(Upload upload) {
        byPerson.computeIfPresent(upload.personId(), (person, current) -> {
            if (current != upload || current.busy()) {
                return current;
            }
            current.delete();
            return null;
        });
    }

    private void dropExpired() {
        Instant oldest = clock.instant().minus(KEPT);
        List.copyOf(byPerson.values()).stream()
                .filter(upload -> upload.touchedAt().isBefore(oldest))
                .forEach(this::discard);
    }
}

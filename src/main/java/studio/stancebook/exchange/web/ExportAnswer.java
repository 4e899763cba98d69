package studio.stancebook.exchange.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import org.springframework.core.io.InputStreamResource;
import org.springframework.core.io.Resource;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.catalogue.PackageListParameters;
import studio.stancebook.exchange.exporting.ExportFormat;
import studio.stancebook.exchange.exporting.Exporter;
import studio.stancebook.exchange.importing.ReceivedFiles;
import studio.stancebook.exchange.table.TextLimit;
import studio.stancebook.limit.Bulkhead;
import studio.stancebook.problem.Malformed;

/** Packages as a file to save, for the call and for the page. */
@Component
class ExportAnswer {

    private final Exporter exporter;
    private final Bulkhead bulkhead;
    private final Clock clock;

    ExportAnswer(Exporter exporter, Bulkhead bulkhead, Clock clock) {
        this.exporter = exporter;
        this.bulkhead = bulkhead;
        this.clock = clock;
    }

    /** @throws studio.stancebook.problem.TooMany if the server is busy with as many exports as it makes at once */
    ResponseEntity<Resource> of(PackageListParameters asked, String formatKey, SignedIn who) {
        ExportFormat format = ExportFormat.ofKey(formatKey)
                .orElseThrow(() -> Malformed.ofField(
                        "format",
                        "\"" + TextLimit.shown(formatKey) + "\" is none of the formats " + ExportFormat.keys() + "."));
        Path file = written(asked.filter(), format, who);
        String name = "packages-" + LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC) + "." + format.key();
        try {
            long size = Files.size(file);
            Resource body = new InputStreamResource(Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE));
            return ResponseEntity.ok()
                    .contentType(MediaType.parseMediaType(format.mediaType()))
                    .contentLength(size)
                    .header(
                            HttpHeaders.CONTENT_DISPOSITION,
                            ContentDisposition.attachment()
                                    .filename(name)
                                    .build()
                                    .toString())
                    .body(body);
        } catch (IOException failure) {
            ReceivedFiles.delete(file);
            throw new UncheckedIOException(failure);
        }
    }

    /** A place is held while the file is written, not while somebody reads it slowly. */
    private Path written(CatalogueFilter filter, ExportFormat format, SignedIn who) {
        try (Bulkhead.Place held = bulkhead.take(who.personId())) {
            return exporter.write(filter, format);
        }
    }
}

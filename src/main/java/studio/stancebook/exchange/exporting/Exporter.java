package studio.stancebook.exchange.exporting;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.util.DefaultTempFileCreationStrategy;
import org.apache.poi.util.TempFile;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.CatalogueFilter;
import studio.stancebook.exchange.table.OwnFolder;

/** Takes packages out of the catalogue into a file, some at a time. */
@Component
public class Exporter {

    private final Catalogue catalogue;
    private final OwnFolder folder;

    Exporter(Catalogue catalogue, @Value("${stancebook.data}") String data) {
        this.catalogue = catalogue;
        this.folder = new OwnFolder(Path.of(data, "exports"));
        folder.sweep();
        TempFile.setTempFileCreationStrategy(
                new DefaultTempFileCreationStrategy(folder.path().toFile()));
    }

    /** Writes all packages that the filter takes, by ascending id, into a new file; whoever asked deletes it. */
    public Path write(CatalogueFilter filter, ExportFormat format) {
        try {
            Path file = folder.newFile("packages", "." + format.key());
            try {
                write(filter, format, file);
                return file;
            } catch (RuntimeException | IOException failed) {
                Files.deleteIfExists(file);
                throw failed;
            }
        } catch (IOException failure) {
            throw new UncheckedIOException("The packages could not be written to a file", failure);
        }
    }

    private void write(CatalogueFilter filter, ExportFormat format, Path file) throws IOException {
        if (format == ExportFormat.JSON) {
            try (JsonExport json = new JsonExport(file)) {
                catalogue.forEach(filter, json::add);
                json.finish();
            }
            return;
        }
        try (TableSpool spool = new TableSpool(folder)) {
            catalogue.forEach(filter, spool::add);
            if (format == ExportFormat.CSV) {
                CsvExport.write(spool, file);
            } else {
                XlsxExport.write(spool, file);
            }
        }
    }
}

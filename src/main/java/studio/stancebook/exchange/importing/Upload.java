package studio.stancebook.exchange.importing;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.table.TableFile;

/** A file that is kept while its owner decides what its columns hold; nobody else sees it. */
public final class Upload {

    private final String id;
    private final long personId;
    private final String fileName;
    private final Path path;
    private final @Nullable TableFile table;
    private volatile Instant touchedAt;
    private volatile @Nullable String sheet;
    private volatile @Nullable List<ColumnChoice> choices;
    private volatile @Nullable ImportOptions options;
    private volatile @Nullable ImportJob job;

    /**
     * @param fileName as the sender calls it, for showing only
     * @param table null for JSON, which has no columns
     */
    Upload(String id, long personId, String fileName, Path path, @Nullable TableFile table, Instant at) {
        this.id = id;
        this.personId = personId;
        this.fileName = fileName;
        this.path = path;
        this.table = table;
        this.touchedAt = at;
    }

    public String id() {
        return id;
    }

    /** The name that the sender gave the file. */
    public String fileName() {
        return fileName;
    }

    /** The file as a table; null for JSON. */
    public @Nullable TableFile table() {
        return table;
    }

    /** The chosen sheet of a workbook; null for the first. */
    public @Nullable String sheet() {
        return sheet;
    }

    /** What was chosen for each column; null before anything was. */
    public @Nullable List<ColumnChoice> choices() {
        return choices;
    }

    /** How it is to be brought in; null before anything was chosen. */
    public @Nullable ImportOptions options() {
        return options;
    }

    /** The run that was started last; null before the first. */
    public @Nullable ImportJob job() {
        return job;
    }

    /** True while a run reads the file. */
    public boolean busy() {
        ImportJob last = job;
        return last != null && last.status().running();
    }

    /** Takes another sheet, whose columns nobody has chosen for yet. */
    public void takeSheet(String name) {
        if (!name.equals(sheet)) {
            sheet = name;
            choices = null;
            forgetJob();
            job = null;
        }
    }

    /** Keeps what was chosen. */
    public void choose(List<ColumnChoice> chosen, ImportOptions wished) {
        choices = List.copyOf(chosen);
        options = wished;
    }

    boolean belongsTo(long person) {
        return personId == person;
    }

    long personId() {
        return personId;
    }

    Path path() {
        return path;
    }

    Instant touchedAt() {
        return touchedAt;
    }

    void touch(Instant now) {
        touchedAt = now;
    }

    void start(ImportJob started) {
        forgetJob();
        job = started;
    }

    /** Deletes the file and what runs over it left. */
    void delete() {
        ReceivedFiles.delete(path);
        forgetJob();
    }

    private void forgetJob() {
        ImportJob before = job;
        if (before != null) {
            before.forget();
        }
    }
}

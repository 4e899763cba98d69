package studio.stancebook.activity.web;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import jakarta.servlet.http.HttpServletResponse;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import studio.stancebook.access.SignedIn;
import studio.stancebook.activity.ActivityFilter;
import studio.stancebook.activity.ActivityLine;
import studio.stancebook.activity.ActivityRecord;
import studio.stancebook.activity.FieldChange;
import studio.stancebook.limit.Bulkhead;
import studio.stancebook.problem.CellGuard;
import studio.stancebook.problem.Malformed;
import tools.jackson.databind.json.JsonMapper;

/** The record as a file to save, written to the answer line by line, oldest first. */
@Component
class RecordExport {

    private static final List<String> HEADINGS =
            List.of("line", "at", "byId", "by", "action", "kind", "subject", "title", "field", "from", "to", "hash");

    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+(\\.[0-9]+)?");

    private final ActivityRecord activity;
    private final Bulkhead bulkhead;
    private final Clock clock;
    private final JsonMapper json;

    RecordExport(ActivityRecord activity, Bulkhead bulkhead, Clock clock, JsonMapper json) {
        this.activity = activity;
        this.bulkhead = bulkhead;
        this.clock = clock;
        this.json = json;
    }

    /**
     * Writes the answer.
     *
     * @throws Malformed if the format or a parameter is none
     * @throws studio.stancebook.problem.TooMany if the server is busy with as many exports as it makes at once
     */
    void write(SignedIn who, ActivityParameters asked, String format, HttpServletResponse response) throws IOException {
        try (Bulkhead.Place held = bulkhead.take(who.personId())) {
            write(asked, format, response);
        }
    }

    private void write(ActivityParameters asked, String format, HttpServletResponse response) throws IOException {
        ActivityFilter filter = asked.filter();
        switch (format) {
            case "csv" -> writeCsv(filter, open(response, "text/csv", format));
            case "jsonl" -> writeLines(filter, open(response, "application/jsonl", format));
            default ->
                throw Malformed.ofField(
                        "format",
                        "\"" + ActivityParameters.shown(format) + "\" is neither of the formats csv and jsonl.");
        }
    }

    private Writer open(HttpServletResponse response, String mediaType, String ending) throws IOException {
        String name = "activity-" + LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC) + "." + ending;
        response.setContentType(mediaType + ";charset=UTF-8");
        response.setHeader(
                HttpHeaders.CONTENT_DISPOSITION,
                ContentDisposition.attachment().filename(name).build().toString());
        return new BufferedWriter(new OutputStreamWriter(response.getOutputStream(), StandardCharsets.UTF_8));
    }

    /** Everything, so that the hashes can be computed from the file alone. */
    private void writeLines(ActivityFilter filter, Writer out) throws IOException {
        activity.forEach(filter, line -> {
            try {
                out.write(json.writeValueAsString(line));
                out.write('\n');
            } catch (IOException gone) {
                throw new UncheckedIOException(gone);
            }
        });
        out.flush();
    }

    /** A row for each change; one row for a line without any. */
    private void writeCsv(ActivityFilter filter, Writer out) throws IOException {
        CsvWriter csv = CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(out);
        csv.writeRecord(HEADINGS);
        activity.forEach(filter, line -> {
            if (line.changes().isEmpty()) {
                csv.writeRecord(row(line, new FieldChange("", null, null)));
            }
            line.changes().forEach(change -> csv.writeRecord(row(line, change)));
        });
        csv.flush();
    }

    private static List<String> row(ActivityLine line, FieldChange change) {
        return List.of(
                String.valueOf(line.line()),
                line.at().toString(),
                line.byId() == null ? "" : line.byId().toString(),
                guarded(line.by()),
                guarded(line.action()),
                guarded(line.kind()),
                guarded(line.subject()),
                guarded(line.title()),
                guarded(change.field()),
                guarded(change.from()),
                guarded(change.to()),
                line.hash());
    }

    /** With an apostrophe before what a spreadsheet would take for a formula, unless it is a number. */
    private static String guarded(@Nullable String value) {
        String text = Objects.requireNonNullElse(value, "");
        return NUMBER.matcher(text).matches() ? text : CellGuard.guarded(text);
    }
}

package studio.stancebook.exchange.exporting;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/** The formats that packages are taken out in. */
public enum ExportFormat {
    CSV("csv", "text/csv;charset=UTF-8;header=present"),
    XLSX("xlsx", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"),
    JSON("json", "application/json");

    private final String key;
    private final String mediaType;

    ExportFormat(String key, String mediaType) {
        this.key = key;
        this.mediaType = mediaType;
    }

    public static Optional<ExportFormat> ofKey(String key) {
        return Arrays.stream(values())
                .filter(format -> format.key.equalsIgnoreCase(key.strip()))
                .findFirst();
    }

    /** All keys, for a sentence that says what is accepted. */
    public static String keys() {
        return Arrays.stream(values()).map(ExportFormat::key).collect(Collectors.joining(", "));
    }

    /** The name in addresses, and the ending of the file's name. */
    public String key() {
        return key;
    }

    public String mediaType() {
        return mediaType;
    }
}

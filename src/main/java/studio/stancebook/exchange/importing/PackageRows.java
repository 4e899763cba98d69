package studio.stancebook.exchange.importing;

import java.io.Closeable;
import org.jspecify.annotations.Nullable;
import studio.stancebook.exchange.mapping.NamedSegment;
import studio.stancebook.exchange.mapping.RowReading;

/** The packages of a file, read once from top to bottom. */
public interface PackageRows extends Closeable {

    /** The next package; null after the last. */
    @Nullable
    RowReading next();

    /** Goes past the next package with a look at its segment alone; null after the last. */
    @Nullable
    NamedSegment segment();

    /** How much of the file is behind, from 0 to 1. */
    double share();
}

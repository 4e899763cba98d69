package studio.stancebook.operations.backup;

import java.io.IOException;
import java.io.OutputStream;

/** Where a backup goes. */
@FunctionalInterface
public interface BackupTarget {

    /** Called once, when there is something to write. */
    OutputStream open() throws IOException;
}

/**
 * Keeping a studio safe: what must be so before the server starts, what is told when the data cannot be read or written, and
 * how the data is backed up and restored.
 *
 * <p>Vocabulary: the <em>store</em> is the database, in a file of the <em>data folder</em> or on a PostgreSQL server; its
 * <em>trouble</em> is what keeps it from serving; a <em>backup</em> is everything in the store at one moment, in one file.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"access", "activity", "problem"})
package studio.stancebook.operations;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;

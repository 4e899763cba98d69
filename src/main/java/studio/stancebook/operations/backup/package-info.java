/**
 * Everything in the store at one moment, in one file, and back into an empty store: H2 or PostgreSQL, whichever it came from.
 *
 * <p>The file is gzip (RFC 1952) of lines of JSON in UTF-8: who made it of which schema; for each table its columns, its
 * rows and their number; the next values of what counts by itself; last the SHA-256 of all lines before.
 *
 * <p>Vocabulary: a <em>kind</em> is what a column holds, the same on every database; a <em>counter</em> is a sequence or an
 * identity column.
 */
@NullMarked
package studio.stancebook.operations.backup;

import org.jspecify.annotations.NullMarked;

/**
 * Room on the disk of a database in a file: writing stops before it runs out, so that reading can go on.
 *
 * <p>Vocabulary: the <em>reserve</em> is what must stay free.
 */
@NullMarked
package studio.stancebook.operations.room;

import org.jspecify.annotations.NullMarked;

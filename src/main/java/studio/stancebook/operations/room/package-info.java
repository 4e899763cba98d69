/**
 * Room on the disk of a database in a file: writing stops before it runs out, so that reading can go on.
 *
 * <p>Vocabulary: the <em>reserve</em> is what must stay free; the <em>ballast</em> is a file without content that is dropped
 * when the disk ran full all the same, so that the database can be opened again.
 */
@NullMarked
package studio.stancebook.operations.room;

import org.jspecify.annotations.NullMarked;

/**
 * How much work that takes a processor for long is done at the same time.
 *
 * <p>Vocabulary: a <em>bulkhead</em> has places for such work, some for all and fewer for one person; whoever gets none is
 * asked to come again.
 */
@NullMarked
@ApplicationModule(allowedDependencies = {"problem"})
package studio.stancebook.limit;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;

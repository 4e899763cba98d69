/** Posts that are carried out once however often they are sent, by their Idempotency-Key. */
@NullMarked
package studio.stancebook.web.idempotency;

import org.jspecify.annotations.NullMarked;

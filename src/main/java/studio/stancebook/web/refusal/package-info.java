/** How a refusal or a failure is told: as RFC 9457 JSON to programs, as a page to people. */
@NullMarked
package studio.stancebook.web.refusal;

import org.jspecify.annotations.NullMarked;

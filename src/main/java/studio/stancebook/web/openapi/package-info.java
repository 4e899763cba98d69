/** The description of the API for programs and the people who write them. */
@NullMarked
package studio.stancebook.web.openapi;

import org.jspecify.annotations.NullMarked;

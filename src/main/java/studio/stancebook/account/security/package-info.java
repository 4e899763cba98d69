/** Who may come in: the filter chains for pages and for the API, and how each proves who it is. */
@NullMarked
package studio.stancebook.account.security;

import org.jspecify.annotations.NullMarked;

/** API calls about tyre sizes. */
@NullMarked
package studio.stancebook.tyre.web;

import org.jspecify.annotations.NullMarked;

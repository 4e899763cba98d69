/** The people and tokens that are kept, and the rules for changing them. */
@NullMarked
package studio.stancebook.account.internal;

import org.jspecify.annotations.NullMarked;

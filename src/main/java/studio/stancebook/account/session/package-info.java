/** The sessions of people who signed in by page: kept in the database, so that several servers share them, and listed. */
@NullMarked
package studio.stancebook.account.session;

import org.jspecify.annotations.NullMarked;

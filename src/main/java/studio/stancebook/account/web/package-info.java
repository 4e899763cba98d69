/** Pages and API calls for people, their own account, signing in and setting up. */
@NullMarked
package studio.stancebook.account.web;

import org.jspecify.annotations.NullMarked;

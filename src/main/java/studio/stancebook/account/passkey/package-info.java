/** Signing in with passkeys: Web Authentication Level 3, by way of Spring Security. */
@NullMarked
package studio.stancebook.account.passkey;

import org.jspecify.annotations.NullMarked;

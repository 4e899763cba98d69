/** Pages and API calls for proposals. */
@NullMarked
package studio.stancebook.proposal.web;

import org.jspecify.annotations.NullMarked;

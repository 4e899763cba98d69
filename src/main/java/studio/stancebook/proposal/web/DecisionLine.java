package studio.stancebook.proposal.web;

import studio.stancebook.proposal.Decision;

/**
 * A decision on the page of its proposal.
 *
 * @param outcome key of the outcome
 * @param at to the minute in UTC
 */
record DecisionLine(int revision, String outcome, String reason, String by, String at) {

    static DecisionLine of(Decision decision) {
        return new DecisionLine(
                decision.revision(),
                decision.outcome().key(),
                decision.reason(),
                decision.by(),
                Amounts.time(decision.at()));
    }
}

package studio.stancebook.proposal;

/**
 * A decision as somebody takes it.
 *
 * @param revision the number of the newest revision that they saw
 * @param reason 1 to {@value ProposalRules#MOST_REASON} characters
 */
public record DecisionDraft(int revision, Outcome outcome, String reason) {}

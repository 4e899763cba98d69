package studio.stancebook.proposal;

import studio.stancebook.StudioTest;

@StudioTest
class ProposalCallsOnH2Test extends ProposalCallsTest {}

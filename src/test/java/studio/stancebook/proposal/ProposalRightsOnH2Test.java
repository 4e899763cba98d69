package studio.stancebook.proposal;

import studio.stancebook.StudioTest;

@StudioTest
class ProposalRightsOnH2Test extends ProposalRightsTest {}

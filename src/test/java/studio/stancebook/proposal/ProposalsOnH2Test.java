package studio.stancebook.proposal;

import studio.stancebook.StudioTest;

@StudioTest
class ProposalsOnH2Test extends ProposalsTest {}

package studio.stancebook.proposal;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class ProposalRightsOnPostgresTest extends ProposalRightsTest {}

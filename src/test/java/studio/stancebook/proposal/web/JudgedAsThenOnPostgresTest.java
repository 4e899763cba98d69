package studio.stancebook.proposal.web;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class JudgedAsThenOnPostgresTest extends JudgedAsThenTest {}

package studio.stancebook.proposal.web;

import studio.stancebook.StudioTest;

@StudioTest
class JudgedAsThenOnH2Test extends JudgedAsThenTest {}

package studio.stancebook.account;

import studio.stancebook.StudioTest;

@StudioTest
class TokenOnH2Test extends TokenTest {}

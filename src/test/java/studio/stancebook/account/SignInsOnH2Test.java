package studio.stancebook.account;

import studio.stancebook.StudioTest;

@StudioTest
class SignInsOnH2Test extends SignInsTest {}

package studio.stancebook.account;

import studio.stancebook.StudioTest;

@StudioTest
class SignInOnH2Test extends SignInTest {}

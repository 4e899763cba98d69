package studio.stancebook.review;

import studio.stancebook.StudioTest;

@StudioTest
class SignInDeedsOnH2Test extends SignInDeedsTest {}

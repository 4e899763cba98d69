package studio.stancebook.web.once;

import studio.stancebook.StudioTest;

@StudioTest
class OnceOnH2Test extends OnceTest {}

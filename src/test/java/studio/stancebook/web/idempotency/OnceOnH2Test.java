package studio.stancebook.web.idempotency;

import studio.stancebook.StudioTest;

@StudioTest
class OnceOnH2Test extends OnceTest {}

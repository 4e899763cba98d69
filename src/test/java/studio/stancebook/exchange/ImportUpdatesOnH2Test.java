package studio.stancebook.exchange;

import studio.stancebook.StudioTest;

@StudioTest
class ImportUpdatesOnH2Test extends ImportUpdatesTest {}

package studio.stancebook.exchange;

import studio.stancebook.StudioTest;

@StudioTest
class ImportTransactionOnH2Test extends ImportTransactionTest {}

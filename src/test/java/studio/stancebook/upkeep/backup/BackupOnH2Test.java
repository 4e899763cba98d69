package studio.stancebook.upkeep.backup;

import studio.stancebook.StudioTest;

@StudioTest
class BackupOnH2Test extends BackupTest {}

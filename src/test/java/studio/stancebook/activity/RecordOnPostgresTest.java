package studio.stancebook.activity;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class RecordOnPostgresTest extends RecordTest {}

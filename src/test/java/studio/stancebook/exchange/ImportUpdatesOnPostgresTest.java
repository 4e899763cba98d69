package studio.stancebook.exchange;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class ImportUpdatesOnPostgresTest extends ImportUpdatesTest {}

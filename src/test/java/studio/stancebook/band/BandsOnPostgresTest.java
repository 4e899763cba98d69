package studio.stancebook.band;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class BandsOnPostgresTest extends BandsTest {}

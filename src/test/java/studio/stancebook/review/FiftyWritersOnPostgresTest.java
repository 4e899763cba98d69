package studio.stancebook.review;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class FiftyWritersOnPostgresTest extends FiftyWritersTest {}

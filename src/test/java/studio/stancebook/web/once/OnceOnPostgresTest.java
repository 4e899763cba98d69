package studio.stancebook.web.once;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class OnceOnPostgresTest extends OnceTest {}

package studio.stancebook.web.idempotency;

import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
class OnceOnPostgresTest extends OnceTest {}

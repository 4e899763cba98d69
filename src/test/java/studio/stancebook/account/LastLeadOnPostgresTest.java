package studio.stancebook.account;

import org.springframework.test.context.TestPropertySource;
import studio.stancebook.OnPostgres;
import studio.stancebook.StudioTest;

@StudioTest
@OnPostgres
@TestPropertySource(properties = "stancebook.studio-name=Of its own")
class LastLeadOnPostgresTest extends LastLeadTest {}

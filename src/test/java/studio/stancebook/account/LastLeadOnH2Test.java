package studio.stancebook.account;

import org.springframework.test.context.TestPropertySource;
import studio.stancebook.StudioTest;

@StudioTest
@TestPropertySource(properties = "stancebook.studio-name=Of its own")
class LastLeadOnH2Test extends LastLeadTest {}

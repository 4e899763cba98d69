package studio.stancebook.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;
import studio.stancebook.StudioBrowser;
import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;

/** What people and their browsers do with passkeys, over HTTP. */
record PasskeyVisits(StudioClients studio) {

    /** Signs in by password, adds a passkey, and hands over the authenticator that has it. */
    SoftwareAuthenticator withPasskey(SignedIn person, String label) {
        StudioBrowser browser = signedIn(person);
        SoftwareAuthenticator device = new SoftwareAuthenticator(studio.address());
        HttpResponse<String> answer = add(browser, label, device.make(creation(browser, label)));
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(302);
        return device;
    }

    String creation(StudioBrowser browser, String label) {
        return browser.submit("/account/passkeys/new", "/account/passkeys/options", Map.of("label", label))
                .body();
    }

    HttpResponse<String> add(StudioBrowser browser, String label, String credential) {
        Map<String, String> fields = new LinkedHashMap<>(Map.of("label", label));
        fields.put("credential", credential);
        return browser.submit("/account/passkeys/new", "/account/passkeys", fields);
    }

    String ask(StudioBrowser browser, String pageOfForm) {
        return browser.submit(pageOfForm, "/sign-in/passkey/options", Map.of()).body();
    }

    HttpResponse<String> post(StudioBrowser browser, String shown) {
        return browser.submit("/sign-in", "/sign-in/passkey", Collections.singletonMap("credential", shown));
    }

    HttpResponse<String> signIn(StudioBrowser browser, SoftwareAuthenticator device) {
        return post(browser, device.show(ask(browser, "/sign-in")));
    }

    StudioBrowser signedIn(SignedIn person) {
        StudioBrowser browser = studio.browser();
        browser.signIn(person.email(), StudioClients.PASSWORD);
        return browser;
    }

    SignedIn somebody(Role role) {
        String name = UUID.randomUUID().toString();
        return studio.add(name + "@passkeys.example", "Somebody " + name.substring(0, 8), role);
    }
}

package studio.stancebook.rights;

import studio.stancebook.StudioClients;
import studio.stancebook.access.Role;
import studio.stancebook.access.SignedIn;
import studio.stancebook.account.internal.PasskeyService;
import studio.stancebook.account.internal.PersonService;
import studio.stancebook.account.internal.TokenService;
import studio.stancebook.account.session.SignIns;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.exchange.importing.Uploads;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.proposal.Proposals;

/** Whoever makes a thing of some kind. */
record Makers(
        StudioClients studio,
        Segments segments,
        Catalogue catalogue,
        Proposals proposals,
        PersonService people,
        TokenService tokens,
        PasskeyService passkeys,
        Uploads uploads,
        StudioMeasures measures,
        SignIns signIns) {

    /** Somebody whom nobody else knows. */
    SignedIn somebody(Role role) {
        return studio.add(Invented.key("somebody") + "@every-route.example", "Somebody", role);
    }
}

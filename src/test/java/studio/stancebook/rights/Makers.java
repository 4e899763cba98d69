package studio.stancebook.rights;

import studio.stancebook.StudioClients;
import studio.stancebook.account.Role;
import studio.stancebook.account.SignedIn;
import studio.stancebook.account.internal.PasskeyDesk;
import studio.stancebook.account.internal.Staff;
import studio.stancebook.account.internal.TokenDesk;
import studio.stancebook.account.session.SignIns;
import studio.stancebook.catalogue.Catalogue;
import studio.stancebook.catalogue.Invented;
import studio.stancebook.catalogue.Segments;
import studio.stancebook.exchange.intake.Uploads;
import studio.stancebook.measure.StudioMeasures;
import studio.stancebook.proposal.Proposals;

/** Whoever makes a thing of some kind. */
record Makers(
        StudioClients studio,
        Segments segments,
        Catalogue catalogue,
        Proposals proposals,
        Staff staff,
        TokenDesk tokens,
        PasskeyDesk passkeys,
        Uploads uploads,
        StudioMeasures measures,
        SignIns signIns) {

    /** Somebody whom nobody else knows. */
    SignedIn somebody(Role role) {
        return studio.add(Invented.key("somebody") + "@every-route.example", "Somebody", role);
    }
}

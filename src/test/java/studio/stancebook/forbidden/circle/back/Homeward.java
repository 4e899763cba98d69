package studio.stancebook.forbidden.circle.back;

import studio.stancebook.forbidden.circle.there.Outward;

/** Uses what uses it. */
public record Homeward(Outward previous) {

    public Homeward next() {
        return previous.next().get();
    }
}

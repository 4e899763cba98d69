package studio.stancebook.forbidden.circle.there;

import java.util.function.Supplier;
import studio.stancebook.forbidden.circle.back.Homeward;

/** Uses what uses it. */
public record Outward(Supplier<Homeward> next) {}

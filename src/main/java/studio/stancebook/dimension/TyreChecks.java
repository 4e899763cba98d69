package studio.stancebook.dimension;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import studio.stancebook.dimension.Disagreement.UnitAmounts;

/** What is recorded of a tyre twice: diameter and rim beside a designation, and a loaded radius that the tyre allows. */
final class TyreChecks {

    private final DimensionSet set;
    private final Axle axle;
    private final UnitAmounts amounts;
    private final List<Disagreement> found = new ArrayList<>();

    private TyreChecks(DimensionSet set, Axle axle) {
        this.set = set;
        this.axle = axle;
        this.amounts = UnitAmounts.of(Unit.MM, set.scale());
    }

    static List<Disagreement> of(DimensionSet set, Axle axle) {
        TyreChecks checks = new TyreChecks(set, axle);
        checks.againstDesignation(axle.tyreDiameter(), set.tyreDiameter(axle), checks.diameterUncertainty());
        checks.againstDesignation(axle.rimDiameter(), set.rimDiameter(axle), 0);
        checks.loadedRadius();
        return checks.found;
    }

    private void againstDesignation(Dimension dimension, OptionalDouble rule, double ruleUncertainty) {
        OptionalDouble typed = set.scalar(dimension);
        if (typed.isEmpty() || set.tyre(axle).isEmpty()) {
            return;
        }
        double allowed = allowed(own(dimension), ruleUncertainty);
        if (Math.abs(typed.getAsDouble() - rule.orElseThrow()) > allowed) {
            found.add(Disagreement.notClosing(
                    List.of(dimension.key(), axle.tyreKey()),
                    dimension.label(),
                    typed.getAsDouble(),
                    rule.orElseThrow(),
                    allowed,
                    amounts));
        }
    }

    /** The wheel centre stands at least a rim radius and at most a free radius above the ground. */
    private void loadedRadius() {
        OptionalDouble loaded = set.scalar(axle.loadedRadius());
        if (loaded.isEmpty()) {
            return;
        }
        double radius = loaded.getAsDouble();
        double own = own(axle.loadedRadius());
        set.tyreDiameter(axle).ifPresent(diameter -> {
            double allowed = allowed(own, diameterUncertainty() / 2);
            if (radius > diameter / 2 + allowed) {
                beyond(
                        axle.tyreDiameter(),
                        radius,
                        "must not be above the free radius of the tyre",
                        diameter / 2,
                        allowed);
            }
        });
        set.rimDiameter(axle).ifPresent(rim -> {
            double allowed = allowed(own, set.tyre(axle).isPresent() ? 0 : own(axle.rimDiameter()) / 2);
            if (radius < rim / 2 - allowed) {
                beyond(axle.rimDiameter(), radius, "must not be below the radius of the rim", rim / 2, allowed);
            }
        });
    }

    private void beyond(Dimension source, double radius, String rule, double limit, double allowed) {
        String key = set.tyre(axle).isPresent() ? axle.tyreKey() : source.key();
        Dimension loaded = axle.loadedRadius();
        found.add(
                Disagreement.beyond(List.of(loaded.key(), key), loaded.label(), radius, rule, limit, allowed, amounts));
    }

    private double diameterUncertainty() {
        return Optional.of(axle)
                .filter(set.tyres()::containsKey)
                .map(set::designationUncertainty)
                .orElseGet(() -> own(axle.tyreDiameter()));
    }

    private double own(Dimension dimension) {
        return set.uncertaintyOf(dimension.key(), Unit.MM);
    }

    private double allowed(double one, double other) {
        return ClosingChecks.allowed(Math.hypot(one, other), set, Unit.MM);
    }
}

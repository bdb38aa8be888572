package org.pumpwright.host.claim.statistics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is known of the life of one failure mode. Modes are never pooled: two of different kind together look like a third that is
 * none of them. Thread-safe.
 */
public sealed interface ModeLife {
    /** Fewer failures of one mode than this say nothing on the shape of its life (common practice). */
    int FEWEST_FAILURES = 5;

    /** The mode's code; empty for confirmed failures whose mode was not determined. */
    Optional<String> mode();

    /** Ages at failure in months, rising. */
    List<Double> failureMonths();

    /** Units that did not fail of this mode. */
    int suspensions();

    /**
     * Weibull's distribution fits.
     *
     * @param fit ages in months
     * @param watchedMonths greatest age watched; a life beyond it is not seen, but carried on from the curve
     */
    record Fitted(
            Optional<String> mode, List<Double> failureMonths, int suspensions, WeibullFit fit, double watchedMonths)
            implements ModeLife {
        public Fitted {
            failureMonths = List.copyOf(failureMonths);
        }
    }

    /**
     * No distribution is given, and why.
     *
     * @param reason in plain words
     */
    record Listed(Optional<String> mode, List<Double> failureMonths, int suspensions, String reason)
            implements ModeLife {
        public Listed {
            failureMonths = List.copyOf(failureMonths);
        }
    }

    /** The modes of a fleet, by name, those without a mode last. */
    static List<ModeLife> of(Fleet fleet) {
        List<Optional<String>> modes = fleet.lots().stream()
                .flatMap(lot -> lot.ends().stream())
                .filter(UnitEnd::failed)
                .map(UnitEnd::mode)
                .distinct()
                .sorted((a, b) -> a.isPresent() && b.isPresent()
                        ? a.get().compareTo(b.get())
                        : Boolean.compare(b.isPresent(), a.isPresent()))
                .toList();
        return modes.stream().map(mode -> of(mode, fleet.lives(mode))).toList();
    }

    /** The same for lives that are at hand; ages in months. */
    static ModeLife of(Optional<String> mode, List<Life> lives) {
        List<Double> failed = new ArrayList<>();
        int suspensions = 0;
        double greatest = 0;
        for (Life life : lives) {
            greatest = Math.max(greatest, life.age());
            for (int i = 0; life.failed() && i < life.count(); i++) {
                failed.add(life.age());
            }
            suspensions += life.failed() ? 0 : life.count();
        }
        failed.sort(null);
        Optional<String> refusal = refusal(mode, failed.size(), lives);
        return refusal.isPresent()
                ? new Listed(mode, failed, suspensions, refusal.get())
                : new Fitted(mode, failed, suspensions, WeibullFit.of(lives), greatest);
    }

    private static Optional<String> refusal(Optional<String> mode, int failures, List<Life> lives) {
        if (mode.isEmpty()) {
            return Optional.of("mode not determined: such failures may be of several modes, which must not be pooled");
        }
        if (failures < FEWEST_FAILURES) {
            return Optional.of("too few: %d %s of this mode, %d are needed for a Weibull fit"
                    .formatted(failures, failures == 1 ? "failure" : "failures", FEWEST_FAILURES));
        }
        return WeibullFit.exists(lives)
                ? Optional.empty()
                : Optional.of("no failure came before the greatest age watched: no Weibull fit exists");
    }
}

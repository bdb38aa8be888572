package org.pumpwright.host.app.bucket;

import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.pumpwright.host.plan.Ask;
import org.pumpwright.host.run.Operator;

/** The person at a simulated bucket: weighs, swings the diverter when asked, and empties the bucket. Confined to the run thread. */
final class SimulatedWeigher implements Operator {
    private final SimulatedBench bench;
    private @Nullable String answer;

    SimulatedWeigher(SimulatedBench bench) {
        this.bench = bench;
    }

    @Override
    public boolean isThere() {
        return true;
    }

    @Override
    public void ask(Ask question) {
        switch (question.name()) {
            case "tare" -> bench.empty();
            case "swing-in" -> bench.swing(true);
            case "swing-out" -> bench.swing(false);
            default -> {}
        }
        answer = question.name().startsWith("swing") ? "" : String.format(Locale.ROOT, "%.0f", bench.shownGrams());
    }

    @Override
    public Optional<String> answer() {
        String given = answer;
        answer = null;
        return Optional.ofNullable(given);
    }

    @Override
    public boolean wantsPause() {
        return false;
    }
}

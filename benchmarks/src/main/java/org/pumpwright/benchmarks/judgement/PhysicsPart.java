package org.pumpwright.benchmarks.judgement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Everything for one kind of physics. Confined to the main thread. */
final class PhysicsPart {
    /** A test that never flags a healthy unit finds nothing: where the program failed none, its rival gets one in a thousand. */
    private static final double LEAST_FALSE_ALARMS = 0.001;

    private final Worlds worlds;
    private final Sizes sizes;
    private final TestStand full;
    private final String physics;
    private final List<String> page = new ArrayList<>();

    PhysicsPart(Worlds worlds, Sizes sizes, TestStand full) {
        this.worlds = worlds;
        this.sizes = sizes;
        this.full = full;
        physics = worlds.all().get(0).changed() ? "changed" : "matched";
    }

    /** The tables; may be read while the work goes on. */
    List<String> page() {
        return page;
    }

    OperatingPlot.Panel carryOut() {
        heading("## " + physics + " physics");
        HealthyPart healthy = HealthyPart.of(worlds, sizes.healthy());
        table("### Healthy units", HealthyPart.head(), healthy.lines(physics));
        Doubts doubts = Doubts.of(healthy.elsewhere());
        ReturnsPart returns = ReturnsPart.of(worlds, doubts, sizes.returns());
        table("### A mix of returns", ReturnsPart.head(), returns.lines(physics));
        heading(returns.sizes());
        table(
                "### What the measurement truly adds",
                Noise.head(),
                returns.best().noise().lines(physics));
        BorderlinePart borderline = BorderlinePart.of(worlds, doubts, sizes.borderline(), sizes.beyond());
        table("### Units near a limit", BorderlinePart.head(), borderline.lines(physics));
        Share passes = borderline.falsePasses();
        heading("At 2 u and beyond passed: %s of %d.".formatted(passes.text(), passes.of()));
        FaultPart faults = FaultPart.of(worlds, sizes.faulty(), sizes.faulty());
        table("### Faults, quick plan", FaultPart.head(), faults.lines());
        table(
                "### Causes, quick plan",
                CauseTotals.head(),
                CauseTotals.quick(faults).lines(physics));
        double falseAlarms = Math.max(LEAST_FALSE_ALARMS, healthy.falseFails().value());
        DetectionPart detection =
                DetectionPart.of(worlds, doubts, returns.best().noise(), faults, falseAlarms);
        table("### Faults, beside the test that knows each", DetectionPart.head(), detection.lines());
        heading(String.format(Locale.ROOT, "False alarms of each test: %.2f %%.", 100 * falseAlarms));
        FaultPart more = FaultPart.of(worlds.on(full), sizes.fullModerate(), sizes.fullOther());
        table("### Faults, full plan", FaultPart.head(), more.lines());
        table(
                "### Causes, full plan",
                CauseTotals.head(),
                CauseTotals.full(more).lines(physics));
        return new OperatingPlot.Panel(
                physics + " physics, simulated units", borderline.operatingPoints(returns.best()));
    }

    private void heading(String text) {
        page.add(text);
        page.add("");
    }

    private void table(String title, String head, List<String> lines) {
        heading(title);
        page.add(head);
        page.addAll(lines);
        page.add("");
        worlds.progress().say(String.join("\n", lines));
    }
}

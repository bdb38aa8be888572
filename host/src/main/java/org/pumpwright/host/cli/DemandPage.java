package org.pumpwright.host.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.app.DemandCheck;
import org.pumpwright.host.demand.GroundSpeed;
import org.pumpwright.host.demand.Margin;
import org.pumpwright.host.demand.Planter;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** The demand of a planter for a person, and as JSON. Thread-safe. */
record DemandPage(DemandCheck.Result result, UnitSystem units, Optional<Double> pulsesPerUsGallon, int meterRows) {
    private static final double PERCENT = 100;
    /** Published densities that are further apart than this deserve a word. */
    private static final double WORTH_WEIGHING = 0.01;

    List<String> lines() {
        Planter planter = result.planter();
        List<String> lines = new ArrayList<>();
        lines.add(line(
                "Planter",
                "%d rows of %s, %s, %s"
                        .formatted(
                                planter.rows(),
                                spacing(planter),
                                planter.rate().print(units),
                                planter.speed().print(units))));
        lines.add(line("Product", result.product().words()));
        lines.add(line(
                "",
                String.format(
                        Locale.ROOT,
                        "%.2f lb/gal (%.0f kg/m3), specific gravity %.3f, root %.3f",
                        result.product().factor().poundsPerUsGallon(),
                        result.product().factor().kilogramsPerM3(),
                        result.product().factor().specificGravity(),
                        result.product().factor().rootOfSpecificGravity())));
        lines.add(line("Needed a row", flow(planter.perRow()) + " of product"));
        lines.add(line("Needed in all", flow(planter.whole()) + " of product"));
        if (result.nozzles()) {
            lines.add(line("As water", flow(result.asWater()) + ", through nozzles: flow x root of specific gravity"));
        }
        pulsesPerUsGallon.ifPresent(k -> lines.add(line("At the meter", pulses(k))));
        result.margin().ifPresent(margin -> addMargin(lines, margin));
        if (result.product().published() > WORTH_WEIGHING) {
            lines.add(line(
                    "Note",
                    String.format(
                            Locale.ROOT,
                            "published densities of it are %.1f %% apart: weigh your own, --density-lb-gal.",
                            PERCENT * result.product().published())));
        }
        return lines;
    }

    private void addMargin(List<String> lines, Margin margin) {
        DemandCheck.Available there = result.available().orElseThrow();
        lines.add(line("Available", flow(new FlowRate(there.flow().value())) + " of water: " + there.words()));
        lines.add(line(
                "Margin",
                String.format(
                        Locale.ROOT,
                        "%+.1f %%%s; wanted is %+.0f %%",
                        PERCENT * margin.spare(),
                        margin.expandedUncertainty() > 0
                                ? String.format(
                                        Locale.ROOT, " +- %.1f %% (k = 2)", PERCENT * margin.expandedUncertainty())
                                : "",
                        PERCENT * margin.wanted())));
        result.fastestMetresPerSecond()
                .ifPresent(speed -> lines.add(
                        line("Fastest", new GroundSpeed(speed).print(units) + " at this rate, with nothing to spare")));
        lines.add(line("Finding", words(margin)));
    }

    private static String words(Margin margin) {
        return switch (margin.finding()) {
            case ENOUGH -> "ENOUGH, with the spare that is wanted.";
            case TIGHT -> "TIGHT: enough for the rate, without the spare that is wanted.";
            case TOO_LITTLE -> "TOO LITTLE: drive slower, put out less, or fit a larger unit.";
            case NOT_CERTAIN -> "NOT CERTAIN: the uncertainty of what was measured is larger than the margin.";
        };
    }

    private String pulses(double k) {
        FlowRate fed = result.planter().of(meterRows);
        return String.format(
                Locale.ROOT, "%.1f pulses/s with %d rows on it (K %.1f pulses/US gal)", hertz(k, fed), meterRows, k);
    }

    private static double hertz(double pulsesPerUsGallon, FlowRate flow) {
        return pulsesPerUsGallon * flow.gallonsPerMinute() / 60;
    }

    private String spacing(Planter planter) {
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.1f in", planter.spacingMetres() / Planter.METRES_PER_INCH)
                : String.format(Locale.ROOT, "%.1f cm", planter.spacingMetres() * PERCENT);
    }

    private String flow(FlowRate flow) {
        return units == UnitSystem.US
                ? String.format(Locale.ROOT, "%.3f gal/min", flow.gallonsPerMinute())
                : String.format(Locale.ROOT, "%.3f L/min", flow.litresPerMinute());
    }

    private static String line(String name, String text) {
        return WrappedText.of(String.format(Locale.ROOT, "%-14s", name).replace(' ', '\u00A0') + " " + text, 15)
                .replace('\u00A0', ' ');
    }

    String json() {
        Planter planter = result.planter();
        ObjectNode node = JsonMapper.builder().build().createObjectNode();
        node.put("rows", planter.rows());
        node.put("row_m3_per_second", planter.perRow().m3PerSecond());
        node.put("whole_m3_per_second", planter.whole().m3PerSecond());
        node.put("density_kg_per_m3", result.product().factor().kilogramsPerM3());
        node.put("as_water_m3_per_second", result.asWater().m3PerSecond());
        pulsesPerUsGallon.ifPresent(k -> node.put("k_pulses_per_m3", k / Volume.M3_PER_US_GALLON)
                .put("meter_rows", meterRows)
                .put("pulses_per_second", hertz(k, planter.of(meterRows))));
        result.margin()
                .ifPresent(margin -> node.put(
                                "available_m3_per_second", margin.available().value())
                        .put("margin", margin.spare())
                        .put("margin_expanded_uncertainty", margin.expandedUncertainty())
                        .put(
                                "finding",
                                margin.finding().name().toLowerCase(Locale.ROOT).replace('_', '-')));
        return node.toString();
    }
}

package org.pumpwright.host.report.pdf;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** How one shape or text of a drawing looks: what it inherits, and its own declarations over that. Thread-safe. */
final class DrawingStyle {
    /** Black areas without an outline, as SVG begins. */
    static final DrawingStyle INITIAL = new DrawingStyle(Map.of("fill", "#000", "stroke", "none"));

    private static final int BOLD = 600;
    private static final float[] SOLID = {};

    private final Map<String, String> values;

    private DrawingStyle(Map<String, String> values) {
        this.values = values;
    }

    DrawingStyle with(Map<String, String> own) {
        if (own.isEmpty()) {
            return this;
        }
        Map<String, String> all = new HashMap<>(values);
        all.putAll(own);
        return new DrawingStyle(all);
    }

    Optional<Rgb> fill() {
        return Rgb.of(values.getOrDefault("fill", "none"));
    }

    Optional<Rgb> stroke() {
        return Rgb.of(values.getOrDefault("stroke", "none"));
    }

    /** From 0, which cannot be seen, to 1. */
    float fillOpacity() {
        return number("fill-opacity", 1);
    }

    float strokeWidth() {
        return number("stroke-width", 1);
    }

    /** Lengths of dashes and gaps in turn; empty for a whole line. */
    float[] dashes() {
        String dashes = values.getOrDefault("stroke-dasharray", "none").strip();
        if (dashes.equals("none")) {
            return SOLID;
        }
        String[] lengths = dashes.split("[\\s,]+", -1);
        float[] parsed = new float[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            parsed[i] = Float.parseFloat(lengths[i]);
        }
        return parsed;
    }

    boolean roundEnds() {
        return "round".equals(values.get("stroke-linecap"));
    }

    boolean roundCorners() {
        return "round".equals(values.get("stroke-linejoin"));
    }

    float fontSize() {
        return number("font-size", 10);
    }

    Face face() {
        String weight = values.getOrDefault("font-weight", "normal");
        boolean bold = weight.equals("bold") || (weight.matches("\\d+") && Integer.parseInt(weight) >= BOLD);
        return bold ? Face.SANS_BOLD : Face.SANS;
    }

    private float number(String property, float unless) {
        String value = values.get(property);
        return value == null ? unless : Float.parseFloat(value.replace("px", "").strip());
    }
}

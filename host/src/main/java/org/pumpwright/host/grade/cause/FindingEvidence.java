package org.pumpwright.host.grade.cause;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.Finding.Figure;
import org.pumpwright.host.grade.finding.Finding.Word;
import org.pumpwright.host.grade.finding.FindingUnit;

/** What the readings of the steps tell: figures on their scale, words as numbers where they are an outcome. Thread-safe. */
final class FindingEvidence {
    private static final Pattern SHARE = Pattern.compile("(\\d+) of (\\d+)");
    private static final Pattern COUNT = Pattern.compile("\\d+");

    /** What a word stands for where a figure could not come about: far beyond any figure. */
    private static final Map<String, Double> BEYOND = Map.of(
            "no steady flow", 60.0,
            "not steady", 60.0,
            "no start", 0.5,
            "no pulses", 0.0);

    private FindingEvidence() {}

    static void into(Map<String, Observation> all, Finding finding) {
        String key = finding.step() + "/" + finding.name();
        if (finding.outcome() instanceof Figure figure) {
            double u = figure.value().standardUncertainty();
            all.put(key, Observation.figure(figure.value().value(), u, scale(figure.unit())));
            if (isEvent(finding.name())) {
                all.put(key + " seen", new Observation(1, 0));
            }
        } else if (finding.outcome() instanceof Word word) {
            word(all, key, finding.name(), word.word());
        }
    }

    private static void word(Map<String, Observation> all, String key, String name, String word) {
        if (name.equals("pulses")) {
            PulseWords.into(all, word);
            return;
        }
        number(word).ifPresent(number -> all.put(key, new Observation(number, 0)));
        if (isEvent(name) && word.equals("none")) {
            all.put(key + " seen", new Observation(0, 0));
        } else if (BEYOND.containsKey(word)) {
            FindingUnit unit = name.contains("duty") ? FindingUnit.SHARE : FindingUnit.SECONDS;
            all.put(key, Observation.figure(BEYOND.get(word), 0, scale(unit)));
        }
    }

    private static Optional<Double> number(String word) {
        Matcher share = SHARE.matcher(word);
        if (share.matches()) {
            return Optional.of(Double.parseDouble(share.group(1)) / Double.parseDouble(share.group(2)));
        }
        if (COUNT.matcher(word).matches()) {
            return Optional.of(
                    Observation.figure(Double.parseDouble(word), 0, 1).value());
        }
        return switch (word) {
            case "none", "no", "closed" -> Optional.of(0.0);
            case "at some flows", "not in step" -> Optional.of(0.5);
            case "yes", "seen", "creeps", "open", "at every flow", "in step with the drive" -> Optional.of(1.0);
            default -> Optional.empty();
        };
    }

    /** Something that happens or does not: that it did says more than when. */
    private static boolean isEvent(String name) {
        return name.equals("thermal trip") || name.equals("cut-out") || name.equals("reset");
    }

    /** Below this a figure's own size counts, above it its ratio to another's. */
    static double scale(FindingUnit unit) {
        return switch (unit) {
            case OHMS -> 0.002;
            case AMPS -> 0.1;
            case VOLTS -> 0.05;
            case SHARE -> 0.02;
            case SECONDS -> 0.5;
            case HERTZ -> 1;
            case PASCALS -> 1e4;
            case M3_PER_SECOND -> 1e-5;
            case PULSES_PER_M3 -> 1e4;
            default -> 10;
        };
    }
}

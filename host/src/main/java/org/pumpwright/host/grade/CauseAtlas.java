package org.pumpwright.host.grade;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.json.JsonMapper;

/**
 * The patterns by which faults show, as data. The figures come from a model of a pump, not from a maker; whatever is
 * concluded from them is a pointer for the next test, never a finding. Thread-safe.
 *
 * @param about where the figures come from
 * @param dutyPercent the set points of the patterns, ascending, at least two
 * @param causes the patterns
 * @param splits tests that tell two causes apart
 */
public record CauseAtlas(String about, List<Double> dutyPercent, List<CausePattern> causes, List<Split> splits) {
    private static final String STANDARD = "causes.json";

    /**
     * A test that tells two causes apart.
     *
     * @param between the ids of the two
     * @param test what to do
     */
    public record Split(Set<String> between, String test) {
        public Split {
            between = Set.copyOf(between);
        }
    }

    public CauseAtlas {
        dutyPercent = List.copyOf(dutyPercent);
        causes = List.copyOf(causes);
        splits = List.copyOf(splits);
        Set<String> ids = new HashSet<>();
        for (CausePattern cause : causes) {
            cause.requireFigures(dutyPercent.size());
            if (!ids.add(cause.id())) {
                throw new IllegalArgumentException("cause " + cause.id() + " is given twice");
            }
        }
        for (Split split : splits) {
            if (split.between().size() != 2 || !ids.containsAll(split.between())) {
                throw new IllegalArgumentException("a split is not between two known causes: " + split.between());
            }
        }
    }

    /** The atlas that comes with the program. */
    public static CauseAtlas standard() {
        try (InputStream data = CauseAtlas.class.getResourceAsStream(STANDARD)) {
            if (data == null) {
                throw new IllegalStateException("the program is incomplete: " + STANDARD + " is missing");
            }
            return JsonMapper.builder().build().readValue(data, CauseAtlas.class);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's " + STANDARD + " cannot be read", e);
        }
    }

    /** The test that tells two causes apart, where one is known. */
    Optional<String> split(CausePattern one, CausePattern other) {
        return splits.stream()
                .filter(split -> split.between().equals(Set.of(one.id(), other.id())))
                .map(Split::test)
                .findFirst();
    }

    /** True when the patterns reach this set point. */
    boolean reaches(double percent) {
        return percent >= dutyPercent.get(0) && percent <= dutyPercent.get(dutyPercent.size() - 1);
    }

    /** A pattern's figure at a set point, linear between those of the atlas. */
    double at(List<Double> figures, double percent) {
        int upper = 1;
        while (upper < dutyPercent.size() - 1 && dutyPercent.get(upper) < percent) {
            upper++;
        }
        double from = dutyPercent.get(upper - 1);
        double share = (percent - from) / (dutyPercent.get(upper) - from);
        return figures.get(upper - 1) + share * (figures.get(upper) - figures.get(upper - 1));
    }
}

package org.pumpwright.host.rule;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.catalog.UnitKind;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/** Reads the rules of grading from files; what is wrong is told with file and line. Thread-safe. */
public final class RulesFile {
    /** The shelf's folder of rules. */
    public static final String FOLDER = "rules";

    private static final DataSchema SCHEMA = DataSchema.beside(RulesFile.class, "rules.schema.json");

    private final String file;
    private final int version;

    private RulesFile(String file, int version) {
        this.file = file;
        this.version = version;
    }

    /**
     * Reads the rules of one kind of unit.
     *
     * @throws DataFileException when the file is absent or does not hold usable rules
     */
    public static GradingRules read(Path file) throws DataFileException {
        String onShelf = FOLDER + "/" + file.getFileName();
        return DataFile.read(file, SCHEMA, node -> new RulesFile(onShelf, node.whole("version")).rules(node));
    }

    private GradingRules rules(Node node) {
        return new GradingRules(
                node.text("rules"),
                version,
                node.text("title"),
                UnitKind.ofWord(node.text("kind")),
                node.text("source"),
                decision(node.at("decision")),
                corrections(node.at("corrections")),
                node.find("nozzle").map(this::nozzle).orElse(NozzleEffect.NONE),
                list(node, "uncertainty").stream().map(this::doubt).toList(),
                list(node, "judged_readings").stream().map(this::limit).toList(),
                list(node, "words").stream().map(this::word).toList(),
                list(node, "pass_needs").stream().map(this::passNeed).toList(),
                node.at("ladder").items().stream().map(Node::text).toList());
    }

    private static List<Node> list(Node node, String key) {
        return node.find(key).map(Node::items).orElse(List.of());
    }

    private Source source(Node node) {
        return new Source(file, version, node.line());
    }

    private DecisionNumbers decision(Node node) {
        Node guard = node.at("guard_factor");
        Node retests = node.at("most_retests");
        return new DecisionNumbers(guard.number(), node.whole("most_retests"), source(guard), source(retests));
    }

    private CorrectionLimits corrections(Node node) {
        return new CorrectionLimits(
                node.number("volts_within_percent") / 100,
                node.number("nozzle_within_percent") / 100,
                node.number("total_within_percent") / 100,
                node.find("warm_up_window_seconds").map(Node::number).orElse(Double.POSITIVE_INFINITY),
                source(node));
    }

    private NozzleEffect nozzle(Node node) {
        return new NozzleEffect(
                node.at("exponents").items().stream()
                        .map(each -> new NozzleEffect.Exponent(
                                each.number("duty_percent") / 100, each.number("flow"), each.number("motor_amps")))
                        .toList(),
                node.number("measured_percent") / 100,
                node.number("unmeasured_percent") / 100,
                source(node));
    }

    private KnownDoubt doubt(Node node) {
        return new KnownDoubt(
                node.text("name"),
                KnownDoubt.Quantity.valueOf(constant(node.text("quantity"))),
                node.number("percent") / 100,
                node.text("source"),
                source(node.at("percent")));
    }

    private ReadingLimit limit(Node node) {
        LimitUnit unit = LimitUnit.ofWord(node.text("unit"));
        Optional<Node> low = node.find("low");
        Optional<Node> high = node.find("high");
        if (low.isEmpty() && high.isEmpty()) {
            node.at("reading").refuse("has neither low nor high: give one of them, or both");
        } else if (low.isPresent()
                && high.isPresent()
                && low.get().number() > high.get().number()) {
            low.get()
                    .refuse("is %s, it must not lie above high, %s"
                            .formatted(low.get().found(), high.get().found()));
        }
        double least = low.map(each -> unit.kept(each.number())).orElse(Double.NEGATIVE_INFINITY);
        double most = high.map(each -> unit.kept(each.number())).orElse(Double.POSITIVE_INFINITY);
        boolean usable = (low.isPresent() || high.isPresent()) && least <= most;
        return new ReadingLimit(
                name(node),
                unit,
                usable ? least : 0,
                usable ? most : 0,
                Role.valueOf(constant(node.text("role"))),
                node.text("outside"),
                node.text("source"),
                source(low.orElse(node.at("reading"))),
                source(high.orElse(node.at("reading"))));
    }

    private WordRule word(Node node) {
        return new WordRule(
                name(node),
                node.text("word"),
                WordRule.Meaning.valueOf(constant(node.text("means"))),
                node.text("says"),
                source(node.at("word")));
    }

    private PassNeed passNeed(Node node) {
        return new PassNeed(
                node.text("complaint"),
                node.at("plans").items().stream().map(Node::text).toList(),
                node.text("says"),
                source(node.at("complaint")));
    }

    private static ReadingName name(Node node) {
        return new ReadingName(
                node.text("reading"),
                node.find("match").map(match -> match.text().equals("begins")).orElse(false),
                node.find("step").map(Node::text));
    }

    private static String constant(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}

package org.pumpwright.host.claim.coverage;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.claim.Amount;
import org.pumpwright.host.claim.Missing;
import org.pumpwright.host.claim.coverage.CoverageRules.Attachments;
import org.pumpwright.host.claim.coverage.CoverageRules.Cap;
import org.pumpwright.host.claim.coverage.CoverageRules.Counted;
import org.pumpwright.host.claim.coverage.CoverageRules.CountedFrom;
import org.pumpwright.host.claim.coverage.CoverageRules.IfUnknown;
import org.pumpwright.host.claim.coverage.CoverageRules.Period;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/** Reads coverage rules. Thread-safe. */
public final class CoverageRulesFile {
    private static final DataSchema SCHEMA = DataSchema.beside(CoverageRulesFile.class, "coverage.schema.json");

    private CoverageRulesFile() {}

    /**
     * Reads one file of rules.
     *
     * @param shown how the file is named on papers
     * @throws DataFileException when the file is absent or holds no usable rules
     */
    public static CoverageRules read(Path file, String shown) throws DataFileException {
        return DataFile.read(file, SCHEMA, root -> rules(root, shown));
    }

    private static CoverageRules rules(Node root, String shown) {
        Node effective = root.at("effective");
        return new CoverageRules(
                root.text("rules"),
                root.whole("version"),
                shown,
                root.find("invented").map(each -> root.flag("invented")).orElse(false),
                day(effective.at("from")),
                effective.find("to").map(CoverageRulesFile::day),
                period(root.at("period")),
                root.find("caps").map(CoverageRulesFile::caps).orElse(List.of()),
                new At<>(
                        root.flag("registration_needed"),
                        root.at("registration_needed").line()),
                new At<>(
                        root.at("consumables").items().stream().map(Node::text).toList(),
                        root.at("consumables").line()),
                whole(root, "out_of_box_days"),
                whole(root, "repeat_return_days"),
                root.at("attachments").items().stream()
                        .map(CoverageRulesFile::attachments)
                        .toList(),
                amount(root, "second_signer_above"),
                amount(root, "goodwill_budget_a_year"));
    }

    private static Period period(Node node) {
        CountedFrom from = choice(CountedFrom.class, node.text("counted_from"));
        if (node.find("seasons").isEmpty()) {
            return new Period(
                    from,
                    node.find("months").map(each -> node.whole("months")).orElse(0),
                    Optional.empty(),
                    false,
                    node.line());
        }
        Node seasons = node.at("seasons");
        return new Period(
                from,
                seasons.whole("count"),
                Optional.of(new Season(monthDay(seasons.at("first_day")), monthDay(seasons.at("last_day")))),
                seasons.flag("first_partial_free"),
                node.line());
    }

    private static List<Cap> caps(Node node) {
        return node.items().stream()
                .map(cap -> new Cap(
                        choice(Counted.class, cap.text("of")),
                        cap.number("most"),
                        choice(IfUnknown.class, cap.text("if_unknown")),
                        cap.line()))
                .toList();
    }

    private static Attachments attachments(Node node) {
        return new Attachments(
                amount(node.at("from_value")),
                node.at("needed").items().stream()
                        .map(each -> choice(Missing.class, each.text()))
                        .toList(),
                node.line());
    }

    private static Optional<At<Integer>> whole(Node root, String key) {
        return root.find(key).map(node -> new At<>(root.whole(key), node.line()));
    }

    private static Optional<At<Amount>> amount(Node root, String key) {
        return root.find(key).map(node -> new At<>(amount(node), node.line()));
    }

    private static Amount amount(Node node) {
        return new Amount(Math.round(node.number() * 100));
    }

    private static LocalDate day(Node node) {
        return read(node, LocalDate::parse, "a day, such as 2026-03-15", LocalDate.EPOCH);
    }

    private static MonthDay monthDay(Node node) {
        return read(node, text -> MonthDay.parse("--" + text), "a day of the year, such as 03-15", MonthDay.of(1, 1));
    }

    private static <T> T read(Node node, Function<String, T> reader, String allowed, T instead) {
        try {
            return reader.apply(node.text());
        } catch (DateTimeException e) {
            node.refuse("is %s, allowed is %s".formatted(node.found(), allowed));
            return instead;
        }
    }

    /** The schema has checked the word. */
    private static <E extends Enum<E>> E choice(Class<E> choices, String word) {
        return Enum.valueOf(choices, word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}

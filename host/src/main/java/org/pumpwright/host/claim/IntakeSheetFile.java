package org.pumpwright.host.claim;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.pumpwright.host.datafile.DataFile;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.datafile.DataSchema;
import org.pumpwright.host.datafile.Node;

/** Reads an intake sheet that was filled in by hand. Thread-safe. */
public final class IntakeSheetFile {
    private static final DataSchema SCHEMA = DataSchema.beside(IntakeSheetFile.class, "intake.schema.json");

    private IntakeSheetFile() {}

    /**
     * Reads one sheet.
     *
     * @param now when the unit came, where the sheet does not say
     * @throws DataFileException when the file is absent or does not hold a usable sheet
     */
    public static ClaimIntake read(Path file, OffsetDateTime now) throws DataFileException {
        return DataFile.read(file, SCHEMA, root -> intake(root, now));
    }

    private static ClaimIntake intake(Node root, OffsetDateTime now) {
        return new ClaimIntake(
                number(root.at("claim")),
                root.find("received")
                        .map(node -> read(node, OffsetDateTime::parse, now))
                        .orElse(now),
                new People(text(root, "brought_by"), text(root, "contact"), text(root, "customer")),
                unit(root),
                use(root),
                new OnThePlanter(text(root, "planter"), text(root, "product"), text(root, "last_flush")),
                new ComplaintAsMade(
                        text(root, "complaint"),
                        text(root, "complaint_code"),
                        text(root, "conditions"),
                        text(root, "already_swapped")),
                new Decontamination(
                        flag(root, "decontamination_declared"),
                        root.find("decontamination_confirmed_by").map(Node::text),
                        root.find("rinses").map(node -> root.whole("rinses")).orElse(0)),
                root.find("value").map(node -> new Amount(Math.round(node.number() * 100))),
                text(root, "taken_by"),
                flag(root, "practice").orElse(false));
    }

    private static String number(Node node) {
        try {
            return ClaimIntake.checkedNumber(node.text());
        } catch (IllegalArgumentException e) {
            node.refuse("is " + node.found() + ": " + e.getMessage());
            return "X";
        }
    }

    private static UnitAsReceived unit(Node root) {
        return new UnitAsReceived(
                text(root, "kind"),
                text(root, "model"),
                text(root, "serial"),
                root.find("date_code").map(Node::text),
                text(root, "accessories"),
                text(root, "seal"),
                text(root, "tag"));
    }

    private static TimeInUse use(Node root) {
        return new TimeInUse(
                day(root, "sold"),
                day(root, "delivered"),
                day(root, "first_used"),
                count(root, "hours"),
                count(root, "acres"),
                flag(root, "registered"));
    }

    private static Optional<Sourced<LocalDate>> day(Node root, String key) {
        return root.find(key)
                .map(node -> new Sourced<>(read(node.at("day"), LocalDate::parse, LocalDate.EPOCH), source(node)));
    }

    private static Optional<Sourced<Double>> count(Node root, String key) {
        return root.find(key).map(node -> new Sourced<>(node.number("count"), source(node)));
    }

    private static Source source(Node node) {
        return Source.valueOf(node.text("source").toUpperCase(Locale.ROOT));
    }

    private static String text(Node root, String key) {
        return root.find(key).map(Node::text).orElse("");
    }

    private static Optional<Boolean> flag(Node root, String key) {
        return root.find(key).map(node -> root.flag(key));
    }

    private static <T> T read(Node node, Function<String, T> reader, T instead) {
        try {
            return reader.apply(node.text());
        } catch (DateTimeException e) {
            node.refuse("is %s, allowed is a day such as 2026-03-15, or a time such as 2026-03-15T09:30:00-06:00"
                    .formatted(node.found()));
            return instead;
        }
    }
}

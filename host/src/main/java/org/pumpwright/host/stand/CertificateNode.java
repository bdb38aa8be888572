package org.pumpwright.host.stand;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.datafile.Node;

/** Makes a certificate of the keys that meters, analogue channels and the relief check have for it. Thread-safe. */
final class CertificateNode {
    private CertificateNode() {}

    static Certificate certificate(Node channel) {
        return certificate(channel, "calibrated");
    }

    /** Of a relief valve: what is calibrated elsewhere is checked here. */
    static Certificate reliefCheck(Node check) {
        return certificate(check, "checked");
    }

    private static Certificate certificate(Node node, String firstDay) {
        Optional<LocalDate> begins = day(node, firstDay);
        Optional<LocalDate> due = day(node, "due");
        if (due.isPresent() && refusesDue(node.at("due"), due.get(), begins, firstDay)) {
            due = Optional.empty();
        }
        return new Certificate(node.text("certificate"), begins, due);
    }

    private static boolean refusesDue(Node due, LocalDate last, Optional<LocalDate> calibrated, String firstDay) {
        if (calibrated.isEmpty()) {
            due.refuse("needs the key %1$s: what was not %1$s cannot be due".formatted(firstDay));
            return true;
        }
        if (last.isBefore(calibrated.get())) {
            due.refuse("is " + due.found() + ", which is before " + firstDay + ", " + calibrated.get());
            return true;
        }
        return false;
    }

    private static Optional<LocalDate> day(Node channel, String key) {
        return channel.find(key).flatMap(CertificateNode::day);
    }

    private static Optional<LocalDate> day(Node node) {
        try {
            return Optional.of(LocalDate.parse(node.text()));
        } catch (DateTimeParseException e) {
            node.refuse("is " + node.found() + ", which is no day of the calendar");
            return Optional.empty();
        }
    }
}

package org.pumpwright.host.stand;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.datafile.Node;

/** Makes a certificate of the keys that meters and analogue channels have for it. Thread-safe. */
final class CertificateNode {
    private CertificateNode() {}

    static Certificate certificate(Node channel) {
        Optional<LocalDate> calibrated = day(channel, "calibrated");
        Optional<LocalDate> due = day(channel, "due");
        if (due.isPresent() && refusesDue(channel.at("due"), due.get(), calibrated)) {
            due = Optional.empty();
        }
        return new Certificate(channel.text("certificate"), calibrated, due);
    }

    private static boolean refusesDue(Node due, LocalDate last, Optional<LocalDate> calibrated) {
        if (calibrated.isEmpty()) {
            due.refuse("needs the key calibrated: what was not calibrated cannot be due");
            return true;
        }
        if (last.isBefore(calibrated.get())) {
            due.refuse("is " + due.found() + ", which is before calibrated, " + calibrated.get());
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

package org.pumpwright.host.record;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.pumpwright.host.calibration.Certificate;
import tools.jackson.databind.node.ObjectNode;

/** What stands behind a calibration as JSON. Days are left out where there are none. Thread-safe. */
final class CertificateJson {
    private CertificateJson() {}

    /** Adds the certificate to its channel. */
    static void write(Certificate certificate, ObjectNode channel) {
        channel.put("certificate", certificate.number());
        certificate.calibrated().ifPresent(day -> channel.put("calibrated", day.toString()));
        certificate.due().ifPresent(day -> channel.put("due", day.toString()));
    }

    static Certificate read(JsonPlace channel) {
        return new Certificate(
                channel.at("certificate").text(),
                channel.at("calibrated").ifThere(CertificateJson::day),
                channel.at("due").ifThere(CertificateJson::day));
    }

    private static LocalDate day(JsonPlace at) {
        try {
            return LocalDate.parse(at.text());
        } catch (DateTimeException e) {
            throw new UnfitRecordException("%s is \"%s\", not a day".formatted(at.way(), at.text()));
        }
    }
}

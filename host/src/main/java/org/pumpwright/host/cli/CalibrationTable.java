package org.pumpwright.host.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.Locale;
import org.pumpwright.host.calibration.Certificate;
import org.pumpwright.host.calibration.Certificate.Standing;
import org.pumpwright.host.calibration.KCurve;
import org.pumpwright.host.trace.AnalogChannel;
import org.pumpwright.host.trace.Channels;
import org.pumpwright.host.trace.MeterChannel;

/** Prints what each channel of a stand is calibrated by, and a warning for those past due. Thread-safe. */
final class CalibrationTable {
    private CalibrationTable() {}

    static void print(PrintWriter out, Channels channels, LocalDate today) {
        out.println("Calibrations");
        for (MeterChannel meter : channels.meters()) {
            row(out, name(meter), kind(meter.k()), meter.certificate(), today);
        }
        for (AnalogChannel channel : channels.analogs()) {
            row(out, channel.role().words(), channel.calibration().kind(), channel.certificate(), today);
        }
        warn(out, channels, today);
    }

    private static void warn(PrintWriter out, Channels channels, LocalDate today) {
        for (MeterChannel meter : channels.meters()) {
            String consequence = meter.equals(channels.flowMeter())
                    ? "runs on this stand are INVALID until it is calibrated"
                    : "have it calibrated";
            warn(out, name(meter), meter.certificate(), today, consequence);
        }
        for (AnalogChannel channel : channels.analogs()) {
            warn(out, channel.role().words(), channel.certificate(), today, "have it calibrated");
        }
    }

    private static void warn(
            PrintWriter out, String name, Certificate certificate, LocalDate today, String consequence) {
        if (certificate.standing(today) == Standing.PAST_DUE) {
            out.printf(
                    "  ! calibration due: %s, last day was %s; %s%n",
                    name, certificate.due().orElseThrow(), consequence);
        }
    }

    private static void row(PrintWriter out, String name, String kind, Certificate certificate, LocalDate today) {
        out.printf("  %-18s %-15s %s%n", name, kind, certificate.words(today));
    }

    private static String name(MeterChannel meter) {
        return "meter " + meter.index();
    }

    private static String kind(KCurve k) {
        int points = k.points().size();
        return points == 1 ? "one K" : String.format(Locale.ROOT, "K at %d flows", points);
    }
}

package org.pumpwright.host.cli.bucket;

import java.io.PrintWriter;
import java.util.Locale;
import org.pumpwright.host.app.bucket.BucketCalibration;
import org.pumpwright.host.cli.WrappedText;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.quantity.Volume;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecord.BudgetLine;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.record.BucketRecord.Run;

/** A bucket test for the technician at the terminal. Confined to one thread. */
final class ResultPage {
    private static final int SET_IN = 15;

    private final PrintWriter out;
    private final BucketRecord record;
    private final UnitSystem units;

    ResultPage(PrintWriter out, BucketRecord record, UnitSystem units) {
        this.out = out;
        this.record = record;
        this.units = units;
    }

    void print(boolean numbers) {
        if (record.practice()) {
            out.println("PRACTICE - invented or simulated figures, not a test of a real meter");
        }
        line("Meter", record.meter().serial() + ", " + record.meter().state());
        line("Method", record.method().words() + "; " + record.method().fluid());
        out.println();
        out.printf(
                Locale.ROOT,
                "%10s %5s %11s %9s %7s %8s %7s%n",
                units == UnitSystem.US ? "gal/min" : "L/min",
                "runs",
                "K, /US gal",
                "K, /L",
                "s, %",
                "range, %",
                "U, %");
        record.flows().forEach(this::flow);
        out.println();
        single();
        for (BucketRecord.Check check : record.result().checks()) {
            line(check.holds() ? "holds" : "DOES NOT HOLD", check.name() + ": " + check.words());
        }
        record.wording().deviations().forEach(deviation -> line("Deviation", deviation));
        record.wording().opinions().forEach(opinion -> line("Look at", opinion));
        line("Finding", finding());
        if (numbers) {
            numbers();
        }
    }

    private void flow(Flow flow) {
        long left = flow.runs().stream().filter(run -> run.excluded().isEmpty()).count();
        out.printf(
                Locale.ROOT,
                "%10.3f %5d %11.1f %9.2f %7.2f %8.2f %7.2f%s%n",
                shown(flow.m3PerSecond()),
                left,
                perGallon(flow.k().pulsesPerM3()),
                flow.k().pulsesPerM3() / 1000,
                100 * flow.relativeSpread(),
                100 * flow.relativeRange(),
                100 * flow.k().relativeExpandedUncertainty(),
                flow.leg().equals("up") ? "" : "  " + flow.leg());
    }

    private void single() {
        BucketRecord.Result result = record.result();
        line(
                "K",
                String.format(
                        Locale.ROOT,
                        "%.1f pulses per US gallon = %.2f pulses per litre, %s",
                        perGallon(result.single().pulsesPerM3()),
                        result.single().pulsesPerM3() / 1000,
                        result.singleWords()));
        line(
                "U",
                String.format(
                        Locale.ROOT,
                        "%.2f %% as calibrated (k = %.2f, about 95 %%); about %.1f %% in service",
                        100 * result.single().relativeExpandedUncertainty(),
                        result.single().coverageFactor(),
                        100 * result.inService()));
        result.fit()
                .ifPresent(fit -> line(
                        "Formula",
                        String.format(
                                Locale.ROOT,
                                "K = %.1f x (1 %s %.4f / flow), pulses per US gallon, flow in gal/min",
                                perGallon(fit.kInfinity()),
                                fit.b() < 0 ? "+" : "-",
                                new FlowRate(Math.abs(fit.b())).gallonsPerMinute())));
    }

    private String finding() {
        if (!record.result().accepted()) {
            return "NOT ACCEPTED: a rule does not hold. Put it right and test again, or give --override WHY.";
        }
        boolean all = record.result().checks().stream().allMatch(BucketRecord.Check::holds);
        return all ? "ACCEPTED." : "ACCEPTED, with a rule overridden: the reason stands on the report.";
    }

    private void numbers() {
        for (Flow flow : record.flows()) {
            out.println();
            out.printf(
                    Locale.ROOT,
                    "Runs and budget at %.3f %s%n",
                    shown(flow.m3PerSecond()),
                    units == UnitSystem.US ? "gal/min" : "L/min");
            for (Run run : flow.runs()) {
                out.printf(
                        Locale.ROOT,
                        "  %-24s %9d pulses %8.1f s   K %10.1f%s%n",
                        run.reading(),
                        run.pulses(),
                        run.seconds(),
                        perGallon(run.k()),
                        run.excluded().map(why -> "  LEFT OUT: " + why).orElse(""));
            }
            for (BudgetLine line : flow.budget()) {
                out.printf(
                        Locale.ROOT,
                        "  %-40s %s %8.3f %%%n",
                        line.source(),
                        line.kind(),
                        100 * line.relativeStandardUncertainty());
            }
            out.printf(
                    Locale.ROOT,
                    "  %-40s   %8.3f %%   k = %.2f   U = %.2f %%%n",
                    "combined",
                    100 * flow.k().relativeStandardUncertainty(),
                    flow.k().coverageFactor(),
                    100 * flow.k().relativeExpandedUncertainty());
        }
    }

    /** The files, each on a line of its own: names are to be copied whole. */
    void files(BucketCalibration.Kept kept) {
        out.println();
        out.println("Report         " + kept.page());
        out.println("Report, text   " + kept.text());
        out.println("Label          " + kept.label());
        out.println("Certificate    " + kept.certificate());
        out.println("Record         " + kept.record());
    }

    private void line(String name, String text) {
        String lead =
                String.format(Locale.ROOT, "%-" + (SET_IN - 1) + "s", name).replace(' ', '\u00A0');
        out.println(WrappedText.of(lead + " " + text, SET_IN).replace('\u00A0', ' '));
    }

    private double shown(double m3PerSecond) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return units == UnitSystem.US ? flow.gallonsPerMinute() : flow.litresPerMinute();
    }

    private static double perGallon(double pulsesPerM3) {
        return pulsesPerM3 * Volume.M3_PER_US_GALLON;
    }
}

package org.pumpwright.host.calibrate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.pumpwright.host.calibrate.fluid.Liquid;
import org.pumpwright.host.calibration.Certificate;

/** What stops a test before anything is worked out. */
final class Refusals {
    private final BucketTest test;
    private final List<Problem> problems = new ArrayList<>();

    private Refusals(BucketTest test) {
        this.test = test;
    }

    static List<Problem> of(BucketTest test) {
        Refusals refusals = new Refusals(test);
        refusals.certificates();
        refusals.liquid();
        for (Run run : test.runs()) {
            refusals.run(run);
        }
        return refusals.problems;
    }

    private void certificates() {
        Method method = test.bench().method();
        if (method instanceof Weighing weighing) {
            certificate("scale", weighing.scale().certificate());
        } else if (method instanceof Measuring vessel) {
            certificate("vessel", vessel.certificate());
        } else if (method instanceof Comparing master) {
            certificate("master meter", master.certificate());
        }
        certificate("thermometer", test.bench().thermometer().certificate());
    }

    private void certificate(String what, Certificate certificate) {
        LocalDate day = test.day();
        Certificate.Standing standing = certificate.standing(day);
        certificate
                .calibrated()
                .filter(day::isBefore)
                .ifPresent(calibrated -> add(
                        what + ".certificate",
                        "the %s was calibrated on %s (%s), after the test of %s: one of the two days is wrong",
                        what,
                        calibrated,
                        certificate.number(),
                        day));
        if (standing == Certificate.Standing.PAST_DUE) {
            add(
                    what + ".certificate",
                    "the certificate of the %s (%s) was due on %s, the test is of %s: have it calibrated, then test again",
                    what,
                    certificate.number(),
                    certificate.due().orElseThrow(),
                    day);
        } else if (test.rules().grade() == Grade.CERTIFICATE
                && (standing == Certificate.Standing.NOT_CALIBRATED
                        || certificate.due().isEmpty())) {
            add(
                    what + ".certificate",
                    "a calibration certificate needs the number and due date of the %s's own certificate, here is: %s",
                    what,
                    certificate.words(day));
        }
    }

    private void liquid() {
        if (test.bench().method() instanceof Weighing && test.liquid().isEmpty()) {
            add(
                    "liquid.density",
                    "weighing product needs its measured density and temperature (%s): weigh a known volume of that batch and"
                            + " give kg_per_m3 and celsius",
                    test.liquidName());
        }
    }

    private void run(Run run) {
        Method method = test.bench().method();
        if (!matches(method, run.reading())) {
            add(
                    field(run, "reading"),
                    "run %d has a reading that does not go with a %s: correct it, or the method",
                    run.number(),
                    method.words());
            return;
        }
        Optional<Liquid> liquid = test.liquid();
        boolean known = liquid.filter(
                        it -> run.liquidCelsius() < it.leastCelsius() || run.liquidCelsius() > it.mostCelsius())
                .isEmpty();
        if (!known) {
            add(
                    field(run, "temperature"),
                    "run %d is at %.1f °C, the density of %s is known from %.1f to %.1f °C",
                    run.number(),
                    run.liquidCelsius(),
                    test.liquidName(),
                    liquid.orElseThrow().leastCelsius(),
                    liquid.orElseThrow().mostCelsius());
        }
        if (method instanceof Weighing weighing && run.reading() instanceof Reading.Weights weights) {
            capacity(run, weighing, weights);
        }
        if ((known && liquid.isPresent()) || !(method instanceof Weighing)) {
            volume(run);
        }
    }

    private static boolean matches(Method method, Reading reading) {
        return (method instanceof Weighing && reading instanceof Reading.Weights)
                || (method instanceof Measuring && reading instanceof Reading.Level)
                || (method instanceof Comparing && reading instanceof Reading.MasterPulses);
    }

    private void capacity(Run run, Weighing weighing, Reading.Weights weights) {
        double most = weighing.scale().capacityKg();
        if (weights.grossKg() > most) {
            add(
                    field(run, "gross"),
                    "run %d weighs %.3f kg gross, the scale takes %.3f kg: catch less, or take a larger scale",
                    run.number(),
                    weights.grossKg(),
                    most);
        }
    }

    private void volume(Run run) {
        RunResult result = RunArithmetic.of(run, test);
        double most = test.bench().method() instanceof Weighing weighing
                ? weighing.bucketM3()
                : test.bench().method() instanceof Measuring vessel ? vessel.vesselM3() : Double.POSITIVE_INFINITY;
        if (result.volume().m3() > most) {
            add(
                    field(run, "volume"),
                    "run %d caught %.2f L, the bucket holds %.2f L: it ran over, or a weight or unit is wrong: make"
                            + " runs shorter or take a larger bucket",
                    run.number(),
                    result.volume().litres(),
                    most * 1000);
        }
        problems.addAll(FlowRefusals.of(test, result));
    }

    private static String field(Run run, String what) {
        return "run " + run.number() + " " + what;
    }

    private void add(String field, String format, Object... values) {
        problems.add(new Problem(field, String.format(Locale.ROOT, format, values)));
    }
}

package org.pumpwright.host.record;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pumpwright.host.calibration.Certificate;

/**
 * The record of one bucket test: who did what to which meter, everything that was read, and what came of it. It holds figures,
 * not the program's own types, so that a later program prints an old test as it was. It is never edited: an amended report is a
 * new record that names the old one. SI units: K in pulses/m3, flows in m3/s. Thread-safe.
 *
 * @param id unlike that of any other record, and sorts by time; it stands on every page
 * @param issuedAt with the shop's UTC offset
 * @param software name and version of the program
 * @param shop who did it
 * @param job for whom, when and where
 * @param meter what was calibrated
 * @param method how
 * @param equipment what it was calibrated with
 * @param conditions what influenced the result
 * @param flows the flows in the order of the test
 * @param result what came of it
 * @param wording what people add to the figures
 * @param source what was read: the sheet as it was typed, or the stand's readings in the same form
 * @param practice true for invented or simulated tests: every paper then says so
 */
public record BucketRecord(
        String id,
        OffsetDateTime issuedAt,
        String software,
        Shop shop,
        Job job,
        Meter meter,
        Method method,
        List<Equipment> equipment,
        List<Condition> conditions,
        List<Flow> flows,
        Result result,
        Wording wording,
        Source source,
        boolean practice) {
    public BucketRecord {
        equipment = List.copyOf(equipment);
        conditions = List.copyOf(conditions);
        flows = List.copyOf(flows);
    }

    /**
     * Who did it.
     *
     * @param title of the papers: {@code Calibration report} unless the shop claims competence
     * @param name of the shop
     * @param address lines
     * @param countryCode two capital letters, ISO 3166-1
     * @param accreditation words; empty where the shop is not accredited, and the papers then say so
     */
    public record Shop(String title, String name, List<String> address, String countryCode, String accreditation) {
        public Shop {
            address = List.copyOf(address);
        }
    }

    /**
     * For whom, when and where.
     *
     * @param customer as on the order; may be blank
     * @param place where it was done: {@code laboratory} or {@code customer}
     * @param received when the meter came in; empty where nobody noted it
     * @param performed the day of the test
     * @param technician who tested
     * @param signer who authorises the report; blank until somebody has
     */
    public record Job(
            String customer,
            String place,
            Optional<LocalDate> received,
            LocalDate performed,
            String technician,
            String signer) {}

    /**
     * What was calibrated.
     *
     * @param serial or another mark by which it is found again
     * @param model in words
     * @param condition as found
     * @param state {@code as found} or {@code as left}
     * @param previousK of the last calibration or of the monitor; empty where it is not known
     * @param otherState K before or after adjustment, where both were measured; empty otherwise
     */
    public record Meter(
            String serial,
            String model,
            String condition,
            String state,
            OptionalDouble previousK,
            OptionalDouble otherState) {}

    /**
     * How it was done.
     *
     * @param id short name with version
     * @param words in a sentence
     * @param fluid what flowed, with its density
     */
    public record Method(String id, String words, String fluid) {}

    /**
     * What it was calibrated with.
     *
     * @param role what it is used for, e.g. {@code scale}
     * @param name which one
     * @param certificate what stands behind it
     */
    public record Equipment(String role, String name, Certificate certificate) {}

    /** What influenced the result: a name, its value and its unit as printed. */
    public record Condition(String name, double value, String unit) {}

    /**
     * One flow.
     *
     * @param m3PerSecond mean flow of its runs
     * @param leg {@code up}, {@code down} or {@code repeat}
     * @param runs every run, those left out too
     * @param k mean K with its uncertainty
     * @param relativeSpread standard deviation of one run over the mean
     * @param relativeRange largest less smallest over the mean
     * @param budget what the uncertainty is made of
     */
    public record Flow(
            double m3PerSecond,
            String leg,
            List<Run> runs,
            KValue k,
            double relativeSpread,
            double relativeRange,
            List<BudgetLine> budget) {
        public Flow {
            runs = List.copyOf(runs);
            budget = List.copyOf(budget);
        }
    }

    /**
     * One run.
     *
     * @param pulses counted
     * @param m3 volume at the meter
     * @param seconds how long
     * @param reading what was read, as printed, e.g. {@code 1897 g}
     * @param k pulses/m3
     * @param excluded why it was left out; empty where it counts
     */
    public record Run(long pulses, double m3, double seconds, String reading, double k, Optional<String> excluded) {}

    /**
     * A K with its uncertainty.
     *
     * @param pulsesPerM3 K
     * @param relativeStandardUncertainty share of K
     * @param degreesOfFreedom effective; may be infinite
     * @param coverageFactor k for about 95 %
     */
    public record KValue(
            double pulsesPerM3, double relativeStandardUncertainty, double degreesOfFreedom, double coverageFactor) {
        /** Expanded uncertainty as a share of K. */
        public double relativeExpandedUncertainty() {
            return coverageFactor * relativeStandardUncertainty;
        }
    }

    /**
     * One line of a budget.
     *
     * @param source of the uncertainty, in words
     * @param kind {@code A} from the spread of readings, {@code B} from elsewhere
     * @param relativeStandardUncertainty its part of K's uncertainty, as a share of K
     * @param degreesOfFreedom may be infinite
     */
    public record BudgetLine(String source, String kind, double relativeStandardUncertainty, double degreesOfFreedom) {}

    /**
     * What came of it.
     *
     * @param single the K for the monitor, as calibrated
     * @param singleWords what it was chosen for
     * @param lowest flow of the declared range
     * @param highest flow of the declared range
     * @param worstError largest deviation of the single K over the range, as a share
     * @param inService relative expanded uncertainty to expect in the field
     * @param fit K over flow as a formula; empty where none holds
     * @param checks what was held against a rule
     * @param accepted whether all checks hold
     */
    public record Result(
            KValue single,
            String singleWords,
            double lowest,
            double highest,
            double worstError,
            double inService,
            Optional<Fit> fit,
            List<Check> checks,
            boolean accepted) {
        public Result {
            checks = List.copyOf(checks);
        }
    }

    /**
     * {@code K = kInfinity (1 - b / Q)}.
     *
     * @param kInfinity pulses/m3
     * @param uKInfinity its standard uncertainty
     * @param b m3/s
     * @param uB its standard uncertainty
     * @param residuals measured K over the formula's, less 1, in the order of the flows
     */
    public record Fit(double kInfinity, double uKInfinity, double b, double uB, List<Double> residuals) {
        public Fit {
            residuals = List.copyOf(residuals);
        }
    }

    /** A rule, whether it holds, and the figures in words. */
    public record Check(String name, boolean holds, String words) {}

    /**
     * What people add.
     *
     * @param deviations from the method, additions and exclusions; never empty where a rule was overridden
     * @param opinions marked as such, apart from the results
     * @param decisionRule limits and rule behind the statement of conformity; blank where none is made
     * @param nextCalibration when to calibrate next; empty unless the customer has agreed to be told
     * @param amends id of the record that this one takes the place of, and why
     * @param external results that others provided, in words; blank where there are none
     */
    public record Wording(
            List<String> deviations,
            List<String> opinions,
            String decisionRule,
            Optional<String> nextCalibration,
            Optional<Amendment> amends,
            String external) {
        public Wording {
            deviations = List.copyOf(deviations);
            opinions = List.copyOf(opinions);
        }
    }

    /** An amended report names the one before it. */
    public record Amendment(String record, int revision, String reason) {}

    /**
     * What was read.
     *
     * @param name of the file, or of the stand
     * @param sha256 of the text, hexadecimal
     * @param text the sheet as it was typed
     */
    public record Source(String name, String sha256, String text) {}
}

package org.pumpwright.host.report.bucket;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import org.pumpwright.host.quantity.FlowRate;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecord.BudgetLine;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.record.BucketRecord.Run;
import org.pumpwright.host.report.bucket.Block.Blanks;
import org.pumpwright.host.report.bucket.Block.Chart;
import org.pumpwright.host.report.bucket.Block.FactList;
import org.pumpwright.host.report.bucket.Block.Headline;
import org.pumpwright.host.report.bucket.Block.Paragraphs;
import org.pumpwright.host.report.bucket.Block.Table;

/**
 * What stands on a calibration report, sheet by sheet: the elements that ISO/IEC 17025:2017 lists in 7.8.2 and 7.8.4, in plain
 * words. The list of clauses was read in secondary copies; the standard's own text is not repeated. Thread-safe.
 */
final class ReportContent {
    /** Rows of runs that fit on a sheet. */
    private static final int RUNS_A_SHEET = 44;
    /** Rows of runs that leave room for a budget below them. */
    private static final int RUNS_WITH_BUDGET = 24;
    /** Flows that fit side by side in a budget. */
    private static final int FLOWS_A_BUDGET = 6;

    private static final String NOT_GIVEN = "not given";
    private static final String ONLY = "The results apply to the meter named here, as it was, and to nothing else.";
    private static final String NOT_ACCREDITED =
            "This shop is not accredited for calibration, and does not say that it is.";
    private static final String WHOLE = "This report may be copied only as a whole.";

    private final BucketRecord record;
    private final Figures figures;

    ReportContent(BucketRecord record, UnitSystem units) {
        this.record = record;
        figures = new Figures(units);
    }

    /** The sheets, each with its blocks. */
    List<List<Block>> sheets() {
        List<List<Block>> sheets = new ArrayList<>();
        sheets.add(List.of(who(), what(), headline(), results(), new Chart(), checks()));
        runSheets().forEach(table -> sheets.add(new ArrayList<>(List.of(table))));
        List<Block> lastRuns = sheets.get(sheets.size() - 1);
        if (budgetsFitBelow(lastRuns)) {
            lastRuns.addAll(budgets());
        } else {
            sheets.add(budgets());
        }
        sheets.add(last());
        return sheets;
    }

    /** A few runs leave room for the budgets on their sheet. */
    private boolean budgetsFitBelow(List<Block> runs) {
        int rows = record.flows().stream().mapToInt(flow -> flow.runs().size()).sum() % RUNS_A_SHEET;
        return record.flows().size() <= FLOWS_A_BUDGET && runs.size() == 1 && rows > 0 && rows <= RUNS_WITH_BUDGET;
    }

    private List<Block> last() {
        List<Block> blocks = new ArrayList<>();
        blocks.add(conditions());
        blocks.add(equipment());
        blocks.add(new Paragraphs("Statements", statements(), false));
        blocks.add(new Paragraphs(
                "Deviations from the method, additions, exclusions",
                record.wording().deviations().isEmpty()
                        ? List.of("None.")
                        : record.wording().deviations(),
                false));
        if (!record.wording().opinions().isEmpty()) {
            blocks.add(new Paragraphs(
                    "Opinions and interpretations (not part of the results)",
                    record.wording().opinions(),
                    true));
        }
        blocks.add(origin());
        blocks.add(new Blanks(List.of("Authorised by: " + record.job().signer(), "Date:", "Signature:")));
        return blocks;
    }

    private FactList who() {
        List<Map.Entry<String, String>> facts = new ArrayList<>();
        facts.add(Map.entry(
                "Done by",
                record.shop().name() + ", " + String.join(", ", record.shop().address())));
        facts.add(Map.entry("Customer", given(record.job().customer())));
        facts.add(Map.entry("Place", place()));
        facts.add(Map.entry(
                "Received", record.job().received().map(Object::toString).orElse(NOT_GIVEN)));
        facts.add(Map.entry("Performed", record.job().performed().toString()));
        facts.add(Map.entry("Issued", record.issuedAt().toLocalDate().toString()));
        facts.add(Map.entry("Technician", given(record.job().technician())));
        record.wording()
                .amends()
                .ifPresent(amends -> facts.add(Map.entry(
                        "Amends",
                        "revision %d, takes the place of %s: %s"
                                .formatted(amends.revision(), amends.record(), amends.reason()))));
        return new FactList("", facts);
    }

    private String place() {
        return record.job().place().equals("customer") ? "at the customer's" : "in the shop";
    }

    private FactList what() {
        BucketRecord.Meter meter = record.meter();
        List<Map.Entry<String, String>> facts = new ArrayList<>();
        facts.add(Map.entry("Meter", "%s, serial %s".formatted(given(meter.model()), given(meter.serial()))));
        facts.add(Map.entry("Condition", given(meter.condition())));
        facts.add(Map.entry("State", meter.state() + other(meter.otherState())));
        facts.add(Map.entry("Previous K", previous(meter.previousK())));
        facts.add(Map.entry(
                "Method", record.method().words() + " (" + record.method().id() + ")"));
        facts.add(Map.entry("Fluid", record.method().fluid()));
        facts.add(Map.entry("Sampling plan", "not applicable"));
        return new FactList("What was calibrated, and how", facts);
    }

    private String other(OptionalDouble k) {
        if (k.isEmpty()) {
            return "; not adjusted, as far as was told";
        }
        String name = record.meter().state().equals("as left") ? "as found" : "as left";
        return "; %s: K %s %s (%s %%)"
                .formatted(
                        name,
                        figures.k(k.getAsDouble()),
                        figures.kUnit(),
                        Figures.signedPercent(
                                k.getAsDouble() / record.result().single().pulsesPerM3() - 1));
    }

    private String previous(OptionalDouble k) {
        return k.isEmpty()
                ? NOT_GIVEN
                : "%s %s, the new one is %s %% off it"
                        .formatted(
                                figures.k(k.getAsDouble()),
                                figures.kUnit(),
                                Figures.signedPercent(record.result().single().pulsesPerM3() / k.getAsDouble() - 1));
    }

    private Headline headline() {
        BucketRecord.Result result = record.result();
        return new Headline(
                "K = %s pulses per US gallon = %s pulses per litre"
                        .formatted(Figures.perUsGallon(result.single()), Figures.perLitre(result.single())),
                "U = %s %% (k = %s, about 95 %%) as calibrated; expected in service: about %s %%"
                        .formatted(
                                Figures.percent(result.single().relativeExpandedUncertainty()),
                                Figures.factor(result.single().coverageFactor()),
                                String.format(Locale.ROOT, "%.1f", 100 * result.inService())),
                "%s, from %s; over that range this one K is wrong by at most %s %%"
                        .formatted(
                                result.singleWords(),
                                Figures.range(result.lowest(), result.highest()),
                                Figures.percent(result.worstError())),
                result.accepted() ? "ACCEPTED" : "NOT ACCEPTED: see what does not hold",
                result.accepted());
    }

    private Table results() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < record.flows().size(); i++) {
            rows.add(row(record.flows().get(i), i));
        }
        return new Table(
                "Results",
                List.of(
                        "flow, " + figures.flowUnit(),
                        "leg",
                        "runs",
                        "K, pulses/US gal",
                        "K, pulses/L",
                        "s, %",
                        "range, %",
                        "U, %",
                        "k",
                        "nu eff",
                        "off the one K, %",
                        "off the formula, %"),
                rows,
                0,
                fitWords());
    }

    private List<String> row(Flow flow, int number) {
        double off = flow.k().pulsesPerM3() / record.result().single().pulsesPerM3() - 1;
        Optional<Double> residual = record.result()
                .fit()
                .filter(fit -> number < fit.residuals().size())
                .map(fit -> fit.residuals().get(number));
        return List.of(
                figures.flow(flow.m3PerSecond()),
                flow.leg(),
                counted(flow),
                Figures.perUsGallon(flow.k()),
                Figures.perLitre(flow.k()),
                Figures.percent(flow.relativeSpread()),
                Figures.percent(flow.relativeRange()),
                Figures.percent(flow.k().relativeExpandedUncertainty()),
                Figures.factor(flow.k().coverageFactor()),
                Figures.degrees(flow.k().degreesOfFreedom()),
                Figures.signedPercent(off),
                residual.map(Figures::signedPercent).orElse("-"));
    }

    private static String counted(Flow flow) {
        long left = flow.runs().stream().filter(run -> run.excluded().isEmpty()).count();
        return left == flow.runs().size()
                ? Long.toString(left)
                : left + " of " + flow.runs().size();
    }

    private String fitWords() {
        boolean passes = record.flows().stream().anyMatch(flow -> flow.budget().isEmpty());
        return formula()
                + (passes ? " Flows going down or repeated are held against those going up and take their U." : "");
    }

    private String formula() {
        return record.result()
                .fit()
                .map(fit -> String.format(
                        Locale.ROOT,
                        "Formula: K = %s x (1 %s %s / flow), flow in %s; standard uncertainties %s and %s. s: standard"
                                + " deviation of one run. U: expanded uncertainty of the mean. nu eff: effective degrees of freedom.",
                        figures.k(fit.kInfinity()),
                        fit.b() < 0 ? "+" : "-",
                        fine(Math.abs(fit.b())),
                        figures.flowUnit(),
                        figures.k(fit.uKInfinity()),
                        fine(fit.uB())))
                .orElse("No formula holds over these flows; between them K is taken from straight lines.");
    }

    private String fine(double m3PerSecond) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return figures.flowUnit().equals("gal/min")
                ? String.format(Locale.ROOT, "%.4f", flow.gallonsPerMinute())
                : String.format(Locale.ROOT, "%.4f", flow.litresPerMinute());
    }

    private Table checks() {
        List<List<String>> rows = record.result().checks().stream()
                .map(check -> List.of(check.holds() ? "holds" : "DOES NOT HOLD", check.name(), check.words()))
                .toList();
        return new Table("What was held against a rule", List.of("", "rule", "found"), rows, 3, "");
    }

    private List<Block> runSheets() {
        List<List<String>> rows = new ArrayList<>();
        for (Flow flow : record.flows()) {
            int number = 1;
            for (Run run : flow.runs()) {
                rows.add(run(flow, run, number++));
            }
        }
        List<Block> sheets = new ArrayList<>();
        for (int from = 0; from < rows.size(); from += RUNS_A_SHEET) {
            sheets.add(new Table(
                    from == 0 ? "Every run" : "Every run, continued",
                    List.of(
                            "flow, " + figures.flowUnit(),
                            "run",
                            "read",
                            "pulses",
                            "time, s",
                            "volume, L",
                            "K, " + figures.kUnit(),
                            "off the mean, %",
                            "remark"),
                    rows.subList(from, Math.min(rows.size(), from + RUNS_A_SHEET)),
                    0,
                    ""));
        }
        return sheets;
    }

    private List<String> run(Flow flow, Run run, int number) {
        return List.of(
                number == 1 ? figures.flow(flow.m3PerSecond()) : "",
                Integer.toString(number),
                run.reading(),
                Long.toString(run.pulses()),
                String.format(Locale.ROOT, "%.1f", run.seconds()),
                String.format(Locale.ROOT, "%.4f", run.m3() * 1000),
                figures.k(run.k()),
                Figures.signedPercent(run.k() / flow.k().pulsesPerM3() - 1),
                run.excluded().map(why -> "LEFT OUT: " + why).orElse(""));
    }

    /** Every line of every budget, flows side by side. */
    private List<Block> budgets() {
        List<Block> tables = new ArrayList<>();
        List<Flow> flows =
                record.flows().stream().filter(flow -> !flow.budget().isEmpty()).toList();
        for (int from = 0; from < flows.size(); from += FLOWS_A_BUDGET) {
            tables.add(budget(flows.subList(from, Math.min(flows.size(), from + FLOWS_A_BUDGET)), from == 0));
        }
        return tables;
    }

    private Table budget(List<Flow> flows, boolean first) {
        Set<String> sources = new LinkedHashSet<>();
        flows.forEach(flow -> flow.budget().forEach(line -> sources.add(line.source())));
        List<String> head = new ArrayList<>(List.of("source of uncertainty", "kind"));
        flows.forEach(flow -> head.add(figures.flow(flow.m3PerSecond()) + " " + figures.flowUnit()));
        List<List<String>> rows = new ArrayList<>();
        for (String source : sources) {
            List<String> row = new ArrayList<>(List.of(source, kind(flows, source)));
            flows.forEach(flow -> row.add(line(flow, source)
                    .map(line -> Figures.percentFine(line.relativeStandardUncertainty()))
                    .orElse("-")));
            rows.add(row);
        }
        rows.add(sum("u combined", flows, flow -> Figures.percentFine(flow.k().relativeStandardUncertainty())));
        rows.add(sum(
                "effective degrees of freedom",
                flows,
                flow -> Figures.degrees(flow.k().degreesOfFreedom())));
        rows.add(sum("coverage factor k", flows, flow -> Figures.factor(flow.k().coverageFactor())));
        rows.add(sum("U", flows, flow -> Figures.percent(flow.k().relativeExpandedUncertainty())));
        return new Table(
                first ? "Uncertainty budgets: standard uncertainties, % of K" : "",
                head,
                rows,
                2,
                first
                        ? "A: from the spread of the runs. B: from certificates, data and experience."
                                + " U covers about 95 % (JCGM 100)."
                        : "");
    }

    private static List<String> sum(String name, List<Flow> flows, Function<Flow, String> figure) {
        List<String> row = new ArrayList<>(List.of(name, ""));
        flows.forEach(flow -> row.add(figure.apply(flow)));
        return row;
    }

    private static Optional<BudgetLine> line(Flow flow, String source) {
        return flow.budget().stream()
                .filter(line -> line.source().equals(source))
                .findFirst();
    }

    private static String kind(List<Flow> flows, String source) {
        return flows.stream()
                .flatMap(flow -> line(flow, source).stream())
                .map(BudgetLine::kind)
                .findFirst()
                .orElse("");
    }

    private FactList conditions() {
        return new FactList(
                "Conditions that influence the result",
                record.conditions().stream()
                        .map(condition -> Map.entry(
                                condition.name(),
                                String.format(Locale.ROOT, "%s %s", plain(condition.value()), condition.unit())))
                        .toList());
    }

    private static String plain(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e9
                ? String.format(Locale.ROOT, "%.0f", value)
                : String.format(Locale.ROOT, "%.5g", value)
                        .replaceAll("(\\.\\d*?)0+$", "$1")
                        .replaceAll("\\.$", "");
    }

    private Table equipment() {
        return new Table(
                "Calibrated with, and what that is traceable to",
                List.of("what", "which", "certificate"),
                record.equipment().stream()
                        .map(item -> List.of(
                                item.role(),
                                item.name(),
                                item.certificate().words(record.job().performed())))
                        .toList(),
                3,
                "");
    }

    private List<String> statements() {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                record.shop().accreditation().isBlank()
                        ? NOT_ACCREDITED
                        : record.shop().accreditation());
        sentences.add(ONLY);
        sentences.add(WHOLE);
        if (!record.wording().decisionRule().isBlank()) {
            sentences.add("Conformity: " + record.wording().decisionRule());
        }
        sentences.add(
                record.wording().external().isBlank()
                        ? "No result was provided by others."
                        : "Provided by others: " + record.wording().external());
        record.wording()
                .nextCalibration()
                .ifPresent(next -> sentences.add("Next calibration, as agreed with the customer: " + next));
        return sentences;
    }

    private FactList origin() {
        return new FactList(
                "Where the figures come from",
                List.of(
                        Map.entry("Program", record.software()),
                        Map.entry("Read from", record.source().name()),
                        Map.entry("Its SHA-256", record.source().sha256()),
                        Map.entry("Record", record.id())));
    }

    private static String given(String text) {
        return text.isBlank() ? NOT_GIVEN : text;
    }
}

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
import org.pumpwright.host.text.Interpreter;

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

    private final BucketRecord record;
    private final Figures figures;
    private final Interpreter in;

    ReportContent(BucketRecord record, UnitSystem units, Interpreter in) {
        this.record = record;
        this.in = in;
        figures = new Figures(units, in);
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
        blocks.add(new Paragraphs(in.say("bucket.statements"), statements(), false));
        blocks.add(new Paragraphs(
                in.say("bucket.deviations"),
                record.wording().deviations().isEmpty()
                        ? List.of(in.say("bucket.none"))
                        : typed(record.wording().deviations()),
                false));
        if (!record.wording().opinions().isEmpty()) {
            blocks.add(new Paragraphs(
                    in.say("bucket.opinions"), typed(record.wording().opinions()), true));
        }
        blocks.add(origin());
        blocks.add(new Blanks(List.of(
                in.say("bucket.authorised", record.job().signer()),
                in.say("bucket.date"),
                in.say("bucket.signature"))));
        return blocks;
    }

    private FactList who() {
        List<Map.Entry<String, String>> facts = new ArrayList<>();
        facts.add(Map.entry(
                in.say("bucket.done_by"),
                record.shop().name() + ", " + String.join(", ", record.shop().address())));
        facts.add(Map.entry(in.say("bucket.customer"), given(record.job().customer())));
        facts.add(Map.entry(in.say("bucket.place"), place()));
        facts.add(Map.entry(
                in.say("bucket.received"),
                record.job().received().map(Object::toString).orElse(in.say("bucket.not_given"))));
        facts.add(Map.entry(in.say("bucket.performed"), record.job().performed().toString()));
        facts.add(Map.entry(
                in.say("bucket.issued"), record.issuedAt().toLocalDate().toString()));
        facts.add(Map.entry(in.say("bucket.technician"), given(record.job().technician())));
        record.wording()
                .amends()
                .ifPresent(amends -> facts.add(Map.entry(
                        in.say("bucket.amends"),
                        in.say("bucket.revision", amends.revision(), amends.record(), amends.reason()))));
        return new FactList("", facts);
    }

    private String place() {
        return record.job().place().equals("customer")
                ? in.say("bucket.at_the_customer")
                : in.say("bucket.in_the_shop");
    }

    private FactList what() {
        BucketRecord.Meter meter = record.meter();
        List<Map.Entry<String, String>> facts = new ArrayList<>();
        facts.add(Map.entry(
                in.say("bucket.meter"), in.say("bucket.meter.values", given(meter.model()), given(meter.serial()))));
        facts.add(Map.entry(in.say("bucket.condition"), given(in.typed(meter.condition()))));
        facts.add(Map.entry(in.say("bucket.state"), in.stored(meter.state()) + other(meter.otherState())));
        facts.add(Map.entry(in.say("bucket.previous"), previous(meter.previousK())));
        facts.add(Map.entry(
                in.say("bucket.method"),
                in.stored(record.method().words()) + " (" + record.method().id() + ")"));
        facts.add(Map.entry(in.say("bucket.fluid"), in.typed(record.method().fluid())));
        facts.add(Map.entry(in.say("bucket.sampling"), in.say("bucket.not_applicable")));
        return new FactList(in.say("bucket.what"), facts);
    }

    private String other(OptionalDouble k) {
        if (k.isEmpty()) {
            return "; " + in.say("bucket.not_adjusted");
        }
        String name = record.meter().state().equals("as left") ? "as found" : "as left";
        return "; "
                + in.say(
                        "bucket.other_state",
                        in.stored(name),
                        figures.k(k.getAsDouble()),
                        figures.kUnit(),
                        Figures.signedPercent(
                                k.getAsDouble() / record.result().single().pulsesPerM3() - 1));
    }

    private String previous(OptionalDouble k) {
        return k.isEmpty()
                ? in.say("bucket.not_given")
                : in.say(
                        "bucket.previous.values",
                        figures.k(k.getAsDouble()),
                        figures.kUnit(),
                        Figures.signedPercent(record.result().single().pulsesPerM3() / k.getAsDouble() - 1));
    }

    private Headline headline() {
        BucketRecord.Result result = record.result();
        return new Headline(
                in.say("bucket.k", Figures.perUsGallon(result.single()), Figures.perLitre(result.single())),
                in.say(
                        "bucket.uncertainty",
                        Figures.percent(result.single().relativeExpandedUncertainty()),
                        Figures.factor(result.single().coverageFactor()),
                        String.format(Locale.ROOT, "%.1f", 100 * result.inService())),
                in.say(
                        "bucket.range",
                        in.stored(result.singleWords()),
                        figures.range(result.lowest(), result.highest()),
                        Figures.percent(result.worstError())),
                in.say(result.accepted() ? "bucket.accepted" : "bucket.not_accepted"),
                result.accepted());
    }

    private Table results() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < record.flows().size(); i++) {
            rows.add(row(record.flows().get(i), i));
        }
        return new Table(
                in.say("bucket.results"),
                List.of(
                        in.say("bucket.head.flow", figures.flowUnit()),
                        in.say("bucket.head.leg"),
                        in.say("bucket.head.runs"),
                        in.say("bucket.head.k_gallon"),
                        in.say("bucket.head.k_litre"),
                        in.say("bucket.head.s"),
                        in.say("bucket.head.range"),
                        in.say("bucket.head.u"),
                        in.say("bucket.head.factor"),
                        in.say("bucket.head.degrees"),
                        in.say("bucket.head.off_single"),
                        in.say("bucket.head.off_formula")),
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
                in.say("points.leg." + flow.leg()),
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

    private String counted(Flow flow) {
        long left = flow.runs().stream().filter(run -> run.excluded().isEmpty()).count();
        return left == flow.runs().size()
                ? Long.toString(left)
                : in.say("bucket.counted", left, flow.runs().size());
    }

    private String fitWords() {
        boolean passes = record.flows().stream().anyMatch(flow -> flow.budget().isEmpty());
        return formula() + (passes ? " " + in.say("bucket.passes") : "");
    }

    private String formula() {
        return record.result()
                .fit()
                .map(fit -> in.say(
                        "bucket.formula",
                        figures.k(fit.kInfinity()),
                        fit.b() < 0 ? "+" : "-",
                        fine(Math.abs(fit.b())),
                        figures.flowUnit(),
                        figures.k(fit.uKInfinity()),
                        fine(fit.uB())))
                .orElse(in.say("bucket.no_formula"));
    }

    private String fine(double m3PerSecond) {
        FlowRate flow = new FlowRate(m3PerSecond);
        return figures.us()
                ? String.format(Locale.ROOT, "%.4f", flow.gallonsPerMinute())
                : String.format(Locale.ROOT, "%.4f", flow.litresPerMinute());
    }

    private Table checks() {
        List<List<String>> rows = record.result().checks().stream()
                .map(check -> List.of(
                        in.say(check.holds() ? "bucket.holds" : "bucket.does_not_hold"),
                        in.stored(check.name()),
                        in.stored(check.words())))
                .toList();
        return new Table(
                in.say("bucket.checks"), List.of("", in.say("bucket.rule"), in.say("bucket.found")), rows, 3, "");
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
                    in.say(from == 0 ? "bucket.every_run" : "bucket.every_run_continued"),
                    List.of(
                            in.say("bucket.head.flow", figures.flowUnit()),
                            in.say("bucket.head.run"),
                            in.say("bucket.head.read"),
                            in.say("bucket.head.pulses"),
                            in.say("bucket.head.time"),
                            in.say("bucket.head.volume"),
                            in.say("bucket.head.k", figures.kUnit()),
                            in.say("bucket.head.off_mean"),
                            in.say("bucket.head.remark")),
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
                in.stored(run.reading()),
                Long.toString(run.pulses()),
                String.format(Locale.ROOT, "%.1f", run.seconds()),
                String.format(Locale.ROOT, "%.4f", run.m3() * 1000),
                figures.k(run.k()),
                Figures.signedPercent(run.k() / flow.k().pulsesPerM3() - 1),
                run.excluded().map(why -> in.say("bucket.left_out", why)).orElse(""));
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
        List<String> head = new ArrayList<>(List.of(in.say("bucket.source"), in.say("bucket.kind")));
        flows.forEach(flow -> head.add(figures.flow(flow.m3PerSecond()) + " " + figures.flowUnit()));
        List<List<String>> rows = new ArrayList<>();
        for (String source : sources) {
            List<String> row = new ArrayList<>(List.of(in.stored(source), kind(flows, source)));
            flows.forEach(flow -> row.add(line(flow, source)
                    .map(line -> Figures.percentFine(line.relativeStandardUncertainty()))
                    .orElse("-")));
            rows.add(row);
        }
        rows.add(sum(
                in.say("bucket.combined"),
                flows,
                flow -> Figures.percentFine(flow.k().relativeStandardUncertainty())));
        rows.add(sum(
                in.say("bucket.degrees"),
                flows,
                flow -> Figures.degrees(flow.k().degreesOfFreedom())));
        rows.add(sum(
                in.say("bucket.coverage"),
                flows,
                flow -> Figures.factor(flow.k().coverageFactor())));
        rows.add(sum("U", flows, flow -> Figures.percent(flow.k().relativeExpandedUncertainty())));
        return new Table(
                first ? in.say("bucket.budgets") : "", head, rows, 2, first ? in.say("bucket.budgets.note") : "");
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
                in.say("bucket.conditions"),
                record.conditions().stream()
                        .map(condition -> Map.entry(
                                in.stored(condition.name()),
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
                in.say("bucket.equipment"),
                List.of(
                        in.say("bucket.equipment.what"),
                        in.say("bucket.equipment.which"),
                        in.say("bucket.equipment.certificate")),
                record.equipment().stream()
                        .map(item -> List.of(
                                in.stored(item.role()),
                                item.name(),
                                in.stored(item.certificate().words(record.job().performed()))))
                        .toList(),
                3,
                "");
    }

    private List<String> statements() {
        List<String> sentences = new ArrayList<>();
        sentences.add(
                record.shop().accreditation().isBlank()
                        ? in.say("bucket.not_accredited")
                        : record.shop().accreditation());
        sentences.add(in.say("bucket.only"));
        sentences.add(in.say("bucket.whole"));
        if (!record.wording().decisionRule().isBlank()) {
            sentences.add(in.say("bucket.conformity", in.typed(record.wording().decisionRule())));
        }
        sentences.add(
                record.wording().external().isBlank()
                        ? in.say("bucket.no_others")
                        : in.say("bucket.others", record.wording().external()));
        record.wording().nextCalibration().ifPresent(next -> sentences.add(in.say("bucket.next", next)));
        return sentences;
    }

    private FactList origin() {
        return new FactList(
                in.say("bucket.origin"),
                List.of(
                        Map.entry(in.say("bucket.program"), record.software()),
                        Map.entry(in.say("bucket.read_from"), record.source().name()),
                        Map.entry(in.say("bucket.hash"), record.source().sha256()),
                        Map.entry(in.say("bucket.record"), record.id())));
    }

    private List<String> typed(List<String> sentences) {
        return sentences.stream().map(in::typed).toList();
    }

    private String given(String text) {
        return text.isBlank() ? in.say("bucket.not_given") : text;
    }
}

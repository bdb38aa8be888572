package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.pumpwright.host.grade.FeatureJudgement;
import org.pumpwright.host.grade.Grade;
import org.pumpwright.host.grade.StandCheck;
import org.pumpwright.host.grade.Verdict;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Interpreter;
import org.w3c.dom.Document;
import org.xml.sax.InputSource;

class HtmlReportTest {
    private static final Words ENGLISH = new Words(Interpreter.english());
    private static final String HOSTILE = "\"><script>alert('1')</script>&amp;\u202E\u0007";

    private static String page(RunRecord run) {
        return HtmlReport.page(run, UnitSystem.US);
    }

    private static List<String> cellsOf(String html, String styleClass) {
        Matcher cell = Pattern.compile("<td class=\"[^\"]*\\b" + styleClass + "\\b[^\"]*\">([^<]*)</td>")
                .matcher(html);
        return cell.results().map(found -> found.group(1)).toList();
    }

    @Test
    void theVerdictStandsInTheHeadingWithItsOwnShapeAndColour() {
        assertThat(page(SampleRecords.pass()))
                .contains("<h1>PASS</h1>", "as good as a healthy unit", "verdict is-pass", "<circle class=\"sign\"");
        assertThat(page(SampleRecords.fail()))
                .contains("<h1>FAIL</h1>", "verdict is-fail", "points=\"31,4 69,4 96,31 96,69 69,96 31,96 4,69 4,31\"");
        assertThat(page(SampleRecords.inconclusive()))
                .contains("<h1>INCONCLUSIVE</h1>", "verdict is-inconclusive", ">?</text>");
        assertThat(page(SampleRecords.invalid()))
                .contains("<h1>INVALID</h1>", "verdict is-invalid", "<rect class=\"sign-open\"");
        assertThat(page(SampleRecords.withoutCurve())).contains("<h1>NOT TESTED</h1>", "verdict is-not-tested");
    }

    @Test
    void everyFailingFeatureIsNamedInTheTableAndInTheChart() {
        String html = page(SampleRecords.fail());
        assertThat(cellsOf(html, "fail")).containsExactly("FAIL low", "FAIL low", "FAIL low", "FAIL low", "FAIL low");
        assertThat(cellsOf(html, "near")).containsExactly("near low");
        assertThat(html).contains("1.50", "1.89 to 2.23", "-27.0 ± 1.2");
        assertThat(html).containsOnlyOnce(">30 % LOW<").contains(">50 % LOW<", ">100 % LOW<", ">30 % near limit<");
        SampleRecords.fail()
                .grade()
                .reasons()
                .forEach(reason -> assertThat(html).contains(reason));
    }

    @Test
    void causesComeInTheirOrderEachWithTheTestThatWouldTell() {
        String html = page(SampleRecords.fail());
        assertThat(html)
                .containsSubsequence(
                        "one chamber not pumping",
                        "<b>To tell: </b>run at 25 %",
                        "recirculation valve on the stand not closed",
                        "air in the suction",
                        "<b>To tell: </b>look at the sight tube; swap the suction hose.");
        assertThat(html)
                .contains("<b>NEXT</b> open the head, look for debris under a valve; photograph before cleaning.<");
    }

    @ParameterizedTest
    @ValueSource(strings = {"invalid", "stopped"})
    void thePaperOfAnInvalidRunSaysNothingOfTheUnit(String sample) {
        String html = page(PaperSamplesTest.samples().get(sample));
        assertThat(html)
                .contains(
                        "Stand ticket", ENGLISH.nothingSaid(), "the run does not count; it says nothing about the unit")
                .contains("NOT OK")
                .doesNotContain("Decision on warranty", "Likely causes", "healthy range", "class=\"charts\"");
    }

    @Test
    void thePaperOfAnInvalidRunNamesEachBrokenCheckWithItsRemedyBeforeThoseThatHold() {
        assertThat(page(SampleRecords.invalid()))
                .contains("Stand and run: 9 of 11 checks hold")
                .containsSubsequence(
                        "NOT OK: supply at rest",
                        "12.02 V, allowed are 13.39 to 14.21 V",
                        "Do: charge the battery or set the supply to 13.8 V.",
                        "NOT OK: volts at the pins",
                        "✓ zero current at rest");
    }

    @Test
    void aRunWithoutPointsSaysSo() {
        assertThat(page(SampleRecords.stoppedByBoard()))
                .contains("No point of the plan was finished, so there are no readings.", "no sample came");
    }

    @Test
    void aRunWithoutCurveStillShowsItsReadings() {
        String html = page(SampleRecords.withoutCurve());
        assertThat(html).contains("none for this unit and stand", "Plain readings");
        assertThat(html).containsSubsequence("<td>50 %</td>", "<td>2.08</td>", "<td>13.66 V</td>", "<td>2.73 A</td>");
    }

    @Test
    void aHostileSerialNumberStaysText() {
        String html = page(SampleRecords.withSerial(SampleRecords.fail(), HOSTILE));
        assertThat(html)
                .doesNotContain("<script", HOSTILE, "\u202E", "\u0007")
                .contains("&quot;&gt;&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt;&amp;amp;\uFFFD\uFFFD");
    }

    @Test
    void hostileWordsOfAJudgementStayText() {
        Grade grade = new Grade(
                Verdict.FAIL,
                List.of(HOSTILE),
                List.of(new StandCheck(HOSTILE, false, HOSTILE, HOSTILE)),
                List.of(),
                List.of(),
                HOSTILE,
                HOSTILE,
                false);
        assertThat(page(SampleRecords.withGrade(SampleRecords.fail(), grade))).doesNotContain("<script", "\u202E");
    }

    @Test
    void thePageAsksForNothingOutsideItself() {
        PaperSamplesTest.samples()
                .forEach((name, run) -> assertThat(page(run))
                        .as(name)
                        .doesNotContain("http:", "https:", "url(", "@import", "<script", "<link", "<img", "src="));
    }

    @ParameterizedTest
    @EnumSource(UnitSystem.class)
    void everyElementIsClosed(UnitSystem units) throws Exception {
        for (RunRecord run : PaperSamplesTest.samples().values()) {
            String html = HtmlReport.page(SampleRecords.withSerial(run, HOSTILE), units);
            String xml = html.replace("<!DOCTYPE html>", "");
            Document document = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(xml)));
            assertThat(document.getDocumentElement().getTagName()).isEqualTo("html");
        }
    }

    @Test
    void whatIsMissingIsNamed() {
        String html = page(SampleRecords.withSerial(SampleRecords.pass(), " "));
        assertThat(html)
                .contains("<dt>Claim number</dt><dd>not given</dd>")
                .contains("<dt>Complaint</dt><dd>not given</dd>")
                .contains("<dt>Serial</dt><dd>not given</dd>");
    }

    @Test
    void theRecordCanBeFoundAgainFromThePaper() {
        assertThat(page(SampleRecords.pass()))
                .contains("20260402-081530-7f3a", "2026-04-02 08:15 UTC-05:00", "A. Tester", "quick-12v-pump v1")
                .contains("n = 10 known-good units (simulated), k = 3.39")
                .contains("00a1b2c3d4e5f607, firmware 0.1.0, boot deadbeef")
                .contains("driver shop-7k8 at 7812 Hz, nozzle n-0.60, fluid water", "Pumpwright 0.1.0");
    }

    @Test
    void practiceIsSaidOnThePaperAndOnlyThen() {
        assertThat(page(SampleRecords.pass())).contains(ENGLISH.practice());
        assertThat(page(SampleRecords.real(SampleRecords.pass())))
                .doesNotContain(ENGLISH.practice())
                .contains("the curve is of simulated units: for practice only");
    }

    @Test
    void anAdvisoryVerdictSaysSoBesideTheVerdict() {
        assertThat(page(SampleRecords.crowded()))
                .contains("advice only: too few known-good units stand behind the curve");
        assertThat(page(SampleRecords.fail())).doesNotContain("advice only");
    }

    @Test
    void aPassDoesNotClaimToExplainTheComplaint() {
        assertThat(page(SampleRecords.pass())).contains("If the complaint remains, look at the planter");
    }

    @Test
    void metricPagesShowLitres() {
        String html = HtmlReport.page(SampleRecords.fail(), UnitSystem.METRIC);
        assertThat(html)
                .contains("flow, L/min", "<td class=\"group\">5.69</td>", "7.14 to 8.46")
                .doesNotContain("flow, gal/min");
    }

    @Test
    void theTableHoldsEveryValueOfTheCharts() {
        RunRecord run = SampleRecords.fail();
        FeaturePrinter printer = new FeaturePrinter(UnitSystem.US);
        String html = page(run);
        for (FeatureJudgement feature : run.grade().features()) {
            assertThat(html)
                    .contains(">"
                            + printer.number(
                                    feature.feature().quantity(),
                                    feature.measured().value()) + "<");
            assertThat(html).contains(">" + printer.limits(feature) + "<");
        }
    }

    @Test
    void whatTheStepsReadStandsInATable() {
        assertThat(page(SampleRecords.readings()))
                .contains("<h2>What the steps read</h2>", "expanded uncertainty, k = 2")
                .containsSubsequence(">start duty<", ">15.20<", ">± 0.58<", ">%<", "at 1 % a second")
                .containsSubsequence(">starts<", "colspan=\"3\">10 of 10<", "74 %");
        assertThat(page(SampleRecords.manual())).contains("MANUAL - NOT GRADED");
        assertThat(page(SampleRecords.pass())).doesNotContain("What the steps read");
    }

    @Test
    void theLastSectionHoldsEveryNumberWithItsSource() {
        String html = page(SampleRecords.traced());
        String numbers = html.substring(html.indexOf("The numbers behind the verdict"));
        assertThat(numbers)
                .contains("curves/test.yaml v1 line 12", "rules/pump-12v.yaml v1 line 44", "(shared)")
                .doesNotContain("<footer");
        assertThat(html).contains("run 2 for this matter", "Explains the complaint", ">Other limits<");
        assertThat(page(SampleRecords.invalid())).doesNotContain("The numbers behind the verdict");
    }
}

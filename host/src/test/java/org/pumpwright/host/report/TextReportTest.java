package org.pumpwright.host.report;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.RunRecord;
import org.pumpwright.host.text.Interpreter;

class TextReportTest {
    private static final Words ENGLISH = new Words(Interpreter.english());

    private static String page(RunRecord run) {
        return TextReport.page(run, UnitSystem.US);
    }

    private static void assertFitsAnyTerminal(String page) {
        assertThat(page.lines()).allMatch(line -> line.length() <= 80);
        assertThat(page.chars()).allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'));
    }

    @Test
    void everyPaperFits80ColumnsOfPlainAscii() {
        for (RunRecord run : PaperSamplesTest.samples().values()) {
            for (UnitSystem units : UnitSystem.values()) {
                assertFitsAnyTerminal(TextReport.page(run, units));
            }
        }
    }

    @Property(seed = "20260402", tries = 200)
    void noSerialNumberCanBreakThePageOrCommandTheTerminal(@ForAll String serial) {
        assertFitsAnyTerminal(page(SampleRecords.withSerial(SampleRecords.fail(), serial)));
    }

    @Test
    void theVerdictAndEachJudgedFeatureStandInLinesOfTheirOwn() {
        assertThat(page(SampleRecords.fail()).lines())
                .contains(
                        "|   FAIL   |  not as good as a healthy unit",
                        "flow at 30 %        0.74 gal/min  0.96 to 1.14   -30.0 +- 1.1     FAIL low",
                        "motor amps at 30 %        2.79 A  2.82 to 3.98   -18.0 +- 2.0     near low",
                        "flow at 50 %        1.50 gal/min  1.89 to 2.23   -27.0 +- 1.2     FAIL low",
                        "flow at 100 %       3.05 gal/min  3.53 to 4.19   -21.0 +- 1.3     FAIL low",
                        "NEXT: open the head, look for debris under a valve; photograph before cleaning.")
                .contains("flow at 100 %       ---#---------[======|======]-------------");
    }

    @Test
    void anInvalidRunShowsWhatToPutRightAndNothingOfTheUnit() {
        assertThat(page(SampleRecords.invalid()))
                .contains("|   INVALID   |  the run does not count; it says nothing about the unit")
                .contains("Nothing on this paper speaks for or against the unit.")
                .contains("  NOT OK  supply at rest: 12.02 V", "Do: charge the battery or set the supply to 13.8 V")
                .doesNotContain("healthy  ", "FAIL", "pass\n");
    }

    @Test
    void practiceIsSaidAtTheBeginAndAtTheEnd() {
        assertThat(page(SampleRecords.pass()).split(java.util.regex.Pattern.quote(ENGLISH.practice()), -1))
                .hasSize(3);
        assertThat(page(SampleRecords.real(SampleRecords.pass()))).doesNotContain("PRACTICE");
    }

    @Test
    void theCurveTheRuleAndTheCautionAreOnThePage() {
        assertThat(page(SampleRecords.pass()))
                .contains("n = 10 known-good units (simulated), k = 3.39")
                .contains("guard 1.645 u")
                .contains("Never feel for a leak with")
                .contains("The stand measures; a person decides on warranty.");
    }

    @Test
    void signsThatAreNotAsciiAreSpelled() {
        assertThat(AsciiText.of("20 °C ± 1 µΩ – Müller Łódź \u001b[31m"))
                .isEqualTo("20 deg C +- 1 uohm - Muller ?odz ?[31m");
    }

    @Test
    void whatTheStepsReadStandsWithItsExpandedUncertainty() {
        assertThat(page(SampleRecords.readings()))
                .contains("What the steps read; judged are only those that have a limit (+- U: k = 2)")
                .contains("    start duty                             15.20 +- 0.58 %\n")
                .contains("    starts                                 10 of 10\n")
                .contains("    drift of the flow                      -1.04 +- 0.28 %\n")
                .contains("    pressure, outlet closed                60.00 +- 0.87 psi\n")
                .contains("    flow at zero command                   0.00 +- 0.23 gal/min\n")
                .contains("    resistance                             3.12 +- 0.42 mohm\n")
                .contains("    K at 70 %, up                          3000 +- 30 pulses/gal\n")
                .contains("    winding temperature                    71 +- 12 deg C\n")
                .doesNotContain("No point of the plan was finished");
        assertThat(page(SampleRecords.pass())).doesNotContain("What the steps read");
    }

    @Test
    void aRunByHandIsNeverGraded() {
        assertThat(page(SampleRecords.manual())).contains("*** MANUAL - NOT GRADED");
        assertThat(page(SampleRecords.readings())).doesNotContain("MANUAL");
    }

    @Test
    void everyPaperSaysWhichRunItWasAndWhetherTheComplaintIsExplained() {
        assertThat(page(SampleRecords.traced()))
                .contains("run 2 for this matter, after")
                .contains("Explains the complaint \"low\": YES, the flow is below")
                .contains("Rules   pump-12v v1");
        assertThat(page(SampleRecords.pass())).contains("run 1 for this matter");
    }

    @Test
    void theNumbersAreToldOnlyWhenTheyAreAskedFor() {
        RunRecord run = SampleRecords.traced();
        assertThat(page(run)).doesNotContain("correction for", "meter K");
        String numbers = TextReport.page(run, UnitSystem.US, true);
        assertThat(numbers)
                .contains("flow at 50 % - healthy range of curve test v1")
                .contains("curves/test.yaml v1 line 12")
                .contains("meter K")
                .contains("limits 8.0 to 24.0 %: rules/pump-12v.yaml v1 line 44")
                .contains("correction for zero: 0; no pulse came at rest");
        assertFitsAnyTerminal(numbers);
    }

    @Test
    void limitsOfReadingsStandBesideTheHealthyRange() {
        assertThat(page(SampleRecords.traced()))
                .contains("start duty: 26.2 +- 0.6 %, 8.0 to 24.0 % (rules pump-12v v1): FAIL high");
    }
}

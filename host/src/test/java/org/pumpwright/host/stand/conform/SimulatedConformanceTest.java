package org.pumpwright.host.stand.conform;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.bench.TestStands;
import org.pumpwright.host.stand.simulated.SimulatedBoard;
import org.pumpwright.host.stand.simulated.SimulatedLine;

@Timeout(60)
final class SimulatedConformanceTest {
    private final SimulatedBoard board = new SimulatedBoard(
            TestStands.healthyPump(), TestStands.described("simulated").channels());
    private final SimulatedLine line = new SimulatedLine(board, 0);

    @Test
    void theSimulatedBoardHoldsEveryCheck() throws Exception {
        Conformance.Finding finding = Conformance.of(line, new SimulatedProvoker(board), check -> {});

        assertThat(finding.checks())
                .allSatisfy(check -> assertThat(check.outcome())
                        .as("%s: %s", check.name(), check.evidence())
                        .isEqualTo(Outcome.HELD));
        assertThat(finding.conforms()).isTrue();
        assertThat(finding.checks()).extracting(CheckResult::name).isEqualTo(Conformance.names());
    }

    @Test
    void whatNobodyCanProvokeIsNotPossibleAndTheVerdictSaysSo() throws Exception {
        Conformance.Finding finding = Conformance.of(line, Provoker.NONE, check -> {});

        assertThat(finding.with(Outcome.NOT_POSSIBLE))
                .extracting(CheckResult::evidence)
                .contains(
                        "nobody is here who can do it: open the emergency stop",
                        "nobody is here who can do it: hold the contactor feedback",
                        "nobody is here who can do it: set the amps reading",
                        "nobody is here who can do it: reset the board");
        assertThat(finding.broken()).isEmpty();
        assertThat(ResultText.verdict(finding)).startsWith("CONFORMS as far as it was tried. ");
    }

    @Test
    void anOpenInputMakesTheChecksThatArmNotPossible() throws Exception {
        board.setInputs(true, false);

        Conformance.Finding finding = Conformance.of(line, Provoker.NONE, check -> {});

        assertThat(finding.broken()).isEmpty();
        assertThat(finding.checks())
                .anySatisfy(check -> assertThat(check.evidence())
                        .isEqualTo("the board can't be armed: refuse (input open, detail 13)"));
    }

    @Test
    void aBoardThatStartsAnewByItselfBreaksTheCheckThatSeesIt() throws Exception {
        List<CheckResult> told = new ArrayList<>();

        Conformance.Finding finding = Conformance.of(line, Provoker.NONE, check -> {
            told.add(check);
            if (told.size() == 4) {
                board.reset(2);
            }
        });

        assertThat(finding.broken()).hasSize(1);
        assertThat(finding.broken().get(0).evidence()).isEqualTo("the board started anew by itself meanwhile");
        assertThat(finding.broken().get(0)).isEqualTo(finding.checks().get(4));
    }

    @Test
    void thePageListsEveryCheck() throws Exception {
        String page = Files.readString(Firmware.root().resolve("docs/reference/conform.md"));

        assertThat(Conformance.names()).allSatisfy(name -> assertThat(page).contains("| " + name + " |"));
    }

    @Test
    void aPersonIsAskedInPlainWordsForWhatHandsCanDo() {
        List<String> asked = new ArrayList<>();
        PersonProvoker person = new PersonProvoker(asked::add);

        person.provoke(new Provocation(Provocation.Cause.GUARD, 0));
        person.provoke(new Provocation(Provocation.Cause.EMERGENCY_STOP, 1));
        person.provoke(new Provocation(Provocation.Cause.RESTART, 0));

        assertThat(asked)
                .containsExactly(
                        "NOW, within 20 s: open the guard.",
                        "NOW, within 20 s: release the emergency stop.",
                        "NOW, within 20 s: press the board's reset button.");
        assertThat(person.can(Provocation.Cause.AMPS_CODE)).isFalse();
        assertThat(person.toy()).isFalse();
    }

    @Test
    void aTestBoardIsGivenOneWordAndOneValue() {
        assertThat(new Provocation(Provocation.Cause.GUARD, 0).command()).isEqualTo("guard 0");
        assertThat(new Provocation(Provocation.Cause.AMPS_CODE, 49_280).command())
                .isEqualTo("amps-code 49280");
        assertThat(new Provocation(Provocation.Cause.FEEDBACK, Provocation.AUTO).command())
                .isEqualTo("feedback auto");
        assertThat(new Provocation(Provocation.Cause.RESTART, 0).command()).isEqualTo("restart");
    }
}

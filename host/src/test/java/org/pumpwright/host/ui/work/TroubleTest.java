package org.pumpwright.host.ui.work;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.app.OrderException;

final class TroubleTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "say who saw it: --by NAME | say who saw it.",
                "there is no claim 'X' on record. Open claims: pumpwright claim list; a new one: pumpwright claim open"
                        + " | there is no claim 'X' on record.",
                "claim X can't be decided: there is no finding yet. First a technician: pumpwright claim finding X"
                        + " | claim X can't be decided: there is no finding yet.",
                "claim X is worth 1200.00, and above 1000.00 two persons sign (example v3). Add: --second-signer NAME"
                        + " | claim X is worth 1200.00, and above 1000.00 two persons sign (example v3).",
                "not confirmed. Rinse it twice, then: pumpwright claim note X --rinsed-by NAME. Or somebody answers for it:"
                        + " --bypass-decontamination NAME --reason TEXT"
                        + " | not confirmed. Or somebody answers for it.",
                "C6 can't be signed: it says not testable, so that nothing was attempted: --reproduced not-attempted. Runs on"
                        + " record: none."
                        + " | C6 can't be signed: it says not testable, so that nothing was attempted. Runs on record: none.",
                "--bypass-decontamination and --reason belong together: a named person answers for it | ''",
                "records can't be kept in /r: full. Choose another folder: --records PATH | records can't be kept in /r: full.",
                "a.csv: there is no run in it. 'pumpwright bucket new-sheet runs.csv' writes one to fill in."
                        + " | a.csv: there is no run in it."
            })
    void adviceForTheCommandLineIsLeftOut(String message, String left) {
        assertThat(Trouble.of(new OrderException(message)).detail()).isEqualTo(left);
    }

    @Test
    void theRemedyNamesTheScreenThatDoesWhatTheCommandDoes() {
        Trouble trouble = Trouble.of(new OrderException("there is none. Look for it: pumpwright record find --serial"));
        assertThat(trouble.remedy()).isEqualTo(Word.of("ui.trouble.at.record"));
        assertThat(Trouble.of(new OrderException("give it: --amount X")).remedy())
                .isEqualTo(Word.of("ui.trouble.order.do"));
    }

    @Test
    void whatSaysNothingOfTheCommandLineStaysAsItIs() {
        String message = "model.yaml:12: flow is -3, from 0 to 900 is allowed. Two-stage runs (a -- b) too.";
        assertThat(Trouble.of(new OrderException(message)).detail()).isEqualTo(message);
    }
}

package org.pumpwright.host.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PhrasebookTest {
    private static final Texts ENGLISH = Texts.in(Language.EN);
    private static final Texts SPANISH = Texts.in(Language.ES);

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            flow at 50 %: 1.50 gal/min, at least 1.88 needed (-27 %) | flujo a 50 %: 1.50 gal/min, se necesita al menos 1.88 (-27 %)
            volts at the pins: 11.46 V at 100 %, allowed are 12.70 to 14.90 V | voltaje en los pines: 11.46 V a 100 %, se permite de 12.70 a 14.90 V
            tied with the next; flow -9 % at 30 %, -8 % at 60 %; motor amps +1 % at 30 %: flow and current are both high | empatada con la siguiente; flujo -9 % a 30 %, -8 % a 60 %; corriente del motor +1 % a 30 %: flujo y corriente están altos los dos
            Run 5 was left out: the hose slipped off. | La corrida 5 se excluyó: the hose slipped off.
            wiggle | mover
            """)
    void aStoredSentenceIsSaidInSpanish(String english, String spanish) {
        assertThat(SPANISH.translate(english)).contains(spanish);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check the lead and the plug first; then measure the winding and tap the brush holders",
                "close the outlet for a moment with the relief proven and read the pressure:"
                        + " it stays low when the bypass opens early",
                "do not drive it again: turn it by hand with the plug off, rinse it with warm water, then run the full test",
                "look along the wire where it passes metal; never fit a larger fuse"
            })
    void aCautionIsNeverLost(String english) {
        assertThat(SPANISH.translate(english))
                .hasValueSatisfying(said -> assertThat(said)
                        .containsAnyOf(
                                "revise primero", "alivio comprobado", "no la vuelva a accionar", "nunca ponga"));
    }

    @Test
    void everyPhraseIsReadBackwardsToItself() {
        ENGLISH.keys().stream()
                .filter(key ->
                        key.startsWith("phrase.") && ENGLISH.template(key).gaps() == 0)
                .forEach(key ->
                        assertThat(SPANISH.translate(ENGLISH.say(key))).as(key).contains(SPANISH.say(key)));
    }

    @Test
    void noTwoPhrasesHaveTheSameEnglish() {
        Map<Template, String> seen = new HashMap<>();
        ENGLISH.keys().stream()
                .filter(key -> key.startsWith("phrase."))
                .forEach(key ->
                        assertThat(seen.put(ENGLISH.template(key), key)).as(key).isNull());
    }

    @Test
    void whatFitsNoTemplateStaysInEnglishAndIsCounted() {
        Interpreter in = new Interpreter(SPANISH);
        assertThat(in.stored("it rattled like a can of bolts")).isEqualTo("it rattled like a can of bolts");
        assertThat(in.stored("the spool sticks")).isEqualTo("el carrete se pega");
        assertThat(in.typed("of brass")).isEqualTo("of brass");
        assertThat(in.leftInEnglish()).containsExactly("it rattled like a can of bolts");
    }

    @Test
    void halfASentenceIsNotTranslated() {
        assertThat(SPANISH.translate("the spool sticks; it rattled")).isEmpty();
    }

    @Test
    void figuresAndUnitsStayAsTheyAre() {
        assertThat(SPANISH.translate("13.8 V")).contains("13.8 V");
        assertThat(SPANISH.translate("2026-03-02")).contains("2026-03-02");
    }

    @Test
    void inEnglishEverythingStaysAsItIs() {
        assertThat(Interpreter.english().stored("it rattled")).isEqualTo("it rattled");
        assertThat(Interpreter.english().leftInEnglish()).isEmpty();
    }
}

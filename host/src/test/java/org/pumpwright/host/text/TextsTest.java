package org.pumpwright.host.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TextsTest {
    @Test
    void everyTextHasAsManyGapsInEveryLanguage() {
        Texts english = Texts.in(Language.EN);
        Texts spanish = Texts.in(Language.ES);
        assertThat(english.keys()).isNotEmpty().isEqualTo(spanish.keys());
        assertThat(english.keys())
                .allSatisfy(
                        key -> assertThat(gaps(spanish.pattern(key))).as(key).isEqualTo(gaps(english.pattern(key))));
    }

    @Test
    void aVerdictIsSaidInItsLanguage() {
        assertThat(Texts.in(Language.EN).say("verdict.pass")).isEqualTo("PASS");
        assertThat(Texts.in(Language.ES).say("verdict.pass")).isEqualTo("APROBADO");
    }

    @Test
    void aTextThatIsNotThereIsAFaultOfTheProgram() {
        assertThatThrownBy(() -> Texts.in(Language.ES).say("no.such")).hasMessageContaining("no.such");
    }

    @Test
    void moreValuesThanGapsAreRefused() {
        assertThatThrownBy(() -> Texts.in(Language.EN).say("verdict.pass", 1)).hasMessageContaining("fewer gaps");
    }

    private static int gaps(String pattern) {
        return pattern.split("\\{\\}", -1).length - 1;
    }
}

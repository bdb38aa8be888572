package org.pumpwright.host.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TextsTest {
    @Test
    void everyTextHasAsManyGapsInEveryLanguage() {
        Texts english = Texts.in(Language.EN);
        Texts spanish = Texts.in(Language.ES);
        assertThat(english.keys()).isNotEmpty().isEqualTo(spanish.keys());
        assertThat(english.keys())
                .allSatisfy(
                        key -> assertThat(gaps(spanish.template(key))).as(key).isEqualTo(gaps(english.template(key))));
    }

    /** Which value each gap takes, in order: every value must have its gap. */
    private static List<Integer> gaps(Template template) {
        return template.order().stream().sorted().toList();
    }

    @Test
    void gapsMayStandInAnotherOrder() {
        assertThat(Template.of("{2} of {1}").filled("a", "b")).isEqualTo("b of a");
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

    @ParameterizedTest
    @EnumSource(Language.class)
    void noTextPutsIntentOrFaultOnAPerson(Language language) {
        Texts texts = Texts.in(language);
        assertThat(texts.keys())
                .allSatisfy(
                        key -> assertThat(String.join(" ", texts.template(key).pieces()))
                                .as(key)
                                .doesNotContainPattern(ForbiddenWords.ANY));
    }
}

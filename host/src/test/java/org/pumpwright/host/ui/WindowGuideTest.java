package org.pumpwright.host.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.pumpwright.host.text.Language;
import org.pumpwright.host.text.Texts;

/** The guide to the window says what the window says: both from the same file of texts. */
final class WindowGuideTest {
    private static final Path GUIDES =
            Path.of(System.getProperty("pumpwright.root")).resolve("docs/user");

    @ParameterizedTest
    @EnumSource(Moment.class)
    void theGuideExplainsEachScreenInItsOwnWords(Moment moment) throws IOException {
        says("window.md", Texts.in(Language.EN), moment);
        says("window.es.md", Texts.in(Language.ES), moment);
    }

    private static void says(String page, Texts texts, Moment moment) throws IOException {
        String key = "ui." + moment.key() + ".help";
        String section = "## %s\n".formatted(texts.say("ui.moment." + moment.key()));
        assertThat(Files.readString(GUIDES.resolve(page)))
                .contains(section)
                .contains("<!-- %s -->\n%s\n<!-- end -->".formatted(key, texts.say(key)));
    }
}

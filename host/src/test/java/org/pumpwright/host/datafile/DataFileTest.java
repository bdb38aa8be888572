package org.pumpwright.host.datafile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DataFileTest {
    private static final DataSchema SCHEMA = DataSchema.beside(DataFileTest.class, "sample.schema.json");
    private static final String GOOD = "name: pump\nseconds: 2\n";

    @Test
    void valuesOfEverySortReachTheReader() throws DataFileException {
        String text = """
                # a comment
                name: "NO"
                seconds: 1.5e1
                count: 3
                on: true
                list: [1, 2.5]
                group:
                  least_seconds: 0
                """;
        String read = DataFile.parse("sample.yaml", text, SCHEMA, file -> {
            Node group = file.at("group");
            return file.text("name") + " " + file.number("seconds") + " " + file.whole("count") + " " + file.flag("on")
                    + " " + file.at("list").items().get(1).number() + " " + group.line() + " "
                    + group.find("most_seconds").isPresent();
        });
        assertThat(read).isEqualTo("NO 15.0 3 true 2.5 7 false");
    }

    @Test
    void jsonIsReadAsWellEvenWhenTabsIndentIt() throws DataFileException {
        String json = "{\n\t\"name\": \"pump\",\n\t\"seconds\": 2\n}\n";
        double seconds = DataFile.parse("sample.json", json, SCHEMA, file -> file.number("seconds"));
        assertThat(seconds).isEqualTo(2);
    }

    @Test
    void textThatOlderYamlReadersChangeStaysAsItIsWritten() throws DataFileException {
        for (String word : new String[] {"NO", "yes", "012", "1_000", "0x1F", "1:30", "~", "2026-01-31"}) {
            String read = DataFile.parse(
                    "sample.yaml", "name: " + word + "\nseconds: 2\n", SCHEMA, file -> file.text("name"));
            assertThat(read).isEqualTo(word);
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            seconds: -2         | seconds is -2, allowed is 0.1 to 60 (s)
            seconds: 61.50      | seconds is 61.50, allowed is 0.1 to 60 (s)
            seconds: fast       | seconds is "fast" (text), allowed is 0.1 to 60 (s)
            seconds: 012        | seconds is "012" (text), allowed is 0.1 to 60 (s); write it as a plain number
            seconds: +5         | seconds is "+5" (text), allowed is 0.1 to 60 (s); write it as a plain number
            seconds: .5         | seconds is ".5" (text), allowed is 0.1 to 60 (s); write it as a plain number
            seconds: 0,5        | seconds is "0,5" (text), allowed is 0.1 to 60 (s); write it as a plain number
            seconds: "5"        | seconds is "5" (text), allowed is 0.1 to 60 (s); write it as a plain number
            seconds: .inf       | seconds is .inf, allowed is 0.1 to 60 (s)
            seconds: .nan       | seconds is .nan, allowed is 0.1 to 60 (s)
            seconds: null       | seconds is null, allowed is 0.1 to 60 (s)
            seconds:            | seconds is empty, allowed is 0.1 to 60 (s)
            seconds: [2]        | seconds is a list of 1, allowed is 0.1 to 60 (s)
            seconds: {a: 2}     | seconds is a group of keys, allowed is 0.1 to 60 (s)
            count: 2.5          | count is 2.5, allowed is whole numbers from 1 to 9
            count: 10           | count is 10, allowed is whole numbers from 1 to 9
            on: NO              | on is "NO" (text), allowed is true or false
            on: 1               | on is 1, allowed is true or false
            colour: pink        | colour is "pink", allowed is red, green or blue
            colour: 3           | colour is 3 (a number), allowed is red, green or blue; for text put it in quotes
            code: xyz           | code is "xyz", allowed is letters from a to f
            list: []            | list is a list of 0, allowed is a list of 1 to 3
            list: 5             | list is 5, allowed is a list of 1 to 3
            list: [1, 101]      | list[1] is 101, allowed is 0 to 100 (%)
            group: 5            | group is 5, allowed is a group of the keys least_seconds, most_seconds
            'group: {}'         | group.least_seconds is missing, add it: allowed is 0 to 5 (s)
            second: 2           | second is not known here; did you mean seconds?
            secnods: 2          | secnods is not known here; did you mean seconds?
            pressure: 2         | pressure is not known here; known are name, seconds, count, on, colour, code, list, group
            count: *other       | count is a reference to another value, which is not allowed here: write it out
            count: !!int '3'    | count has a type tag, which is not allowed here: leave it out
            """)
    void aWrongValueIsToldWithWhatIsAllowed(String line, String says) {
        String text = line.startsWith("seconds") ? "name: pump\n" + line : "name: pump\nseconds: 2\n" + line;
        int at = line.startsWith("seconds") ? 2 : 3;
        assertThat(refused(text)).isEqualTo("sample.yaml:" + at + ": " + says);
    }

    @Test
    void aNumberInThePlaceOfTextIsNotTakenForText() {
        assertThat(refused("name: 12\nseconds: 2\n"))
                .isEqualTo("sample.yaml:1: name is 12 (a number), allowed is text of 1 to 10 characters;"
                        + " for text put it in quotes");
    }

    @Test
    void aMissingKeyIsToldWithTheLineOfTheGroupThatLacksIt() {
        assertThat(refused("# head\n\nname: pump\ngroup:\n  most_seconds: 1\n")).isEqualTo("""
                        sample.yaml:3: seconds is missing, add it: allowed is 0.1 to 60 (s)
                        sample.yaml:4: group.least_seconds is missing, add it: allowed is 0 to 5 (s)""");
    }

    @Test
    void everyProblemIsToldInTheOrderOfTheLines() {
        DataFileException refused = exception("count: 2\nname: pump\nseconds: 100\ncount: 3\nsize: 1\n");
        assertThat(refused).hasMessage("""
                        sample.yaml:3: seconds is 100, allowed is 0.1 to 60 (s)
                        sample.yaml:4: count is given a second time, the first is in line 1
                        sample.yaml:5: size is not known here; known are name, seconds, count, on, colour, code, list, group""");
        assertThat(refused.problems().get(0))
                .isEqualTo(new Problem("sample.yaml", 3, 1, "seconds", "is 100, allowed is 0.1 to 60 (s)"));
    }

    @Test
    void longValuesAreShortened() {
        assertThat(refused("name: " + "x".repeat(200) + "\nseconds: " + "9".repeat(200) + "\n"))
                .isEqualTo(
                        "sample.yaml:1: name is \"" + "x".repeat(40) + "...\", allowed is text of 1 to 10 characters\n"
                                + "sample.yaml:2: seconds is " + "9".repeat(40) + "..., allowed is 0.1 to 60 (s)");
    }

    @Test
    void whatIsNotYamlIsToldWithItsLine() {
        assertThat(refused("name: [1\nseconds: 2\n"))
                .isEqualTo("sample.yaml:2: the file is not YAML here: expected ',' or ']', but got :"
                        + " (while parsing a flow sequence, begun in line 1)");
        assertThat(refused("name: \"pump\nseconds: 2\n"))
                .isEqualTo("sample.yaml:3: the file is not YAML here: found unexpected end of stream"
                        + " (while scanning a quoted scalar, begun in line 1)");
        assertThat(refused("name: pump: 2\n"))
                .isEqualTo("sample.yaml:1: the file is not YAML here: mapping values are not allowed here");
        assertThat(refused("name: pump\n\u0000\n"))
                .isEqualTo("sample.yaml:1: the file is not usable YAML here: special characters are not allowed");
    }

    @Test
    void aFileOfTheWrongShapeIsToldAsAWhole() {
        assertThat(refused("# nothing here\n")).isEqualTo("sample.yaml: the file is empty");
        assertThat(refused("- 1\n"))
                .isEqualTo("sample.yaml:1: the file is a list of 1, allowed is a group of the keys"
                        + " name, seconds, count, on, colour, code, list, group");
        assertThat(refused(GOOD + "---\n" + GOOD))
                .isEqualTo("sample.yaml:4: the file has a second document from here on, only one is allowed");
        assertThat(refused("name: " + "[".repeat(100_000)))
                .isEqualTo("sample.yaml: the file is not usable YAML here:"
                        + " Document nesting depth (21) exceeds the maximum allowed (20)");
    }

    @Test
    void whatTheReaderRefusesIsToldWithItsLineToo() {
        DataFileException refused = catchThrowableOfType(
                DataFileException.class,
                () -> DataFile.parse("sample.yaml", GOOD + "list: [5,\n  4]\n", SCHEMA, file -> {
                    Node item = file.at("list").items().get(1);
                    item.refuse("is " + item.found() + ", it must lie above 5 (%)");
                    throw new IllegalArgumentException("a consequence of the same mistake");
                }));
        assertThat(refused).hasMessage("sample.yaml:4: list[1] is 4, it must lie above 5 (%)");
    }

    @Test
    void aValueThatTheProgramRefusesByItselfCountsAsAProblemOfTheFile() {
        DataFileException refused = catchThrowableOfType(
                DataFileException.class,
                () -> DataFile.parse("sample.yaml", GOOD, SCHEMA, file -> {
                    throw new IllegalArgumentException("curve x has 1 points, it needs at least 2");
                }));
        assertThat(refused)
                .hasMessage("sample.yaml: the file cannot be used: curve x has 1 points, it needs at least 2");
    }

    @Test
    void filesThatCannotBeReadAreToldWithWhatToDo(@TempDir Path folder) throws IOException {
        Path absent = folder.resolve("absent.yaml");
        Path big = Files.write(folder.resolve("big.yaml"), new byte[DataFile.MOST_BYTES + 1]);
        Path latin = Files.write(folder.resolve("latin.yaml"), "name: Müller".getBytes(StandardCharsets.ISO_8859_1));
        assertThat(refused(absent)).isEqualTo(absent + ": the file is not there: check the name and the folder");
        assertThat(refused(folder)).isEqualTo(folder + ": the file is a folder, a file is needed");
        assertThat(refused(big)).isEqualTo(big + ": the file is larger than 1048576 bytes, which is the most allowed");
        assertThat(refused(latin)).isEqualTo(latin + ": the file is not UTF-8 text: save it again as UTF-8");
    }

    @Test
    void aByteOrderMarkAndLineEndsOfOtherSystemsDoNoHarm(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("windows.yaml"), "\uFEFFname: pump\r\nseconds: 2\r\n");
        double seconds = DataFile.read(file, SCHEMA, node -> node.number("seconds"));
        assertThat(seconds).isEqualTo(2);
    }

    @Test
    void aSchemaThatIsAbsentIsAMistakeOfTheProgram() {
        assertThat(catchThrowableOfType(
                        IllegalStateException.class, () -> DataSchema.beside(DataFileTest.class, "absent.schema.json")))
                .hasMessage("no resource absent.schema.json beside org.pumpwright.host.datafile.DataFileTest");
    }

    @Property(tries = 3000, seed = "20260131")
    void noTextEndsInAnythingButAListOfProblems(
            @ForAll @StringLength(max = 40) @CharRange(from = '\t', to = '~') String noise) {
        DataFileException refused = exception("name: pump\n" + noise);
        assertThat(refused.problems()).isNotEmpty();
    }

    private static String refused(String text) {
        return exception(text).getMessage();
    }

    private static DataFileException exception(String text) {
        return catchThrowableOfType(
                DataFileException.class, () -> DataFile.parse("sample.yaml", text, SCHEMA, file -> file));
    }

    private static String refused(Path file) {
        return catchThrowableOfType(DataFileException.class, () -> DataFile.read(file, SCHEMA, node -> node))
                .getMessage();
    }
}

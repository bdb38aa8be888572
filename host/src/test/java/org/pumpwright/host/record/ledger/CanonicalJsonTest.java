package org.pumpwright.host.record.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published values: RFC 8785, JSON Canonicalization Scheme, June 2020. */
class CanonicalJsonTest {
    /** RFC 8785, appendix B: number serialization samples. */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "ffefffffffffffff, -1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "41b3de4355555556, 333333333.3333334",
        "41b3de4355555557, 333333333.33333343",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2"
    })
    void numbersAreWrittenAsThePublishedSamples(String bits, String written) {
        double value = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(canonical("[" + value + "]")).isEqualTo("[" + written + "]");
        assertThat(canonical("[" + written + "]")).isEqualTo("[" + written + "]");
    }

    /** RFC 8785, appendix B: what is no number is an error. */
    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> CanonicalJson.of("[NaN]")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> CanonicalJson.of("[Infinity]")).isInstanceOf(IllegalArgumentException.class);
    }

    /** RFC 8785, 3.2.2: the example before, and in 3.2.3 after sorting. */
    @Test
    void thePublishedExampleComesOutAsPublished() {
        String before = """
                {
                  "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
                  "string": "\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\"\\/",
                  "literals": [null, true, false]
                }""";
        String after = "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}";
        assertThat(canonical(before)).isEqualTo(after);
    }

    /** RFC 8785, 3.2.3: keys are sorted by their UTF-16 code units. */
    @Test
    void keysAreSortedAsInThePublishedExample() {
        String before = """
                {
                  "\\u20ac": "Euro Sign",
                  "\\r": "Carriage Return",
                  "\\ufb33": "Hebrew Letter Dalet With Dagesh",
                  "1": "One",
                  "\\ud83d\\ude00": "Emoji: Grinning Face",
                  "\\u0080": "Control",
                  "\\u00f6": "Latin Small Letter O With Diaeresis"
                }""";
        assertThat(canonical(before))
                .isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\","
                        + "\"\u00f6\":\"Latin Small Letter O With Diaeresis\",\"\u20ac\":\"Euro Sign\","
                        + "\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    @Test
    void aKeyGivenTwiceIsRefused() {
        assertThatThrownBy(() -> CanonicalJson.of("{\"a\":1,\"a\":2}"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("cannot be brought into canonical form");
    }

    /** A header and a finder are written without the library, in the same form. */
    @Test
    void aFinderIsCanonicalAsItIsWritten() {
        String json = new ExampleLedger("stand-1", 3).next().finder().json();
        assertThat(canonical(json)).isEqualTo(json);
    }

    private static String canonical(String json) {
        return new String(CanonicalJson.of(json), StandardCharsets.UTF_8);
    }
}

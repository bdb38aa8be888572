package org.pumpwright.host.datafile;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class NearestKeyTest {
    private static final List<String> KNOWN = List.of("least_seconds", "give_up_seconds", "flow_change_percent");

    @Test
    void countsTheLettersToAddDropOrChange() {
        // kitten to sitting is the example of most textbooks, 3; the other counts follow from the definition
        assertThat(NearestKey.slips("kitten", "sitting")).isEqualTo(3);
        assertThat(NearestKey.slips("", "abc")).isEqualTo(3);
        assertThat(NearestKey.slips("abc", "")).isEqualTo(3);
        assertThat(NearestKey.slips("same", "same")).isZero();
    }

    @Property(tries = 500, seed = "7")
    void countsTheSameFromBothSides(
            @ForAll @AlphaChars @StringLength(max = 12) String a,
            @ForAll @AlphaChars @StringLength(max = 12) String b) {
        assertThat(NearestKey.slips(a, b))
                .isEqualTo(NearestKey.slips(b, a))
                .isBetween(Math.abs(a.length() - b.length()), Math.max(a.length(), b.length()));
    }

    @Test
    void namesTheKeyThatWasProbablyMeant() {
        assertThat(NearestKey.hint("least_second", KNOWN)).isEqualTo("; did you mean least_seconds?");
        assertThat(NearestKey.hint("flow_change", KNOWN)).isEqualTo("; did you mean flow_change_percent?");
        assertThat(NearestKey.hint("prot", List.of("baud", "port"))).isEqualTo("; did you mean port?");
    }

    @Test
    void namesAllKeysWhereNoneIsNear() {
        assertThat(NearestKey.hint("colour", KNOWN))
                .isEqualTo("; known are least_seconds, give_up_seconds, flow_change_percent");
    }
}

package org.pumpwright.host.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every kind of calibration. */
final class CalibrationTest {
    @Provide
    Arbitrary<Calibration> kinds() {
        return Arbitraries.of(SampleCalibrations.all());
    }

    static Stream<Calibration> each() {
        return SampleCalibrations.all().stream();
    }

    @Property(seed = "11")
    void everySoundCodeSurvivesItsPhysicalValue(
            @ForAll("kinds") Calibration kind, @ForAll @IntRange(min = 0, max = 65535) int code) {
        int sound = (int) Math.ceil(kind.sound().held(code));
        if (sound <= kind.sound().most()) {
            assertThat(Math.round(kind.code(kind.si(sound)))).isEqualTo(sound);
        }
    }

    @ParameterizedTest
    @MethodSource("each")
    void theValueGoesOneWayAllThroughTheSoundCodes(Calibration kind) {
        CodeRange sound = kind.sound();
        boolean rising = kind.si(sound.most()) > kind.si(sound.least());
        for (int code = (int) Math.ceil(sound.least()); code < sound.most() - 1; code++) {
            assertThat(kind.si(code + 1) > kind.si(code))
                    .as("%s at %d", kind.kind(), code)
                    .isEqualTo(rising);
        }
    }

    @ParameterizedTest
    @MethodSource("each")
    void theSensitivityIsTheSlopeOfTheValue(Calibration kind) {
        for (double share = 0.1; share < 0.95; share += 0.1) {
            CodeRange sound = kind.sound();
            double code = sound.least() + share * (sound.most() - sound.least());
            double slope = (kind.si(code + 0.5) - kind.si(code - 0.5));
            assertThat(kind.siPerCode(code))
                    .as("%s at %f", kind.kind(), code)
                    .isCloseTo(slope, within(1e-5 * Math.abs(slope)));
        }
    }

    @ParameterizedTest
    @MethodSource("each")
    void aSoundCodeIsNoTroubleAndOneBeyondIs(Calibration kind) {
        CodeRange sound = kind.sound();
        assertThat(kind.trouble(sound.least())).isEmpty();
        assertThat(kind.trouble(sound.most())).isEmpty();
        assertThat(kind.trouble(sound.least() - 1)).contains(kind.lowWords());
        assertThat(kind.trouble(sound.most() + 1)).contains(kind.highWords());
    }

    @Test
    void gainZeroFitAndStepAddInQuadrature() {
        UncertaintyParts parts = new UncertaintyParts(0.01, 3, 4, 64);
        StraightLine line = new StraightLine(0, 65_536, parts, CodeRange.WHOLE);
        double step = 64 / Math.sqrt(12);
        assertThat(line.standardUncertainty(0)).isCloseTo(Math.sqrt(25 + step * step), offset(1e-9));
        assertThat(line.standardUncertainty(1200)).isCloseTo(Math.sqrt(144 + 25 + step * step), offset(1e-9));
    }

    /** ISO and textbook figure for an ideal converter: 12 bits over 3.3 V have steps of 0.806 mV and 0.233 mV of noise. */
    @Test
    void theStepOfATwelveBitConverterComesToItsTextbookNoise() {
        UncertaintyParts parts = new UncertaintyParts(0, 0, 0, UncertaintyParts.stepOfBits(12));
        StraightLine volts = new StraightLine(0, 3.3, parts, CodeRange.WHOLE);
        assertThat(parts.stepCodes() * volts.siPerCode(0)).isCloseTo(0.806e-3, within(0.5e-6));
        assertThat(volts.standardUncertainty(1)).isCloseTo(0.233e-3, within(0.5e-6));
    }

    @Test
    void aPolynomialThatTurnsIsRefused() {
        UncertaintyParts none = UncertaintyParts.of(0, 0);
        assertThatThrownBy(() -> new Polynomial(List.of(0.0, 1.0, -1.0), CodeRange.WHOLE, none))
                .hasMessageContaining("the polynomial turns or stands still at 0.000 of full scale");
        assertThatThrownBy(() -> new Polynomial(List.of(0.0, 1.0, -0.6), CodeRange.WHOLE, none))
                .hasMessageContaining("turns or stands still at 0.833 of full scale");
        assertThat(new Polynomial(List.of(0.0, 1.0, -0.6), CodeRange.ofShares(0, 0.8), none).si(32_768))
                .isCloseTo(0.35, within(1e-12));
    }

    @Test
    void beyondItsFitAPolynomialStaysAtItsEnd() {
        Polynomial fitted =
                new Polynomial(List.of(0.0, 10.0, 1.0), CodeRange.ofShares(0.2, 0.8), UncertaintyParts.of(0, 0));
        assertThat(fitted.si(65_535)).isEqualTo(fitted.si(0.8 * 65_536));
        assertThat(fitted.code(100)).isCloseTo(0.8 * 65_536, within(1e-6));
        assertThat(fitted.trouble(65_535)).isPresent();
    }

    @Test
    void partsOutOfRangeAreRefused() {
        assertThatThrownBy(() -> UncertaintyParts.of(-0.1, 0))
                .hasMessage("relative uncertainty is -0.1, allowed are 0.0 to 1.0");
        assertThatThrownBy(() -> UncertaintyParts.stepOfBits(17))
                .hasMessage("converter is 17.0 bits, allowed are 1.0 to 16.0 bits");
        assertThatThrownBy(() -> new CodeRange(5, 5))
                .hasMessage("sound codes run from 5.0 to 5.0, the first must be below the second");
    }
}

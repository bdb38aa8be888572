package org.pumpwright.host.calibrate.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pumpwright.host.quantity.KFactor;
import org.pumpwright.host.quantity.Volume;

final class FieldTest {
    /**
     * A public totalizer manual works 0.4 gallons per pulse with 52 shown and 50 caught down to 0.3846, and the other way up to
     * 0.416. K is one over that.
     */
    @ParameterizedTest
    @CsvSource({"52, 50, 0.3846", "50, 52, 0.416"})
    void newKFromOldKIndicatedAndCaught(double indicated, double caught, double gallonsPerPulse) {
        KFactor old = KFactor.ofPulsesPerUsGallon(1 / 0.4);
        KFactor corrected = NewK.of(old, Volume.ofUsGallons(indicated), Volume.ofUsGallons(caught));
        assertThat(1 / corrected.pulsesPerUsGallon()).isCloseTo(gallonsPerPulse, within(5e-5));
    }

    @Test
    void aMonitorThatShowsTooMuchNeedsMorePulses() {
        KFactor old = KFactor.ofPulsesPerUsGallon(720);
        Volume shown = Volume.ofUsGallons(52);
        Volume caught = Volume.ofUsGallons(50);
        assertThat(NewK.of(old, shown, caught).pulsesPerUsGallon()).isCloseTo(748.8, within(1e-9));
        assertThat(NewK.errorShare(shown, caught)).isCloseTo(0.04, within(1e-12));
        double share = NewK.withUncertainty(old, shown, Volume.ofUsGallons(0.52), caught, Volume.ofUsGallons(0.5))
                .relative();
        assertThat(share).isCloseTo(0.01 * Math.sqrt(2.0 / 3), within(1e-12));
    }

    /** Twenty nozzle catches, mL/min, from the manual of the R package AgroTech 1.0.2; statistics worked out apart. */
    @Test
    void catchOfTwentyNozzles() {
        NozzleCatch nozzles = of(
                881, 854, 865, 876, 906.3, 874.7, 868.3, 878.7, 872.7, 901.7, 823.3, 889.7, 861.3, 900.3, 890.3, 886.7,
                916.7, 872, 912.7, 894);
        assertThat(nozzles.mean().m3() * 1e6).isCloseTo(881.27, within(0.005));
        assertThat(100 * nozzles.coefficientOfVariation()).isCloseTo(2.4923, within(5e-5));
        assertThat(nozzles.off(NozzleCatch.USUAL_LIMIT_SHARE)).singleElement().satisfies(row -> {
            assertThat(row.number()).isEqualTo(11);
            assertThat(100 * row.offShare()).isCloseTo(-6.578, within(5e-4));
        });
        assertThat(nozzles.off(0.10)).isEmpty();
    }

    @Test
    void aCatchOfNothingIsRefused() {
        assertThatThrownBy(() -> of(0, 0, 0)).hasMessage("nothing was caught at any row");
    }

    /** Courses printed by LSU AgCenter and a trade page, in feet, worked with 340 and cut or rounded: within 0.75 ft. */
    @ParameterizedTest
    @CsvSource({"10, 408", "12, 340", "18, 227", "20, 204", "30, 136", "40, 102"})
    void courseOfTheOunceMethod(double inches, double feet) {
        assertThat(OunceMethod.courseM(inches * 0.0254) / 0.3048).isCloseTo(feet, within(0.75));
    }

    /** Exact: 340.3125 square feet under 30 inches at 5 miles an hour, 440 feet a minute. */
    @Test
    void secondsForTheCourse() {
        assertThat(OunceMethod.seconds(30 * 0.0254, 5 * 0.44704))
                .isCloseTo(340.3125 * 12 / 30 * 60 / 440, within(1e-9));
        assertThat(OunceMethod.gallonsPerAcre(15)).isEqualTo(15);
        assertThat(OunceMethod.gallonsPerAcre(30, 37.12, 18.56)).isCloseTo(15, within(1e-9));
    }

    /** gpm = gpa mph inches / 5940, from the exact units, must come out of ounces and seconds as well. */
    @Property(seed = "63")
    void ouncesOfTheCourseAreTheRateThatTheUsualFormulaNeeds(
            @ForAll @DoubleRange(min = 2, max = 40) double gallonsPerAcre,
            @ForAll @DoubleRange(min = 2, max = 12) double milesPerHour,
            @ForAll @DoubleRange(min = 8, max = 60) double inches) {
        double seconds = OunceMethod.seconds(inches * 0.0254, milesPerHour * 0.44704);
        assertThat(OunceMethod.gallonsPerMinute(gallonsPerAcre, seconds))
                .isCloseTo(gallonsPerAcre * milesPerHour * inches / 5940, within(1e-9));
    }

    private static NozzleCatch of(double... millilitres) {
        List<Volume> rows = DoubleStream.of(millilitres)
                .mapToObj(each -> new Volume(each * 1e-6))
                .toList();
        return new NozzleCatch(rows);
    }
}

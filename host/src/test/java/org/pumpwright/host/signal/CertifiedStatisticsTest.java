package org.pumpwright.host.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.stat.data.LewTest;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Mean, deviation and lag-one correlation against the certified values of NIST Standard Reference Database 140 (StRD,
 * univariate), read from the test artifact of Apache Commons Math 3.6.1.
 */
final class CertifiedStatisticsTest {
    /** Digits of a certified value that are all there. */
    private static final double ALL = 15;

    /**
     * Digits that agree, at least. The sets of great mean and small scatter lose those that the binary form of their data loses:
     * 10000000.1 is held to 16 digits, of which the mean takes 8.
     */
    @ParameterizedTest
    @CsvSource({
        "Lew, 14, 14, 13",
        "Lottery, 14, 14, 13",
        "Mavro, 14, 12, 12",
        "Michelso, 14, 13, 13",
        "PiDigits, 14, 13, 13",
        "NumAcc1, 15, 15, 15",
        "NumAcc2, 14, 13, 13",
        "NumAcc3, 14, 9, 10",
        "NumAcc4, 14, 8, 9"
    })
    void theCertifiedValuesComeOut(String set, double meanDigits, double deviationDigits, double lagOneDigits)
            throws IOException {
        List<String> lines = lines(set);
        double[] values = data(lines);

        assertThat(digits(Statistics.mean(values), certified(lines, "Sample Mean|mean")))
                .isGreaterThanOrEqualTo(meanDigits);
        assertThat(digits(Statistics.deviation(values), certified(lines, "Sample Standard Dev|standardDev")))
                .isGreaterThanOrEqualTo(deviationDigits);
        assertThat(digits(Statistics.lagOne(values), certified(lines, "Sample Autocorr|autocorr")))
                .isGreaterThanOrEqualTo(lagOneDigits);
    }

    private static double digits(double computed, double certified) {
        double error = Math.abs(computed - certified) / Math.abs(certified);
        return error == 0 ? ALL : Math.min(ALL, -Math.log10(error));
    }

    /** The number behind the last colon or equals sign of the line that begins so. */
    private static double certified(List<String> lines, String begin) {
        Pattern pattern = Pattern.compile("(?:" + begin + ").*[:=]\\s*(\\S+).*");
        return lines.stream()
                .map(pattern::matcher)
                .filter(Matcher::matches)
                .mapToDouble(match -> Double.parseDouble(match.group(1)))
                .findFirst()
                .orElseThrow();
    }

    /** The numbers below the heading of the data. */
    private static double[] data(List<String> lines) {
        double[] values = lines.stream()
                .dropWhile(line -> !line.matches("Data: Y.*|# Data"))
                .filter(line -> line.matches("\\s*-?[0-9.]+\\s*"))
                .mapToDouble(Double::parseDouble)
                .toArray();
        assertThat(values).hasSize((int) certified(lines, "Number of Obs|n "));
        return values;
    }

    private static List<String> lines(String set) throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(LewTest.class.getResourceAsStream(set + ".txt"), set),
                StandardCharsets.US_ASCII))) {
            return reader.lines().toList();
        }
    }
}

package org.pumpwright.host.grade;

import org.pumpwright.host.bench.Firmware;
import org.pumpwright.host.datafile.DataFileException;
import org.pumpwright.host.rule.GradingRules;
import org.pumpwright.host.rule.RulesFile;

/** The rules that come with the program. */
final class ShippedRules {
    static final GradingRules PUMP = read("pump-12v");

    private ShippedRules() {}

    private static GradingRules read(String name) {
        try {
            return RulesFile.read(Firmware.root().resolve("fixtures/rules").resolve(name + ".yaml"));
        } catch (DataFileException e) {
            throw new AssertionError(e);
        }
    }
}

package org.pumpwright.host.record;

import static org.pumpwright.host.record.RecordLayout.number;
import static org.pumpwright.host.record.RecordLayout.object;

import org.pumpwright.host.grade.finding.Finding;
import org.pumpwright.host.grade.finding.FindingUnit;
import org.pumpwright.host.quantity.Uncertain;
import tools.jackson.databind.node.ObjectNode;

/** A finding as JSON: with a value and its unit, or with a word. Thread-safe. */
final class FindingJson {
    private FindingJson() {}

    static ObjectNode write(Finding finding) {
        ObjectNode node = object().put("step", finding.step()).put("name", finding.name());
        if (finding.outcome() instanceof Finding.Figure figure) {
            node.put("unit", figure.unit().word());
            node.set("value", number(figure.value().value()));
            node.set("standard_uncertainty", number(figure.value().standardUncertainty()));
            node.set("degrees_of_freedom", number(figure.value().degreesOfFreedom()));
        } else if (finding.outcome() instanceof Finding.Word word) {
            node.put("word", word.word());
        }
        return node.put("note", finding.note());
    }

    static Finding read(JsonPlace at) {
        return new Finding(
                at.at("step").text(),
                at.at("name").text(),
                at.at("word").node() == null
                        ? figure(at)
                        : new Finding.Word(at.at("word").text()),
                at.at("note").text());
    }

    private static Finding.Figure figure(JsonPlace at) {
        Uncertain value = new Uncertain(
                at.at("value").number(),
                at.at("standard_uncertainty").number(),
                at.at("degrees_of_freedom").number());
        return new Finding.Figure(value, unit(at.at("unit")));
    }

    static FindingUnit unit(JsonPlace at) {
        String word = at.text();
        for (FindingUnit unit : FindingUnit.values()) {
            if (unit.word().equals(word)) {
                return unit;
            }
        }
        throw new UnfitRecordException("%s is \"%s\", which is no unit known here".formatted(at.way(), word));
    }
}

package org.pumpwright.host.report.bucket;

import java.util.List;
import java.util.Locale;
import javax.xml.stream.XMLStreamException;
import org.pumpwright.host.quantity.UnitSystem;
import org.pumpwright.host.record.BucketRecord;
import org.pumpwright.host.record.BucketRecord.Condition;
import org.pumpwright.host.record.BucketRecord.Equipment;
import org.pumpwright.host.record.BucketRecord.Flow;
import org.pumpwright.host.record.BucketRecord.KValue;
import org.pumpwright.host.text.Interpreter;

/**
 * A bucket test as an open digital calibration certificate (DCC schema 3.2.1 with D-SI 2.1.0), for machines. It holds the same
 * results as the report, in SI units, and is not signed. Thread-safe.
 */
public final class DccCertificate {
    /** Version of the schema that it keeps to. */
    public static final String SCHEMA_VERSION = "3.2.1";

    private static final String PER_CUBIC_METRE = "\\metre\\tothe{-3}";
    private static final String FLOW = "\\metre\\tothe{3}\\second\\tothe{-1}";
    private static final String COVERAGE = "0.95";

    private final BucketRecord record;
    private final Interpreter in = Interpreter.english();
    private final DccWriter out;

    private DccCertificate(BucketRecord record) throws XMLStreamException {
        this.record = record;
        out = new DccWriter();
    }

    /** The certificate; write it as UTF-8. */
    public static String xml(BucketRecord record) {
        try {
            return new DccCertificate(record).write();
        } catch (XMLStreamException e) {
            throw new IllegalStateException("a text in memory takes everything", e);
        }
    }

    private String write() throws XMLStreamException {
        out.root("digitalCalibrationCertificate", SCHEMA_VERSION, () -> {
            out.group("administrativeData", this::administrative);
            out.group("measurementResults", () -> out.group("measurementResult", this::measured));
        });
        return out.finish();
    }

    private void administrative() throws XMLStreamException {
        out.group("dccSoftware", this::software);
        out.group("coreData", this::coreData);
        out.group("items", this::items);
        out.group("calibrationLaboratory", () -> out.group("contact", this::shop));
        out.group(
                "respPersons",
                () -> out.group("respPerson", () -> {
                    out.group(
                            "person", () -> out.words("name", named(record.job().signer())));
                    out.value("mainSigner", "true");
                }));
        out.group("customer", () -> {
            out.words("name", named(record.job().customer()));
            out.group("location", () -> out.words("further", "see the order"));
        });
        out.group("statements", this::statements);
    }

    private void software() throws XMLStreamException {
        String software = record.software();
        int space = software.indexOf(' ');
        out.group("software", () -> {
            out.words("name", space > 0 ? software.substring(0, space) : software);
            out.value("release", space > 0 ? software.substring(space + 1) : software);
        });
    }

    private void coreData() throws XMLStreamException {
        out.value("countryCodeISO3166_1", record.shop().countryCode());
        out.value("usedLangCodeISO639_1", "en");
        out.value("mandatoryLangCodeISO639_1", "en");
        out.value("uniqueIdentifier", record.id());
        if (record.job().received().isPresent()) {
            out.value("receiptDate", record.job().received().get().toString());
        }
        out.value("beginPerformanceDate", record.job().performed().toString());
        out.value("endPerformanceDate", record.job().performed().toString());
        out.value("performanceLocation", record.job().place());
        out.value("issueDate", record.issuedAt().toLocalDate().toString());
        if (record.wording().amends().isPresent()) {
            out.group("reportAmendedSubstituted", () -> {
                out.value("typeOfChange", "substituted");
                out.value(
                        "replacedUniqueIdentifier",
                        record.wording().amends().orElseThrow().record());
            });
        }
    }

    private void items() throws XMLStreamException {
        out.group("item", () -> {
            out.words("name", "pulse flow meter");
            out.words("description", "Condition: " + record.meter().condition());
            out.value("model", named(record.meter().model()));
            out.group(
                    "identifications",
                    () -> out.group("identification", () -> {
                        out.value("issuer", "other");
                        out.value("value", named(record.meter().serial()));
                        out.words("name", "serial number or mark");
                    }));
        });
    }

    private void shop() throws XMLStreamException {
        out.words("name", record.shop().name());
        out.group("location", () -> {
            out.value("countryCode", record.shop().countryCode());
            out.words("further", named(String.join(", ", record.shop().address())));
        });
    }

    private void statements() throws XMLStreamException {
        if (record.practice()) {
            statement("Practice", in.say("bucket.practice"));
        }
        statement(
                "Accreditation",
                record.shop().accreditation().isBlank()
                        ? "not accredited"
                        : record.shop().accreditation());
        statement("Scope", "The results apply to the item named here only.");
        if (!record.wording().decisionRule().isBlank()) {
            statement("Conformity and decision rule", record.wording().decisionRule());
        }
        for (String deviation : record.wording().deviations()) {
            statement("Deviation, addition or exclusion", deviation);
        }
        for (String opinion : record.wording().opinions()) {
            statement("Opinion, not part of the results", opinion);
        }
    }

    private void statement(String name, String words) throws XMLStreamException {
        out.group("statement", () -> {
            out.words("name", name);
            out.words("declaration", words);
        });
    }

    private void measured() throws XMLStreamException {
        out.words("name", "K-factor of the meter");
        out.group(
                "usedMethods",
                () -> out.group("usedMethod", () -> {
                    out.words("name", record.method().id());
                    out.words(
                            "description",
                            record.method().words() + "; fluid: "
                                    + record.method().fluid());
                }));
        if (!record.equipment().isEmpty()) {
            out.group("measuringEquipments", () -> {
                for (Equipment item : record.equipment()) {
                    equipment(item);
                }
            });
        }
        out.group("influenceConditions", this::conditions);
        out.group("results", this::results);
    }

    private void equipment(Equipment item) throws XMLStreamException {
        out.group("measuringEquipment", () -> {
            out.words("name", item.role() + ": " + item.name());
            out.words("description", item.certificate().words(record.job().performed()));
            out.group(
                    "identifications",
                    () -> out.group("identification", () -> {
                        out.value("issuer", "other");
                        out.value("value", named(item.certificate().number()));
                        out.words("name", "calibration certificate");
                    }));
        });
    }

    private void conditions() throws XMLStreamException {
        out.group("influenceCondition", () -> {
            out.words("name", "state of the meter");
            out.value("status", record.meter().state().equals("as left") ? "afterAdjustment" : "beforeAdjustment");
            out.group("data", () -> out.words("text", record.meter().state()));
        });
        for (Condition condition : record.conditions()) {
            out.group("influenceCondition", () -> {
                out.words("name", condition.name());
                out.group(
                        "data",
                        () -> out.words(
                                "text", String.format(Locale.ROOT, "%.6g %s", condition.value(), condition.unit())));
            });
        }
    }

    private void results() throws XMLStreamException {
        BucketRecord.Result result = record.result();
        out.group("result", () -> {
            out.words("name", "K-factor, pulses per cubic metre");
            out.words(
                    "description",
                    "%s pulses per US gallon, %s pulses per litre; %s, from %s"
                            .formatted(
                                    Figures.perUsGallon(result.single()),
                                    Figures.perLitre(result.single()),
                                    result.singleWords(),
                                    new Figures(UnitSystem.US, in).range(result.lowest(), result.highest())));
            out.group("data", () -> quantityOfK(result.single()));
        });
        out.group("result", () -> {
            out.words("name", "K-factor at each flow");
            out.group("data", () -> table(record.flows()));
        });
    }

    private void table(List<Flow> flows) throws XMLStreamException {
        out.group("list", () -> {
            for (Flow flow : flows) {
                out.group("list", () -> {
                    out.words("name", "going " + flow.leg());
                    out.group("quantity", () -> {
                        out.words("name", "flow");
                        out.siGroup("real", () -> {
                            out.siValue("value", Double.toString(flow.m3PerSecond()));
                            out.siValue("unit", FLOW);
                        });
                    });
                    quantityOfK(flow.k());
                });
            }
        });
    }

    private void quantityOfK(KValue k) throws XMLStreamException {
        out.group("quantity", () -> {
            out.words("name", "K-factor");
            out.siGroup("real", () -> {
                out.siValue("value", Double.toString(k.pulsesPerM3()));
                out.siValue("unit", PER_CUBIC_METRE);
                out.siGroup("expandedUnc", () -> {
                    out.siValue("uncertainty", Double.toString(k.relativeExpandedUncertainty() * k.pulsesPerM3()));
                    out.siValue("coverageFactor", String.format(Locale.ROOT, "%.2f", k.coverageFactor()));
                    out.siValue("coverageProbability", COVERAGE);
                });
            });
        });
    }

    private static String named(String text) {
        return text.isBlank() ? "not given" : text;
    }
}

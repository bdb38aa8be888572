package org.pumpwright.host.app.paper;

import java.util.Locale;

/** The kinds of papers that are made of what is on record. Thread-safe. */
public enum PaperKind {
    /** Everything about one run, for whoever tests; of an invalid run a ticket for the stand. */
    TECHNICIAN,
    /** What the owner of the unit takes home. */
    CUSTOMER,
    /** The evidence of a claim, for the parts desk. */
    CLERK,
    /** The unit and the measurement without anybody's name, for whoever made it. */
    FACTORY,
    /** Two runs of one unit, before and after a repair. */
    RETEST,
    /** The label tied to the unit; of a bucket test the label of the meter. */
    LABEL,
    /** The calibration report of a bucket test. */
    BUCKET;

    /** As it is typed and stands in names of files. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}

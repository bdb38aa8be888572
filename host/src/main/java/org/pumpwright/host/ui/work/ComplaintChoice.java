package org.pumpwright.host.ui.work;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.pumpwright.host.app.Complaint;

/**
 * What the customer says, as it is chosen: one of the complaints, or that nothing was said. Thread-safe.
 *
 * @param complaint empty when nothing was said
 */
public record ComplaintChoice(Optional<Complaint> complaint) {
    private static final String KEY = "ui.complaint.";

    /** Every choice, the one without a complaint last. */
    public static List<ComplaintChoice> all() {
        return Stream.concat(
                        Arrays.stream(Complaint.values()).map(each -> new ComplaintChoice(Optional.of(each))),
                        Stream.of(new ComplaintChoice(Optional.empty())))
                .toList();
    }

    /** As it is said. */
    public Word word() {
        return Word.of(complaint
                .map(each -> KEY + each.name().toLowerCase(Locale.ROOT))
                .orElse(KEY + "none"));
    }
}

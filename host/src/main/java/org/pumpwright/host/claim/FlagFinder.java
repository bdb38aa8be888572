package org.pumpwright.host.claim;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import org.pumpwright.host.claim.Flag.Code;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.Entry;

/** Finds what a person should look at. It compares what is on record, and accuses nobody. Thread-safe. */
public final class FlagFinder {
    private final ClaimFile file;
    private final Surroundings around;
    private final List<Flag> flags = new ArrayList<>();

    private FlagFinder(ClaimFile file, Surroundings around) {
        this.file = file;
        this.around = around;
    }

    /**
     * What else is on record.
     *
     * @param own entries of this claim, by chain and number
     * @param sameSerial what was on record with the same serial number before: intakes of other claims, and runs
     * @param otherRuns other runs, among which the same samples are looked for
     * @param labels names and versions of the curves and rules of grading that hold now
     * @param dateCode how the model's date code is written
     */
    public record Surroundings(
            List<Entry> own,
            List<Earlier> sameSerial,
            List<Traced> otherRuns,
            Set<String> labels,
            Optional<DateCodesFile.DateCode> dateCode) {
        public Surroundings {
            own = List.copyOf(own);
            sameSerial = List.copyOf(sameSerial);
            otherRuns = List.copyOf(otherRuns);
            labels = Set.copyOf(labels);
        }
    }

    /**
     * Something earlier with the same serial number.
     *
     * @param what the claim's number, or the run's entry
     * @param model as which it is on record
     * @param at when
     * @param use how much it had been used then, where it was an intake
     */
    public record Earlier(String what, String model, OffsetDateTime at, Optional<TimeInUse> use) {}

    /**
     * A run and its samples.
     *
     * @param entry id of its entry
     * @param trace digest of the samples
     */
    public record Traced(String entry, Digest trace) {}

    /** Everything found, in the order of {@link Flag.Code}. */
    public static List<Flag> of(ClaimFile file, Surroundings around) {
        FlagFinder finder = new FlagFinder(file, around);
        finder.serial();
        finder.traces();
        finder.clock();
        finder.limits();
        finder.photos();
        finder.dateCode();
        finder.use("hours", TimeInUse::hours);
        finder.use("acres", TimeInUse::acres);
        return List.copyOf(finder.flags);
    }

    private void serial() {
        UnitAsReceived unit = file.intake().unit();
        if (!unit.hasSerial()) {
            return;
        }
        around.sameSerial().stream()
                .map(each -> "%s, %s".formatted(each.what(), each.at().toLocalDate()))
                .reduce((one, other) -> one + "; " + other)
                .ifPresent(earlier -> add(Code.SERIAL_SEEN, unit.serial(), earlier));
        Set<String> models = new TreeSet<>();
        around.sameSerial().forEach(each -> models.add(each.model()));
        file.runs().stream().filter(run -> unit.isSerial(run.serial())).forEach(run -> models.add(run.model()));
        models.remove(unit.model());
        models.remove("");
        if (!models.isEmpty() && !unit.model().isEmpty()) {
            add(Code.SERIAL_TWO_MODELS, unit.serial(), String.join(", ", models));
        }
    }

    /** A run that was graded again has the samples of the first by right. */
    private void traces() {
        Map<Digest, String> seen = new HashMap<>();
        around.otherRuns().forEach(run -> seen.put(run.trace(), run.entry()));
        for (ClaimRun run : file.runs()) {
            if (run.regradedFrom().isEmpty() && run.trace().isPresent()) {
                String other = seen.putIfAbsent(run.trace().get(), run.entry());
                if (other != null && !other.equals(run.entry())) {
                    add(Code.SAME_TRACE, other, run.entry());
                }
            }
        }
    }

    private void clock() {
        Map<String, Entry> latest = new HashMap<>();
        for (Entry entry : around.own()) {
            Entry before = latest.get(entry.chain());
            if (before != null && entry.at().toInstant().isBefore(before.at().toInstant())) {
                add(Code.CLOCK_MOVED, entry.id(), entry.at());
            } else {
                latest.put(entry.chain(), entry);
            }
        }
    }

    private void limits() {
        for (ClaimRun run : RunsOfAClaim.of(file).telling()) {
            run.curve().ifPresent(label -> limits(run, label));
            run.rules().ifPresent(label -> limits(run, label));
        }
    }

    private void limits(ClaimRun run, String label) {
        if (around.labels().contains(label)) {
            return;
        }
        String name = label.replaceFirst(" v\\d+$", "");
        String now = around.labels().stream()
                .filter(other -> other.replaceFirst(" v\\d+$", "").equals(name))
                .sorted()
                .reduce((one, other) -> one + ", " + other)
                .orElse("-");
        add(Code.LIMITS_CHANGED, run.run(), label, now);
    }

    private void photos() {
        LocalDate received = file.intake().received().toLocalDate();
        file.photos().stream()
                .filter(photo -> photo.takenAt().toLocalDate().isBefore(received))
                .forEach(photo ->
                        add(Code.PHOTO_OLDER, photo.fileName(), photo.takenAt().toLocalDate(), received));
    }

    private void dateCode() {
        UnitAsReceived unit = file.intake().unit();
        if (unit.dateCode().isEmpty() || around.dateCode().isEmpty()) {
            return;
        }
        String code = unit.dateCode().get();
        DateCodesFile.DateCode format = around.dateCode().get();
        format.of(unit.serial())
                .filter(inSerial -> !inSerial.equals(code))
                .ifPresent(inSerial -> add(Code.DATE_CODE, code, unit.serial(), inSerial));
        Optional<LocalDate> made = format.begins(code);
        if (made.isEmpty()) {
            add(Code.DATE_CODE, code, format.format().name().toLowerCase(Locale.ROOT), "-");
            return;
        }
        LocalDate known = file.intake()
                .use()
                .sold()
                .map(Sourced::value)
                .orElse(file.intake().received().toLocalDate());
        if (made.get().isAfter(known)) {
            add(Code.DATE_CODE, code, known, made.get());
        }
    }

    private void use(String what, Function<TimeInUse, Optional<Sourced<Double>>> count) {
        Optional<Double> now = count.apply(file.intake().use()).map(Sourced::value);
        for (Earlier earlier : around.sameSerial()) {
            Optional<Double> then = earlier.use().flatMap(count).map(Sourced::value);
            if (now.isPresent() && then.isPresent() && now.get() < then.get()) {
                add(
                        Code.HOURS_LOWER,
                        "%s %s".formatted(now.get(), what),
                        "%s %s".formatted(then.get(), what),
                        earlier.at().toLocalDate());
            }
        }
    }

    private void add(Code code, Object... values) {
        flags.add(new Flag(
                code, java.util.Arrays.stream(values).map(Object::toString).toList()));
    }
}

package org.pumpwright.host.record.ledger;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The ends of chains as they were at some moment, to be written down where nobody who can change the store can change them
 * too. Only with them can it be seen that the end of a chain was cut off. Thread-safe.
 *
 * @param lines of any number of chains and moments
 */
public record Heads(List<Line> lines) {
    private static final int FIELDS = 3;

    /** Nothing was written down. */
    public static final Heads NONE = new Heads(List.of());

    public Heads {
        lines = List.copyOf(lines);
    }

    /**
     * The end of one chain.
     *
     * @param chain whose
     * @param head number and digest of its last entry then
     */
    public record Line(String chain, RecordStore.Head head) {}

    /** The ends of all chains of a store as they are now. */
    public static Heads of(RecordStore store) throws StoreException {
        List<Line> lines = new ArrayList<>();
        for (String chain : store.chains()) {
            store.head(chain).ifPresent(head -> lines.add(new Line(chain, head)));
        }
        return new Heads(lines);
    }

    /**
     * Reads what {@link #text} wrote. Several such texts one after the other are fine; lines that begin with # are not read.
     *
     * @throws IOException when it can't be read or a line is no such line
     */
    public static Heads read(Path file) throws IOException {
        List<Line> lines = new ArrayList<>();
        int number = 0;
        for (String line : Files.readAllLines(file, StandardCharsets.UTF_8)) {
            number++;
            if (!line.isBlank() && !line.startsWith("#")) {
                try {
                    lines.add(line(line));
                } catch (IllegalArgumentException e) {
                    throw new IOException("%s, line %d: %s".formatted(file, number, e.getMessage()), e);
                }
            }
        }
        return new Heads(lines);
    }

    private static Line line(String text) {
        String[] fields = text.split(" ", FIELDS);
        if (fields.length != FIELDS) {
            throw new IllegalArgumentException("'%s' is not: number, digest, chain".formatted(text));
        }
        return new Line(fields[2], new RecordStore.Head(Long.parseLong(fields[0]), new Digest(fields[1])));
    }

    /** One line for each chain: the number of its last entry, the digest of that entry, the name of the chain. */
    public String text() {
        return lines.stream()
                .map(line -> "%d %s %s\n"
                        .formatted(line.head().number(), line.head().digest().hex(), line.chain()))
                .collect(Collectors.joining());
    }

    /** What was written down of one chain. */
    List<RecordStore.Head> of(String chain) {
        return lines.stream()
                .filter(line -> line.chain().equals(chain))
                .map(Line::head)
                .toList();
    }

    /** The chains that something was written down of. */
    List<String> chains() {
        return lines.stream().map(Line::chain).distinct().toList();
    }
}

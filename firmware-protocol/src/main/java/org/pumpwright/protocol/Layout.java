package org.pumpwright.protocol;

import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * How the payload of one type is laid out. Thread-safe.
 *
 * @param shortest the fewest bytes the payload can have
 * @param longest the most; a payload can only have another length when it ends in bytes of any number
 * @param kind the record that stands for it
 * @param reader takes the fields in the order of the wire
 * @param writer puts them in the same order
 */
record Layout<M extends Message>(
        int shortest,
        int longest,
        Class<M> kind,
        Function<PayloadReader, M> reader,
        BiConsumer<M, PayloadWriter> writer) {
    /** The layout of a type that always has the same length. */
    static <M extends Message> Layout<M> fixed(
            int length, Class<M> kind, Function<PayloadReader, M> reader, BiConsumer<M, PayloadWriter> writer) {
        return new Layout<>(length, length, kind, reader, writer);
    }

    /** The layout of a type that carries nothing. */
    static <M extends Message> Layout<M> empty(Class<M> kind, Supplier<M> maker) {
        return fixed(0, kind, in -> maker.get(), (message, out) -> {});
    }

    M read(PayloadReader in) {
        return reader.apply(in);
    }

    void write(Message message, PayloadWriter out) {
        writer.accept(kind.cast(message), out);
    }
}

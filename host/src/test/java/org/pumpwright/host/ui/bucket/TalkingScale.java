package org.pumpwright.host.ui.bucket;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.function.Supplier;
import org.pumpwright.host.stand.wire.Line;

/** A scale that says the same again and again; a tenth of a second passes for each. */
final class TalkingScale implements Line {
    private final Supplier<String> says;
    private long nanos;

    TalkingScale(Supplier<String> says) {
        this.says = says;
    }

    @Override
    public String name() {
        return "scale line";
    }

    @Override
    public void send(byte[] bytes) {
        throw new UnsupportedOperationException("nothing is sent to a scale");
    }

    @Override
    public int receive(byte[] into, Duration atMost) {
        if (atMost.isZero()) {
            return 0;
        }
        nanos += Duration.ofMillis(100).toNanos();
        byte[] said = (says.get() + "\r\n").getBytes(StandardCharsets.US_ASCII);
        System.arraycopy(said, 0, into, 0, said.length);
        return said.length;
    }

    @Override
    public long nanoTime() {
        return nanos;
    }

    @Override
    public void close() {
        // Nothing is held.
    }
}

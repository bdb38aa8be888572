package org.pumpwright.protocol;

/**
 * What a board found when it tried itself: the answer to {@link SelfTest}. Thread-safe.
 *
 * @param tried the bits of each {@link SelfTestPart} that was tried
 * @param failed the bits of those that failed, a part of the ones tried
 */
public record SelfTestResult(int tried, int failed) implements BoardMessage {
    /** @throws FieldOutOfRange when another bit is set, or one failed that was not tried */
    public SelfTestResult {
        FieldOutOfRange.check(1, "self-test tried", tried, 0, SelfTestPart.ALL_BITS, "bits");
        FieldOutOfRange.check(2, "self-test failed", failed, 0, SelfTestPart.ALL_BITS, "bits");
        if ((failed & ~tried) != 0) {
            throw FieldOutOfRange.of(2, "self-test failed", failed, 0, tried, "bits, those tried only");
        }
    }

    @Override
    public MessageType type() {
        return MessageType.SELF_TEST_RESULT;
    }

    static SelfTestResult read(PayloadReader in) {
        return new SelfTestResult(in.u16(), in.u16());
    }

    void write(PayloadWriter out) {
        out.u16(tried);
        out.u16(failed);
    }
}

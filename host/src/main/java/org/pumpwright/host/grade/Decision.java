package org.pumpwright.host.grade;

/**
 * A person's decision that a unit is tested once more than is allowed without one. Thread-safe.
 *
 * @param by who decided
 * @param reason why
 */
public record Decision(String by, String reason) {
    public Decision {
        if (by.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("a decision has a name and a reason");
        }
    }

    /** In one sentence, without a full stop. */
    public String words() {
        return "decided by " + by + ": " + reason;
    }
}

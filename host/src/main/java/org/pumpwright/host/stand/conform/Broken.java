package org.pumpwright.host.stand.conform;

/** The board did not do what the check demands; the message is the evidence. */
final class Broken extends Exception {
    private static final long serialVersionUID = 1L;

    private final String evidence;

    Broken(String evidence) {
        super(evidence);
        this.evidence = evidence;
    }

    String evidence() {
        return evidence;
    }
}

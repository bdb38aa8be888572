package org.pumpwright.host.claim;

/** Which moves are allowed. Thread-safe. */
public final class CustodyRules {
    private CustodyRules() {}

    /**
     * Checks a move.
     *
     * @throws RefusedException when it is not allowed, naming what is
     */
    public static void check(ClaimFile file, CustodyState to) throws RefusedException {
        CustodyState from = file.whereabouts().to();
        if (!from.next().contains(to)) {
            throw new RefusedException("claim %s is %s and can't go to %s. From there is allowed: %s."
                    .formatted(file.number(), from.word(), to.word(), from.nextWords()));
        }
        if (to.needsDecision() && file.decisions().isEmpty()) {
            throw new RefusedException(
                    "claim %s can't go to %s: nothing is decided yet. First: pumpwright claim decide %s"
                            .formatted(file.number(), to.word(), file.number()));
        }
        if (to == CustodyState.TESTED && file.runs().isEmpty()) {
            throw new RefusedException(
                    "claim %s can't be tested: no run with this claim number is on record. First: pumpwright accept --claim %s"
                            .formatted(file.number(), file.number()));
        }
    }
}

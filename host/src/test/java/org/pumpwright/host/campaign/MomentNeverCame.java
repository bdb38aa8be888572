package org.pumpwright.host.campaign;

/** Something else ended the run before the fault could be struck, on a machine that is too busy for real time. */
final class MomentNeverCame extends Exception {
    private static final long serialVersionUID = 1L;

    MomentNeverCame(Moment moment, String said) {
        super("the moment never came: " + moment + "; the host said: " + said);
    }
}

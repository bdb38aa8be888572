package org.pumpwright.host.record;

/** Inside this package: a record and its JSON do not fit each other; the message says where and how. Thread-safe. */
final class UnfitRecordException extends RuntimeException {
    private static final long serialVersionUID = 1;

    UnfitRecordException(String message) {
        super(message);
    }
}

package org.pumpwright.protocol;

/**
 * What one frame says. Every message is an immutable record whose constructor refuses a field outside its range with
 * {@link FieldOutOfRange}, so a message that exists can be sent. Thread-safe.
 */
public sealed interface Message permits HostMessage, BoardMessage {
    /** The type that stands in the frame's header. */
    MessageType type();
}

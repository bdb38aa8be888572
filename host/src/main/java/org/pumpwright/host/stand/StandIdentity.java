package org.pumpwright.host.stand;

/**
 * Who answered the hello. Thread-safe.
 *
 * @param boardKind kind of board
 * @param uniqueId hexadecimal; all zeros where the board has none
 * @param firmware version, e.g. {@code 0.1.0}
 * @param bootId differs after every reset
 * @param resetCause why the board last started, in words
 * @param pumpPwmHz PWM frequency of drive 0, Hz
 * @param linkTimeOutMillis how long the board waits for a sign of life before it makes safe
 */
public record StandIdentity(
        String boardKind,
        String uniqueId,
        String firmware,
        long bootId,
        String resetCause,
        double pumpPwmHz,
        int linkTimeOutMillis) {}

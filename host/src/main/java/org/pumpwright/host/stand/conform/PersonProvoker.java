package org.pumpwright.host.stand.conform;

import java.time.Duration;
import java.util.function.Consumer;

/** Asks a person at the stand. Sensors and the contactor are not for hands. Confined to the run thread. */
public final class PersonProvoker implements Provoker {
    private static final Duration PATIENCE = Duration.ofSeconds(20);

    private final Consumer<String> ask;

    /** @param ask shows a request to the person */
    public PersonProvoker(Consumer<String> ask) {
        this.ask = ask;
    }

    @Override
    public boolean can(Provocation.Cause cause) {
        return switch (cause) {
            case EMERGENCY_STOP, GUARD, LEVEL, OVERRIDE, RESTART -> true;
            case FEEDBACK, VOLTS_CODE, AMPS_CODE, PRESSURE_CODE, CONVERTER, METER_HZ -> false;
        };
    }

    @Override
    public void provoke(Provocation what) {
        ask.accept("NOW, within %d s: %s".formatted(PATIENCE.toSeconds(), request(what)));
    }

    @Override
    public Duration patience() {
        return PATIENCE;
    }

    private static String request(Provocation what) {
        boolean close = what.value() == 1;
        return switch (what.cause()) {
            case EMERGENCY_STOP -> close ? "release the emergency stop." : "press the emergency stop.";
            case GUARD -> close ? "close the guard." : "open the guard.";
            case LEVEL -> close ? "close the level contact." : "open the level contact.";
            case OVERRIDE -> close ? "return the override." : "put the override in.";
            case RESTART -> "press the board's reset button.";
            case FEEDBACK, VOLTS_CODE, AMPS_CODE, PRESSURE_CODE, CONVERTER, METER_HZ ->
                throw new UnsupportedOperationException("not for hands: " + what.command());
        };
    }
}

package org.pumpwright.host.plant;

/**
 * The suction hose while it still holds air: the pump draws the air out as far as its valves do not let it back. Air
 * leaks past a worn valve about as many times faster than water as it is thinner, so that a pump which still moves water
 * well may not prime. Confined to the plant's thread.
 */
final class SuctionHose {

    /** Viscosity of water over that of air at 20 °C, 1.00 over 0.0181 mPa·s (handbook). */
    private static final double THINNER = 55;

    private final LineParameters lines;
    private double airLeftM3;

    SuctionHose(LineParameters lines) {
        this.lines = lines;
        airLeftM3 = lines.drySuctionM3();
    }

    boolean dry() {
        return airLeftM3 > 0;
    }

    /** Lets the pump turn on air. The water stands higher the more air is gone, and pulls back harder. */
    void draw(HeadParameters head, double speedRadPerSecond, double seconds) {
        double raised = 1 - airLeftM3 / lines.drySuctionM3();
        double swept = (head.displacementM3PerRadian() - head.backflowM3PerRadian())
                * head.liveShare()
                * (1 - head.airFraction())
                * speedRadPerSecond;
        double back = THINNER * head.slipM3PerSecondPascal() * lines.liftPascal() * raised;
        airLeftM3 = Math.max(0, Math.min(lines.drySuctionM3(), airLeftM3 - seconds * (swept - back)));
    }
}

package org.pumpwright.host.plant.driver;

/**
 * Module and load at one output duty, settled over the period of the switch. Thread-safe.
 *
 * @param duty output duty, after the current limit
 * @param loadAmps mean current in the load
 * @param supplyAmps mean current in the supply lead, the module's own included
 * @param supplyVolts mean voltage at the module's supply pins
 * @param lowestSupplyVolts the same while the switch conducts
 * @param outputVolts voltage across the load while the switch conducts; 0 when it never does
 * @param dropVolts what the switch takes while it conducts
 * @param groundLiftVolts how far the module's ground is above the battery's while the switch conducts
 * @param peakVolts highest voltage across the switch
 * @param onAmps mean current while the switch conducts
 */
public record DriverState(
        double duty,
        double loadAmps,
        double supplyAmps,
        double supplyVolts,
        double lowestSupplyVolts,
        double outputVolts,
        double dropVolts,
        double groundLiftVolts,
        double peakVolts,
        double onAmps) {

    private static final int HALVINGS = 60;

    /** The module at a command, running for long, its current limit cold. */
    public static DriverState of(DriverParameters p, DriverStand stand, double command) {
        return at(p, stand, p.logic().duty(command), p.limitAmps(), stand.load().ohms());
    }

    /** At a wanted duty, with the limit and the load's resistance of the moment. */
    static DriverState at(DriverParameters p, DriverStand stand, double wanted, double limitAmps, double loadOhms) {
        OutputStage out = p.output();
        double onOhms = loadOhms + out.onOhms() + out.groundOhms() + stand.feedOhms();
        SwitchedCurrent.Circuit circuit = new SwitchedCurrent.Circuit(
                stand.openCircuitVolts(),
                onOhms,
                out.backVolts(),
                loadOhms,
                stand.load().henry());
        double duty = out.open() ? 0 : out.stuckOn() ? 1 : limited(circuit, p, wanted, limitAmps);
        SwitchedCurrent current = SwitchedCurrent.of(circuit, duty, p.logic().frequencyHertz());
        return state(p, stand, duty, current, loadOhms);
    }

    /** A shorted switch obeys no limit; a working one shortens its duty until the mean current fits. */
    private static double limited(
            SwitchedCurrent.Circuit circuit, DriverParameters p, double wanted, double limitAmps) {
        double hertz = p.logic().frequencyHertz();
        if (SwitchedCurrent.of(circuit, wanted, hertz).meanAmps() <= limitAmps) {
            return wanted;
        }
        double low = 0;
        double high = wanted;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (SwitchedCurrent.of(circuit, middle, hertz).meanAmps() <= limitAmps) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static DriverState state(
            DriverParameters p, DriverStand stand, double duty, SwitchedCurrent current, double loadOhms) {
        OutputStage out = p.output();
        double leak = out.open() ? 0 : (1 - duty) * Math.min(out.leakageAmps(), stand.openCircuitVolts() / loadOhms);
        double on = duty > 0 ? current.suppliedAmps() / duty : 0;
        double supply = current.suppliedAmps() + leak + p.quiescentAmps();
        double lowest = stand.openCircuitVolts() - (on + p.quiescentAmps()) * stand.feedOhms();
        double drop = on * out.onOhms();
        double lift = on * out.groundOhms();
        boolean spikes = !out.freewheel() && stand.load().henry() > 0 && duty > 0 && duty < 1;
        return new DriverState(
                duty,
                current.meanAmps() + leak,
                supply,
                stand.openCircuitVolts() - supply * stand.feedOhms(),
                lowest,
                duty > 0 ? lowest - drop - lift : 0,
                drop,
                lift,
                stand.openCircuitVolts() + (spikes ? out.clampVolts() : out.freewheelVolts()),
                on);
    }
}

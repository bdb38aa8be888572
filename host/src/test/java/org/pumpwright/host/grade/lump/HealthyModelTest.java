package org.pumpwright.host.grade.lump;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.pumpwright.host.plant.HeadParameters;
import org.pumpwright.host.plant.MotorParameters;
import org.pumpwright.host.plant.PumpParameters;

final class HealthyModelTest {
    @Test
    void theModelIsThatOfTheSimulatedUnit() {
        HealthyModel model = HealthyModel.twelveVoltPump();
        PumpParameters pump = PumpParameters.healthy();
        MotorParameters motor = pump.motor();
        HeadParameters head = pump.head();
        double k = motor.torqueConstant();
        double stroke = head.displacementM3PerRadian();

        assertClose(model.flowPerVolt(), SweptPump.truth(pump, Lump.FLOW_PER_VOLT));
        assertClose(model.noLoadAmps(), SweptPump.truth(pump, Lump.NO_LOAD_AMPS));
        assertClose(model.ampsPerPressure(), SweptPump.truth(pump, Lump.AMPS_PER_PRESSURE));
        assertClose(model.ohms(), SweptPump.truth(pump, Lump.OHMS));
        assertClose(model.slip(), SweptPump.truth(pump, Lump.SLIP));
        assertClose(model.viscousAmpsPerVolt().value(), motor.viscousNewtonMetreSecond() / (k * k));
        assertClose(model.brushVolts().value(), motor.brushVolts());
        assertClose(
                model.compliance().value(),
                head.complianceLossPerPascal() * stroke / (stroke - head.backflowM3PerRadian()));
    }

    private static void assertClose(double model, double plant) {
        assertThat(model).isCloseTo(plant, withinPercentage(0.1));
    }
}

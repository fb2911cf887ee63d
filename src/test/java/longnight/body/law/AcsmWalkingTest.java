package longnight.body.law;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("ACSM's Guidelines, 10th edition")
class AcsmWalkingTest extends WalkingHeatContract {

    AcsmWalkingTest() {
        super(new AcsmWalking(), 50.0 / 60, 100.0 / 60, 0);
    }

    @Test
    @DisplayName("80 kg at 1.34 m/s: 309 W; 20 steps a minute of 0.20 m: 17.1 mL/kg/min, 4.9 exercise units")
    void values() {
        assertEquals(309, new AcsmWalking().rate(80, 0, 1.34, 0, 1), 0.5);
        double uptake = AcsmWalking.stepping(80, 20, 0.20) / Met.oxygen(1, 80);
        assertEquals(17.1, uptake, 0.05);
        assertEquals(4.9, uptake / 3.5, 0.05);
    }
}

package longnight.outdoors;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import longnight.air.SaturationVapour;
import org.junit.jupiter.api.Test;

class ChamberTest {

    private static final List<Chamber.Setting> TWO =
            List.of(new Chamber.Setting(0, 28, Double.NaN, 0.1, 0.4), new Chamber.Setting(3600, 10, 8, 0, 0.5));

    @Test
    void steps_hold_until_the_next() {
        Chamber chamber = Chamber.stepwise(TWO, 7200, 101325, null);
        OutdoorState out = new OutdoorState();
        chamber.at(3599, out);
        assertThat(out.airCelsius).isEqualTo(28);
        assertThat(out.radiantCelsius).isEqualTo(28);
        assertThat(out.windAt).containsOnly(0.1);
        assertThat(out.vapourPressure).isEqualTo(0.4 * SaturationVapour.overWater(301.15));
        chamber.at(3600, out);
        assertThat(out.airCelsius).isEqualTo(10);
        assertThat(out.radiantCelsius).isEqualTo(8);
        assertThat(out.windAt).containsOnly(0.05);
        chamber.at(9000, out);
        assertThat(out.airCelsius).isEqualTo(10);
        assertThat(chamber.turbulence()).isEqualTo(1.3);
        assertThat(chamber.ground()).isNull();
        assertThat(chamber.firstTime()).isZero();
        assertThat(chamber.lastTime()).isEqualTo(7200);
    }

    @Test
    void ramps_run_straight() {
        Chamber chamber = Chamber.ramped(TWO, 7200, 101325, null);
        OutdoorState out = new OutdoorState();
        chamber.at(1800, out);
        assertThat(out.airCelsius).isCloseTo(19, within(1e-12));
        assertThat(out.radiantCelsius).isCloseTo(18, within(1e-12));
        chamber.at(5000, out);
        assertThat(out.airCelsius).isEqualTo(10);
    }

    @Test
    void refuses_what_lies_outside() {
        assertThatIllegalArgumentException().isThrownBy(() -> new Chamber.Setting(0, Double.NaN, 20, 0.1, 0.5));
        assertThatIllegalArgumentException().isThrownBy(() -> new Chamber.Setting(0, 20, 20, 0.1, 50));
        assertThatIllegalArgumentException().isThrownBy(() -> Chamber.stepwise(List.of(), 10, 101325, null));
        assertThatIllegalArgumentException().isThrownBy(() -> Chamber.stepwise(TWO, 10, 101325, null));
        assertThatIllegalArgumentException().isThrownBy(() -> Chamber.stepwise(TWO, 7200, 1013, null));
    }
}

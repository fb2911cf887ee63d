package longnight.night;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import longnight.body.Body;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.clothing.law.WholeBody;
import longnight.figure.Posture;
import longnight.figure.Zone;
import longnight.night.Exposure.Series;
import longnight.outdoors.Chamber;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class ExposureTest {
    private static final Person MAN = new Person("man", Person.Sex.MALE, 23, 1.77, 78, 15, 45, 1);

    private static Exposure run(Outfit outfit, double air, int minutes, double warm) {
        Chamber chamber = Chamber.stepwise(
                List.of(
                        new Chamber.Setting(0, 28, Double.NaN, 0.15, 0.5),
                        new Chamber.Setting(3600, air, Double.NaN, 0.15, 0.5)),
                3600 + 60.0 * minutes,
                101325,
                null);
        return Exposure.run(
                new Exposure.Setup(MAN, outfit, false, Posture.CHAIR, Double.NaN, Double.NaN, warm, 0, chamber),
                ModelChoice.nominal());
    }

    private static Outfit even(double clo) {
        Map<Zone, Double> on = new EnumMap<>(Zone.class);
        for (Zone zone : Zone.values()) {
            on.put(zone, clo * WholeBody.CLO);
        }
        return new Outfit.Given(on, 0.38);
    }

    @Test
    @DisplayName(
            "minute by minute and the engine's own course end at the same temperatures, sweat of a warm hour included")
    void sameAsTheEngine() {
        for (double clo : new double[] {0.05, 1.5}) {
            Exposure read = run(even(clo), 10, 120, 0);
            Network net = read.network();
            Runner runner =
                    new Runner(net.body, net.plan, phase -> net, ModelChoice.nominal(), NumericalSettings.dry());
            runner.run();
            double[] end = read.end();
            for (int i = 0; i < Body.NODES; i++) {
                // steps of 60 s and exchange every 5 min against 30 s and 1 min
                assertThat(end[i]).as(clo + " clo, node " + i).isCloseTo(runner.state[i], within(0.02));
            }
        }
    }

    @Test
    @DisplayName("where the cloth of shorts lies moves the core by about 0.1 K in 4 h")
    void placeOfShorts() {
        // the same clo of the whole body, all of it on pelvis and thighs: area shares of the 65-node table (Tanabe et
        // al. 2002)
        double r = 0.08 * WholeBody.CLO / ((0.221 + 0.418) / 1.869);
        Outfit shorts = new Outfit.Given(Map.of(Zone.PELVIS, r, Zone.THIGH, r), 0.38);
        double[] spread = run(even(0.08), 10, 240, 0).of(Series.RECTAL);
        double[] placed = run(shorts, 10, 240, 0).of(Series.RECTAL);
        double change = placed[300] - placed[60] - (spread[300] - spread[60]);
        assertThat(change).isCloseTo(-0.1, within(0.05));
    }

    @Test
    @DisplayName(
            "who arrives warm starts warm in core and blood and nowhere else, and has lost it after an hour or two")
    void warmStart() {
        Exposure level = run(even(0.5), 20, 120, 0);
        Exposure warm = run(even(0.5), 20, 120, 0.3);
        assertThat(warm.of(Series.CORE)[0] - level.of(Series.CORE)[0]).isCloseTo(0.3, within(1e-9));
        assertThat(warm.of(Series.MEAN_SKIN)[0]).isEqualTo(level.of(Series.MEAN_SKIN)[0]);
        assertThat(warm.of(Series.CORE)[180] - level.of(Series.CORE)[180]).isBetween(-0.05, 0.15);
    }

    @Test
    @DisplayName("the heat that leaves is the heat made less what the body gains")
    void books() {
        Exposure x = run(even(0.3), 12, 60, 0);
        double made = 0;
        double lost = 0;
        for (int m = 1; m <= x.minutes(); m++) {
            made += 60 * x.of(Series.HEAT_MADE)[m];
            lost += 60 * x.of(Series.HEAT_LOST)[m];
            assertThat(x.of(Series.DRY_LOST)[m]).isLessThan(x.of(Series.HEAT_LOST)[m] + 30);
        }
        double gained = x.of(Series.STORED)[x.minutes()] - x.of(Series.STORED)[0];
        assertThat(made - lost).isCloseTo(gained, within(1e-6 * made));
    }
}

package longnight.outdoors.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.stream.Stream;
import longnight.air.SaturationVapour;
import longnight.oracle.EnvironmentOracles;
import longnight.oracle.EnvironmentOracles.Row;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Clear and cloudy skies as collected by Flerchinger et al. 2009. */
class Flerchinger2009SkyEmissivityTest {

    static Stream<Row> emissivities() {
        return EnvironmentOracles.of(
                "clear_sky_emissivity_Prata",
                "clear_sky_emissivity_DilleyOBrien",
                "clear_sky_emissivity_BerdahlMartin",
                "clear_sky_emissivity_Idso81",
                "clear_sky_emissivity_Konzelmann94",
                "clear_sky_emissivity_Brunt",
                "clear_sky_emissivity_Brutsaert",
                "clear_sky_emissivity_Swinbank");
    }

    @ParameterizedTest
    @MethodSource("emissivities")
    void emissivities_as_given(Row row) {
        row.check(emissivity(row));
    }

    static Stream<Row> temperatures() {
        return EnvironmentOracles.of(
                "sky_temperature_Prata", "sky_temperature_DilleyOBrien", "sky_temperature_BerdahlMartin");
    }

    @ParameterizedTest
    @MethodSource("temperatures")
    void temperatures_as_given(Row row) {
        row.check(row.kelvin() * Math.pow(emissivity(row), 0.25) - 273.15);
    }

    static Stream<Row> ranges() {
        return EnvironmentOracles.of("sky_temperature_range_clear");
    }

    @ParameterizedTest
    @MethodSource("ranges")
    void ranges_as_given(Row row) {
        String[] range = row.expected().split(" ");
        double sky = row.kelvin() * Math.pow(ClearSky.PRATA.emissivity(row.kelvin(), vapour(row)), 0.25) - 273.15;
        assertThat(sky).isBetween(Double.parseDouble(range[0]), Double.parseDouble(range[1]));
    }

    private static double vapour(Row row) {
        return row.in("rh_water") * SaturationVapour.overWater(row.kelvin());
    }

    private static double emissivity(Row row) {
        String model = row.quantity().substring(row.quantity().lastIndexOf('_') + 1);
        ClearSky sky = Map.of(
                        "Prata", ClearSky.PRATA,
                        "DilleyOBrien", ClearSky.DILLEY_OBRIEN,
                        "BerdahlMartin", ClearSky.BERDAHL_MARTIN,
                        "Idso81", ClearSky.IDSO,
                        "Konzelmann94", ClearSky.KONZELMANN,
                        "Brunt", ClearSky.BRUNT,
                        "Brutsaert", ClearSky.BRUTSAERT,
                        "Swinbank", ClearSky.SWINBANK)
                .get(model);
        return sky.emissivity(row.kelvin(), vapour(row));
    }

    /** Sky at -10 degC and 80 % with cover 0, 0.5 and 1, printed to 0.1 K: two models 9 K apart at half cover. */
    @Test
    void cloud_warms_the_sky() {
        double t = 263.15;
        double clear = ClearSky.PRATA.emissivity(t, 0.8 * SaturationVapour.overWater(t));
        double[] unsworth = {-32.2, -22.1, -13.2};
        double[] konzelmann = {-32.2, -30.9, -13.2};
        for (int i = 0; i < 3; i++) {
            assertThat(sky(t, CloudySky.UNSWORTH_MONTEITH, clear, i * 0.5)).isCloseTo(unsworth[i], within(0.1));
            assertThat(sky(t, CloudySky.KONZELMANN, clear, i * 0.5)).isCloseTo(konzelmann[i], within(0.1));
        }
        for (CloudySky model : CloudySky.values()) {
            assertThat(model.emissivity(clear, 0)).isEqualTo(clear);
            for (double c = 0; c < 0.95; c += 0.1) {
                assertThat(model.emissivity(clear, c + 0.1))
                        .isGreaterThanOrEqualTo(model.emissivity(clear, c))
                        .isLessThan(1);
            }
        }
    }

    private static double sky(double kelvin, CloudySky model, double clear, double cloud) {
        return kelvin * Math.pow(model.emissivity(clear, cloud), 0.25) - 273.15;
    }

    /** Constants and vapour-free forms have no check value: they must at least lie where night skies lie at -10 degC. */
    @Test
    void every_model_gives_a_possible_sky() {
        double e = 0.8 * SaturationVapour.overWater(263.15);
        for (ClearSky model : ClearSky.values()) {
            assertThat(model.emissivity(263.15, e)).as(model.name()).isBetween(0.6, 0.8);
        }
    }
}

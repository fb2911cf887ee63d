package longnight.outdoors;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.Supplier;
import longnight.air.Humidity;
import longnight.air.SaturationVapour;
import longnight.air.StandardAtmosphere;
import longnight.assumption.ParameterSet;
import longnight.figure.BodySegment;
import longnight.figure.Posture;
import longnight.outdoors.law.Radiation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SiteClimateTest {

    private static final ParameterSet<OutdoorParameter> NOMINAL = ParameterSet.nominal(OutdoorParameter.class);
    private static final Ground SNOW = SiteWords.floor("snow").orElseThrow().ground();
    private static final Ground ROCK = SiteWords.floor("rock").orElseThrow().ground();

    private static Site site(double gap, double horizon, double offset, double shelter, Ground ground) {
        return new Site(0, 0.005, shelter, gap, horizon, offset, ground);
    }

    private static Site open() {
        return site(1, 0, 0, 1, SNOW);
    }

    private static Weather steady(double air, double humidity, double wind, double cloud) {
        return weather(air, humidity, wind, cloud, Double.NaN, Double.NaN);
    }

    private static Weather weather(double air, double humidity, double wind, double cloud, double p, double longwave) {
        return new Weather(
                new double[] {0, 36000}, two(air), two(humidity), two(wind), two(cloud), two(0), two(p), two(longwave));
    }

    private static double[] two(double value) {
        return new double[] {value, value};
    }

    private static OutdoorState at(Site site, Weather weather, Posture posture, double time) {
        OutdoorState out = new OutdoorState();
        new SiteClimate(site, weather, posture, NOMINAL).at(time, out);
        return out;
    }

    private static OutdoorState at(Site site, Weather weather) {
        return at(site, weather, Posture.SITTING_KNEES_UP, 18000);
    }

    /** Clear calm -10 degC with 80 %: sky -32.2 (computed elsewhere, Prata 1996), surface held 10 K below the air. */
    @Test
    void a_clear_calm_night() {
        OutdoorState out = at(open(), steady(-10, 0.8, 0.5, 0));
        assertThat(out.skyCelsius).isCloseTo(-32.2, within(0.1));
        assertThat(out.groundSurfaceCelsius).isCloseTo(-20, within(1e-6));
        double expected = Radiation.meanRadiant(0.5, out.skyCelsius + 273.15, 0.5, 253.15, 0, 263.15) - 273.15;
        assertThat(out.radiantCelsius).isCloseTo(expected, within(1e-9)).isBetween(-27.0, -25.0);
        assertThat(out.groundDeepCelsius).isEqualTo(-10);
        assertThat(out.pressure).isEqualTo(101325);
    }

    @ParameterizedTest
    @EnumSource(Posture.class)
    void less_cloud_and_more_sky_never_warm(Posture posture) {
        double before = Double.POSITIVE_INFINITY;
        for (double cloud = 1; cloud >= 0; cloud -= 0.125) {
            double now = at(open(), steady(-10, 0.8, 2, cloud), posture, 0).radiantCelsius;
            assertThat(now).isLessThan(before);
            before = now;
        }
        for (Ground ground : new Ground[] {SNOW, ROCK}) {
            double last = Double.POSITIVE_INFINITY;
            for (double gap = 0; gap <= 1; gap += 0.125) {
                double now = at(site(gap, 0.1, 0, 1, ground), steady(-15, 0.7, 1, 0.2), posture, 0).radiantCelsius;
                assertThat(now).isLessThanOrEqualTo(last);
                last = now;
            }
            double horizonLast = Double.NEGATIVE_INFINITY;
            for (double horizon = 0; horizon <= 1.5; horizon += 0.125) {
                double now = at(site(1, horizon, 0, 1, ground), steady(-15, 0.7, 1, 0.2), posture, 0).radiantCelsius;
                assertThat(now).isGreaterThanOrEqualTo(horizonLast);
                horizonLast = now;
            }
        }
    }

    /** No sky, no depression: everything seen has air temperature. */
    @Test
    void under_a_full_canopy_radiation_is_air() {
        OutdoorState out = at(site(0, 0, 0, 1, SNOW), steady(-12, 0.8, 0, 0));
        assertThat(out.groundSurfaceCelsius).isCloseTo(-12, within(1e-6));
        assertThat(out.radiantCelsius).isCloseTo(-12, within(1e-6));
    }

    @Test
    void ground_kind_scales_the_depression_and_snow_never_thaws() {
        OutdoorState rock = at(site(1, 0, 0, 1, ROCK), steady(-10, 0.8, 0.5, 0));
        assertThat(rock.groundSurfaceCelsius).isCloseTo(-11.5, within(1e-6));
        OutdoorState thaw = at(open(), steady(6, 0.9, 8, 1));
        assertThat(thaw.groundSurfaceCelsius).isLessThanOrEqualTo(0);
        assertThat(thaw.groundDeepCelsius).isZero();
    }

    @Test
    void colder_air_means_colder_surroundings() {
        double before = Double.POSITIVE_INFINITY;
        for (double air = 10; air > -40; air -= 2.5) {
            OutdoorState out = at(open(), steady(air, 0.8, 1.5, 0.3));
            assertThat(out.radiantCelsius).isLessThan(before).isLessThan(out.airCelsius);
            before = out.radiantCelsius;
        }
    }

    /** Wind at the body: logarithmic law at the segment's height, times shelter, never below the drift of calm nights. */
    @Test
    void wind_at_the_body() {
        OutdoorState out = at(open(), steady(-10, 0.8, 10, 1), Posture.STANDING, 0);
        assertThat(out.windAt[BodySegment.PELVIS.ordinal()]).isCloseTo(6.97, within(0.005));
        assertThat(out.wind10).isEqualTo(10);
        OutdoorState lee = at(site(1, 0, 0, 0.2, SNOW), steady(-10, 0.8, 10, 1), Posture.STANDING, 0);
        for (BodySegment segment : BodySegment.values()) {
            assertThat(lee.windAt[segment.ordinal()]).isCloseTo(0.2 * out.windAt[segment.ordinal()], within(1e-12));
        }
        assertThat(at(open(), steady(-10, 0.8, 0, 1)).windAt).containsOnly(0.15);
    }

    /** Reported humidity of 95 % at -30 degC cannot be: the vapour is that of saturation over ice. */
    @Test
    void vapour_is_capped_at_the_site() {
        OutdoorState cold = at(open(), steady(-30, 0.95, 1, 0));
        assertThat(cold.vapourPressure).isEqualTo(SaturationVapour.overIce(-30 + 273.15));
        OutdoorState pool = at(site(1, 0, -8, 1, SNOW), steady(-2, 0.9, 1, 0));
        assertThat(pool.airCelsius).isEqualTo(-10);
        assertThat(pool.vapourPressure).isEqualTo(SaturationVapour.overIce(263.15));
        OutdoorState slope = at(site(1, 0, 3, 1, SNOW), steady(-5, 0.8, 1, 0));
        assertThat(slope.vapourPressure).isEqualTo(Humidity.vapourPressure(268.15, 0.8));
    }

    @Test
    void vapour_never_exceeds_saturation_between_records() {
        Weather cooling = new Weather(
                new double[] {0, 3600},
                new double[] {-5, -12},
                two(1),
                two(1),
                two(0),
                two(0),
                two(Double.NaN),
                two(Double.NaN));
        for (double t = 0; t <= 3600; t += 100) {
            OutdoorState out = at(open(), cooling, Posture.STANDING, t);
            assertThat(out.vapourPressure).isLessThanOrEqualTo(SaturationVapour.overIce(out.airCelsius + 273.15));
        }
    }

    @Test
    void pressure_of_another_altitude_is_carried_to_the_site() {
        Site high = new Site(2000, 0.005, 1, 1, 0, 0, SNOW);
        double standard = StandardAtmosphere.pressure(2000);
        assertThat(at(high, steady(-10, 0.8, 1, 0)).pressure).isEqualTo(standard);
        assertThat(at(high, weather(-10, 0.8, 1, 0, 100e3, Double.NaN)).pressure)
                .isCloseTo(standard, within(1e-6));
        assertThat(at(high, weather(-10, 0.8, 1, 0, 78e3, Double.NaN)).pressure).isEqualTo(78e3);
    }

    @Test
    void recorded_sky_radiation_wins() {
        double longwave = Radiation.black(240);
        OutdoorState out = at(open(), weather(-10, 0.8, 1, 1, Double.NaN, longwave));
        assertThat(out.skyCelsius).isCloseTo(240 - 273.15, within(1e-9));
        ParameterSet<OutdoorParameter> warm = NOMINAL.with(OutdoorParameter.SKY_TEMPERATURE_OFFSET, 5);
        OutdoorState shifted = new OutdoorState();
        new SiteClimate(open(), weather(-10, 0.8, 1, 1, Double.NaN, longwave), Posture.STANDING, warm).at(0, shifted);
        assertThat(shifted.skyCelsius).isCloseTo(245 - 273.15, within(1e-9));
    }

    @Test
    void runs_straight_between_records_and_steps_in_rain() {
        Weather weather = new Weather(
                new double[] {-3600, 0, 3600},
                new double[] {0, -4, -6},
                new double[] {0.5, 0.5, 0.5},
                new double[] {2, 4, 6},
                new double[] {0, 1, 0},
                new double[] {0, 2, 1},
                new double[] {Double.NaN, Double.NaN, Double.NaN},
                new double[] {Double.NaN, Double.NaN, Double.NaN});
        SiteClimate climate = new SiteClimate(open(), weather, Posture.STANDING, NOMINAL);
        OutdoorState out = new OutdoorState();
        climate.at(1800, out);
        assertThat(out.airCelsius).isEqualTo(-5);
        assertThat(out.wind10).isEqualTo(5);
        assertThat(out.cloud).isEqualTo(0.5);
        assertThat(out.precipitation).isEqualTo(2);
        climate.at(-1, out);
        assertThat(out.precipitation).isZero();
        climate.at(3600, out);
        assertThat(out.precipitation).isEqualTo(1);
        assertThat(out.airCelsius).isEqualTo(-6);
        climate.at(1e6, out);
        assertThat(out.airCelsius).isEqualTo(-6);
        assertThat(climate.firstTime()).isEqualTo(-3600);
        assertThat(climate.lastTime()).isEqualTo(3600);
        assertThat(climate.turbulence()).isEqualTo(1.3);
    }

    /** The vapour is held at saturation over ice, yet the observer's humidity over water tells of drops. */
    @Test
    void fog_below_freezing_is_a_cloud_of_drops() {
        OutdoorState fog = at(open(), steady(-8, 0.99, 5, 1));
        assertThat(fog.vapourPressure).isCloseTo(SaturationVapour.overIce(265.15), within(1e-9));
        assertThat(fog.supercooledCloud).isEqualTo(1);
        assertThat(at(open(), steady(-8, 0.92, 5, 1)).supercooledCloud).isZero();
        assertThat(at(site(1, 0, 2, 1, SNOW), steady(-8, 0.99, 5, 1)).supercooledCloud)
                .isZero();
        assertThat(at(site(1, 0, -2, 1, SNOW), steady(-8, 0.92, 5, 1)).supercooledCloud)
                .isZero();
    }

    @Test
    void lee_wakes_are_never_calm() {
        ParameterSet<OutdoorParameter> low = NOMINAL.with(OutdoorParameter.TURBULENCE, 1);
        ParameterSet<OutdoorParameter> high = NOMINAL.with(OutdoorParameter.TURBULENCE, 1.6);
        Weather weather = steady(-5, 0.8, 1, 0);
        Site lee = site(1, 0, 0, 0.3, SNOW);
        assertThat(new SiteClimate(open(), weather, Posture.STANDING, low).turbulence())
                .isEqualTo(1);
        assertThat(new SiteClimate(lee, weather, Posture.STANDING, low).turbulence())
                .isEqualTo(1.3);
        assertThat(new SiteClimate(lee, weather, Posture.STANDING, high).turbulence())
                .isEqualTo(1.6);
    }

    @Test
    void snow_conductivity_is_a_named_doubt() {
        ParameterSet<OutdoorParameter> low = NOMINAL.with(OutdoorParameter.SNOW_CONDUCTIVITY_FACTOR, 0.6);
        Weather weather = steady(-5, 0.8, 1, 0);
        assertThat(new SiteClimate(open(), weather, Posture.STANDING, low)
                        .ground()
                        .conductivity())
                .isCloseTo(0.6 * SNOW.conductivity(), within(1e-12));
        Site rock = site(1, 0, 0, 1, ROCK);
        assertThat(new SiteClimate(rock, weather, Posture.STANDING, low).ground())
                .isEqualTo(ROCK);
    }

    @Test
    void the_weather_is_a_copy() {
        double[] air = two(-5);
        Weather weather =
                new Weather(new double[] {0, 1}, air, two(1), two(1), two(1), two(0), two(Double.NaN), two(Double.NaN));
        Arrays.fill(air, 20);
        assertThat(weather.airCelsius()).containsExactly(-5, -5);
    }

    @Test
    void records_refuse_what_lies_outside() {
        refused("relativeHumidity", () -> steady(-5, 1.4, 1, 0));
        refused("wind10", () -> steady(-5, 0.4, -3, 0));
        refused("airCelsius", () -> steady(Double.NaN, 0.4, 3, 0));
        refused("cloud", () -> steady(-5, 0.4, 3, Double.POSITIVE_INFINITY));
        refused("pressure", () -> weather(-5, 0.4, 3, 0, 1013.25, Double.NaN));
        refused("skyLongwave", () -> weather(-5, 0.4, 3, 0, Double.NaN, 9999));
        refused("not after", () -> new Weather(two(0), two(0), two(0), two(0), two(0), two(0), two(9e4), two(300)));
        refused(
                "time has 2",
                () -> new Weather(
                        new double[] {0, 1}, new double[3], two(0), two(0), two(0), two(0), two(9e4), two(300)));
        refused("at least 2", () -> {
            double[] one = {0};
            return new Weather(one, one, one, one, one, one, one, one);
        });
        refused("altitude", () -> new Site(9000, 0.03, 1, 1, 0, 0, SNOW));
        refused("shelter", () -> site(1, 0, 0, 0, SNOW));
        refused("skyGap", () -> site(Double.NaN, 0, 0, 1, SNOW));
        refused("groundCelsius", () -> new Site(0, 0.03, 1, 1, 0, 0, SNOW, 3));
        refused("conductivity", () -> new Ground("foam", 0.001, 1e6, 1, false));
        refused("name", () -> new Ground(" ", 0.1, 1e6, 1, false));
    }

    private static void refused(String what, Supplier<?> made) {
        assertThatIllegalArgumentException().isThrownBy(made::get).withMessageContaining(what);
    }

    @Test
    void every_parameter_has_a_range_around_its_nominal_and_a_source() {
        for (OutdoorParameter parameter : OutdoorParameter.values()) {
            assertThat(parameter.nominal()).isBetween(parameter.low(), parameter.high());
            assertThat(parameter.low()).isLessThan(parameter.high());
            assertThat(parameter.source()).isNotBlank();
        }
    }

    @Test
    void every_word_makes_a_site() {
        for (SiteWords.Exposure e : SiteWords.exposures()) {
            assertThat(SiteWords.exposure(e.word())).contains(e);
            for (SiteWords.Floor floor : SiteWords.floors()) {
                Site site = new Site(
                        1500,
                        e.roughnessLength(),
                        e.shelter(),
                        e.skyGap(),
                        e.horizonAngle(),
                        e.temperatureOffset(),
                        floor.ground());
                OutdoorState out = at(site, steady(-8, 0.8, 4, 0.2));
                assertThat(out.radiantCelsius).isLessThanOrEqualTo(out.airCelsius + 1e-9);
                assertThat(e.source()).isNotBlank();
                assertThat(floor.source()).isNotBlank();
            }
        }
        SiteWords.Exposure open = SiteWords.exposure("open").orElseThrow();
        assertThat(open.roughnessOn(SNOW)).isEqualTo(0.005);
        assertThat(open.roughnessOn(ROCK)).isEqualTo(0.03);
        assertThat(SiteWords.exposure("scattered-trees").orElseThrow().roughnessOn(SNOW))
                .isEqualTo(0.25);
        assertThat(SiteWords.exposure("moon")).isEmpty();
        assertThat(SiteWords.floor("lava")).isEmpty();
    }
}

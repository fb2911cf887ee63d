package longnight.night;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import longnight.body.Person;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.figure.Posture;
import longnight.outdoors.Ground;
import longnight.outdoors.OutdoorState;
import longnight.outdoors.Surroundings;
import org.hipparchus.random.SobolSequenceGenerator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What must hold over all nights, people and kits inside the model's range, judged by demand and shortfall heat (the core is
 * not monotone in mild cold: sleep and vessels overshoot). 512 points of a Sobol sequence over twelve inputs. Tolerance:
 * 1e-6 of the value, rounding and interpolation of the surface coefficients.
 */
class MonotoneNightsTest {

    private static final int POINTS = 512;
    private static final double RELATIVE = 1e-6;

    /** One point of the input space. */
    private record Point(
            double air,
            double fall,
            double wind,
            double cloud,
            double skyGap,
            double humidity,
            double mass,
            double height,
            double fat,
            double batt,
            double legs,
            int form) {

        static Point of(double[] u) {
            return new Point(
                    -25 + 33 * u[0],
                    8 * u[1],
                    12 * u[2] * u[2],
                    u[3],
                    u[4],
                    0.4 + 0.6 * u[5],
                    48 + 57 * u[6],
                    1.55 + 0.35 * u[7],
                    10 + 22 * u[8],
                    40 + 160 * u[9],
                    40 + 90 * u[10],
                    (int) (u[11] * 8));
        }

        Point withAir(double k) {
            return new Point(air + k, fall, wind, cloud, skyGap, humidity, mass, height, fat, batt, legs, form);
        }

        Point withWind(double v) {
            return new Point(air, fall, v, cloud, skyGap, humidity, mass, height, fat, batt, legs, form);
        }

        Point withCloud(double c) {
            return new Point(air, fall, wind, c, skyGap, humidity, mass, height, fat, batt, legs, form);
        }

        Point withSkyGap(double g) {
            return new Point(air, fall, wind, cloud, g, humidity, mass, height, fat, batt, legs, form);
        }

        Point withBatt(double b) {
            return new Point(air, fall, wind, cloud, skyGap, humidity, mass, height, fat, b, legs, form);
        }

        Posture posture() {
            return form % 2 == 0 ? Posture.SITTING_KNEES_UP : Posture.LYING_CURLED;
        }

        Ground ground() {
            return form / 2 % 2 == 0 ? Nights.SNOW : Nights.WET_SOIL;
        }

        Scenario scenario(List<Pad> pads) {
            List<Garment> pieces = new ArrayList<>(((Outfit.Kit) Nights.light()).pieces());
            // under the light jacket's place: a throw-over parka with plenty of room, and overtrousers in half of the
            // kits
            pieces.removeIf(g -> g.spec().id().contains("down"));
            if (form >= 4) {
                pieces.add(4, Nights.overtrousers(legs));
            }
            pieces.add(4, Nights.parka(batt));
            Person person = new Person("point", Person.Sex.MALE, 35, height, mass, fat, 42, 1);
            Surroundings around = Nights.outdoors(
                    Nights.site(0.02, 1, skyGap, ground()),
                    Nights.weather(air, air - fall, wind, cloud, humidity, 10),
                    posture());
            return Nights.scenario(person, new Outfit.Kit(pieces, pads), around, posture(), 10);
        }

        NightResult run() {
            return run(List.of(Nights.SIT_PAD));
        }

        NightResult run(List<Pad> pads) {
            return NightEngine.run(scenario(pads), NumericalSettings.standard());
        }

        double windAtBody() {
            OutdoorState state = new OutdoorState();
            Scenario s = scenario(List.of());
            s.surroundings().at(0, state);
            double least = Double.POSITIVE_INFINITY;
            for (double v : state.windAt) {
                least = Math.min(least, v);
            }
            return least;
        }
    }

    private static List<Point> points() {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(12);
        sobol.skipTo(1);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            points.add(Point.of(sobol.nextVector()));
        }
        return points;
    }

    /** A night that stopped early has no dawn to compare: its bill is boundless. */
    private static double bill(NightResult r) {
        return Double.isNaN(r.stopped()) ? r.shortfallHeat() : Double.POSITIVE_INFINITY;
    }

    private static void neverCheaper(
            String what, UnaryOperator<Point> base, UnaryOperator<Point> harder, Predicate<Point> where) {
        int tried = 0;
        List<String> broken = new ArrayList<>();
        for (Point raw : points()) {
            Point p = base.apply(raw);
            if (!where.test(p)) {
                continue;
            }
            tried++;
            compare(what, p, p.run(), harder.apply(p).run(), broken);
        }
        report(what, tried, broken);
    }

    private static void compare(String what, Point p, NightResult easy, NightResult hard, List<String> broken) {
        double a = bill(easy);
        double b = bill(hard);
        if (Double.isNaN(a) || Double.isNaN(b)) {
            broken.add(what + ": no figures at " + p);
        }
        if (b < a - RELATIVE * Math.abs(a) - 1) {
            broken.add(what + ": shortfall " + a + " -> " + b + " at " + p);
        }
        if (hard.demand() < easy.demand() * (1 - RELATIVE) && Double.isNaN(easy.stopped())) {
            broken.add(what + ": demand " + easy.demand() + " -> " + hard.demand() + " at " + p);
        }
    }

    private static void report(String what, int tried, List<String> broken) {
        System.out.println(what + ": " + tried + " points, " + broken.size() + " broken");
        assertEquals(List.of(), broken.subList(0, Math.min(5, broken.size())), what);
        assertEquals(true, tried >= 100, "enough points");
    }

    @Test
    @DisplayName("less batt never costs less (there is room for it)")
    void lessBatt() {
        neverCheaper("less batt", p -> p, p -> p.withBatt(0.8 * p.batt()), p -> true);
    }

    @Test
    @DisplayName("colder air never costs less")
    void colder() {
        neverCheaper("colder", p -> p, p -> p.withAir(-2), p -> true);
    }

    @Test
    @DisplayName("a clearer sky never costs less")
    void clearerSky() {
        neverCheaper("clearer sky", p -> p, p -> p.withCloud(0.6 * p.cloud()), p -> true);
    }

    @Test
    @DisplayName("less canopy never costs less")
    void lessCanopy() {
        neverCheaper("less canopy", p -> p, p -> p.withSkyGap(Math.min(1, p.skyGap() + 0.3)), p -> true);
    }

    @Test
    @DisplayName("a missing pad never costs less")
    void missingPad() {
        List<String> broken = new ArrayList<>();
        for (Point p : points()) {
            compare("no pad", p, p.run(), p.run(List.of()), broken);
        }
        report("no pad", POINTS, broken);
    }

    @Test
    @DisplayName("more wind never costs less under full cloud")
    void windUnderCloud() {
        neverCheaper("wind under cloud", p -> p.withCloud(1), p -> p.withWind(p.wind() + 1.5), p -> true);
    }

    @Test
    @DisplayName("more wind never costs less above 2 m/s at the body, whatever the sky")
    void windAboveTwo() {
        neverCheaper(
                "wind above 2 m/s",
                p -> p.withWind(p.wind() + 4),
                p -> p.withWind(p.wind() + 1.5),
                p -> p.windAtBody() >= 2);
    }
}

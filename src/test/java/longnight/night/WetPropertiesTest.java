package longnight.night;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import longnight.body.Person;
import longnight.clothing.Fabric;
import longnight.clothing.FaceTightness;
import longnight.clothing.Garment;
import longnight.clothing.GarmentKind;
import longnight.clothing.GarmentSpec;
import longnight.clothing.Garments;
import longnight.clothing.Outfit;
import longnight.figure.Posture;
import longnight.outdoors.Weather;
import org.hipparchus.random.SobolSequenceGenerator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * What must hold of water over all nights, people and kits inside the model's range, judged by demand and shortfall heat. 128
 * points of a Sobol sequence over ten inputs. Tolerance 1 kJ and 1e-4 of the demand: what halving the step moves.
 */
class WetPropertiesTest {

    private static final int POINTS = 128;
    private static final double JOULES = 1000;
    private static final double DEMAND = 1e-4;

    private record Point(
            double air,
            double fall,
            double wind,
            double cloud,
            double humidity,
            double mass,
            double fat,
            double batt,
            double water,
            double rain) {

        static Point of(double[] u) {
            return new Point(
                    -25 + 33 * u[0],
                    6 * u[1],
                    10 * u[2] * u[2],
                    u[3],
                    0.4 + 0.55 * u[4],
                    48 + 57 * u[5],
                    10 + 22 * u[6],
                    40 + 160 * u[7],
                    u[8],
                    0.2 + 4 * u[9] * u[9]);
        }

        /** Rain only where it may rain: the air of the wet points lies between 1 and 8 degC. */
        Point rainy() {
            return new Point(
                    1 + (air + 25) * 7 / 33, fall / 6, wind, 1, Math.max(0.85, humidity), mass, fat, batt, water, rain);
        }

        Scenario scenario(Function<Garment, Garment> change, Map<String, Double> damp, boolean rains) {
            List<Garment> pieces = new ArrayList<>();
            for (Garment g : ((Outfit.Kit) Nights.typical()).pieces()) {
                pieces.add(change.apply(g.spec().id().equals("parka") ? Nights.parka(batt) : g));
            }
            Posture posture = Posture.SITTING_KNEES_UP;
            Weather weather = rains
                    ? Nights.wetWeather(air, air - fall, wind, humidity, 8, rain, 1, 5)
                    : Nights.weather(air, air - fall, wind, cloud, humidity, 8);
            Person person = new Person("point", Person.Sex.MALE, 35, 1.75, mass, fat, 42, 1);
            Scenario s = Nights.scenario(
                    person,
                    new Outfit.Kit(pieces, List.of(Nights.SIT_PAD)),
                    Nights.outdoors(Nights.site(0.02, 1, 1, Nights.SNOW), weather, posture),
                    posture,
                    8);
            return s.withPlan(new NightPlan(
                    20 * 3600,
                    8 * 3600,
                    true,
                    Double.NaN,
                    List.of(Phase.still("night", 0, 8 * 3600, posture, true)),
                    List.of(),
                    List.of(),
                    damp,
                    1));
        }
    }

    private static NightResult run(Scenario s) {
        return NightEngine.compile(s, ModelChoice.nominal()).run(NumericalSettings.standard());
    }

    private static List<Point> points() {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(10);
        sobol.skipTo(1);
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            points.add(Point.of(sobol.nextVector()));
        }
        return points;
    }

    private static double bill(NightResult r) {
        return Double.isNaN(r.stopped()) ? r.shortfallHeat() : Double.POSITIVE_INFINITY;
    }

    private static void compare(String what, Point p, NightResult easy, NightResult hard, List<String> broken) {
        if (bill(hard) < bill(easy) - JOULES) {
            broken.add(what + ": shortfall " + bill(easy) + " -> " + bill(hard) + " at " + p);
        }
        if (hard.demand() < easy.demand() * (1 - DEMAND) && Double.isNaN(easy.stopped())) {
            broken.add(what + ": demand " + easy.demand() + " -> " + hard.demand() + " at " + p);
        }
    }

    private static void report(String what, List<String> broken) {
        System.out.println(what + ": " + POINTS + " points, " + broken.size() + " broken");
        assertEquals(List.of(), broken.subList(0, Math.min(6, broken.size())), what);
    }

    @Test
    @DisplayName("a wet start never costs less than the same dry start")
    void wetStart() {
        String[][] pieces = {{"base top"}, {"base top", "base tights"}, {"parka"}, {"field trousers", "vest", "parka"}};
        List<String> broken = new ArrayList<>();
        int i = 0;
        for (Point p : points()) {
            Map<String, Double> damp = new HashMap<>();
            for (String piece : pieces[i++ % pieces.length]) {
                damp.put(piece, p.water);
            }
            compare(
                    "wet " + damp.keySet(),
                    p,
                    run(p.scenario(g -> g, Map.of(), false)),
                    run(p.scenario(g -> g, damp, false)),
                    broken);
        }
        report("wet start", broken);
    }

    private static Garment finished(Garment g, GarmentSpec.Finish finish) {
        GarmentSpec s = g.spec();
        return Garments.derive(new GarmentSpec(
                        s.id(),
                        s.name(),
                        s.kind(),
                        s.mass(),
                        s.fabric(),
                        s.fill(),
                        s.face(),
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        null,
                        finish,
                        null,
                        null))
                .garment();
    }

    @Test
    @DisplayName("a fresh finish never costs more than a worn one")
    void freshFinish() {
        List<String> broken = new ArrayList<>();
        for (Point raw : points()) {
            Point p = raw.rainy();
            NightResult fresh = run(p.scenario(g -> finished(g, GarmentSpec.Finish.NEW), Map.of(), true));
            NightResult worn = run(p.scenario(g -> finished(g, GarmentSpec.Finish.WORN), Map.of(), true));
            NightResult gone = run(p.scenario(g -> finished(g, GarmentSpec.Finish.GONE), Map.of(), true));
            compare("worn", p, fresh, worn, broken);
            compare("gone", p, worn, gone, broken);
        }
        report("fresh finish", broken);
    }

    @Test
    @DisplayName("a vapour-tight layer next to the skin lowers evaporation and traps water inside")
    void vapourTight() {
        List<String> broken = new ArrayList<>();
        for (Point p : points()) {
            NightResult open = run(p.scenario(g -> g, Map.of(), false));
            NightResult tight = run(p.scenario(
                    g -> g.spec().id().equals("base top")
                            ? Nights.piece(
                                    "base top", GarmentKind.BASE_TOP, 155, Fabric.COATED, null, FaceTightness.TIGHT)
                            : g,
                    Map.of(),
                    false));
            WaterReport a = Objects.requireNonNull(open.water());
            WaterReport b = Objects.requireNonNull(tight.water());
            double outsideOpen = 0;
            double outsideTight = 0;
            for (int i = 0; i < a.layers().size(); i++) {
                String id = a.layers().get(i).id();
                if (List.of("wind jacket", "vest").contains(id)) {
                    outsideOpen += atDawn(a.layers().get(i));
                    outsideTight += atDawn(b.layers().get(i));
                }
            }
            if (b.fromSkin() > a.fromSkin() + 1e-6) {
                broken.add("more vapour: " + a.fromSkin() + " -> " + b.fromSkin() + " at " + p);
            }
            if (outsideTight > outsideOpen + 1e-6) {
                broken.add("wetter outside: " + outsideOpen + " -> " + outsideTight + " at " + p);
            }
        }
        report("vapour-tight base", broken);
    }

    private static double atDawn(WaterReport.Layer l) {
        return l.liquidAtDawn() + l.iceAtDawn() + l.boundAtDawn();
    }

    @Test
    @DisplayName("no layer is ever lighter than dry")
    void neverBelowDry() {
        for (Point raw : points()) {
            Point p = raw.rainy();
            NightResult r = run(p.scenario(g -> g, Map.of("base top", p.water, "parka", 0.5 * p.water), true));
            WaterReport w = Objects.requireNonNull(r.water());
            for (WaterReport.Layer l : w.layers()) {
                assertTrue(
                        l.liquidAtDawn() >= 0 && l.iceAtDawn() >= 0 && l.boundAtDawn() >= 0 && l.dryMass() > 0,
                        l + " at " + p);
            }
            for (double[] piece : w.trace()) {
                for (double mass : piece) {
                    assertTrue(mass >= 0, mass + " at " + p);
                }
            }
            assertEquals(0, w.closure(), 1e-9);
            assertEquals(0, r.ledger().heatClosure(), 1e-9);
        }
    }
}

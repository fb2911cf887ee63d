package longnight.night;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import longnight.clothing.Outfit;
import longnight.figure.Posture;
import longnight.outdoors.Weather;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The books and the steps with water on. Bars: water books 1e-9 kg, heat ledger and payers 1e-9 of the heat turned over; step
 * halved: core 0.005 K, shortfall 0.4 %, water of each layer 1 % of the larger of itself and 5 g; against an eighth of the
 * step: core 0.02 K, shortfall 0.5 %. One bar is missed: water of one layer after a sweaty march.
 */
class WaterNumericsTest {

    /** What a layer's water is measured by at least [kg]: 1 % of it is a twentieth of a gram. */
    private static final double LEAST_WATER = 0.005;

    private static final Posture SIT = Posture.SITTING_KNEES_UP;

    static Stream<Named<Scenario>> nights() {
        return Stream.of(
                Named.of("dry", Nights.calm(Nights.typical(), -8, -14)),
                Named.of(
                        "rain at +6",
                        night(Nights.typical(), Nights.wetWeather(6, 5, 3, 0.97, 10, 1.5, 2, 7), still(10), Map.of())),
                Named.of(
                        "sleet turning to frost",
                        night(Nights.light(), Nights.wetWeather(2, -9, 4, 0.95, 10, 2, 1, 5), still(10), Map.of())),
                Named.of(
                        "wet start at -15",
                        night(
                                Nights.typical(),
                                Nights.weather(-15, -15, 2, 0.5, 0.8, 10),
                                still(10),
                                Map.of("base top", 0.8, "base tights", 0.5, "parka", 0.3))),
                Named.of(
                        "wet start at -2",
                        night(
                                Nights.typical(),
                                Nights.weather(-1, -3, 2, 1, 0.9, 10),
                                still(10),
                                Map.of("base top", 1.0, "vest", 0.6, "field trousers", 0.5))),
                Named.of(
                        "sweaty march, then night",
                        night(
                                Nights.typical(),
                                Nights.weather(-5, -12, 2, 0.2, 0.8, 10),
                                List.of(
                                        march("uphill", -5400, -900, 1.25, 12, 18, null),
                                        Phase.still("halt", -900, 0, Posture.STANDING, false),
                                        Phase.still("night", 0, 36000, SIT, true)),
                                Map.of())),
                Named.of(
                        "frost night at -30",
                        night(Nights.heavy(), Nights.weather(-30, -30, 1, 0, 0.7, 10), still(10), Map.of())),
                Named.of("rime", night(Nights.typical(), Nights.weather(-3, -6, 8, 1, 1.0, 10), still(10), Map.of())),
                Named.of(
                        "snow seat without pad",
                        night(
                                new Outfit.Kit(((Outfit.Kit) Nights.typical()).pieces(), List.of()),
                                Nights.weather(-1, -4, 1.5, 1, 0.9, 10),
                                still(10),
                                Map.of())),
                Named.of("meals, drinks, bottle, drill", meals()));
    }

    private static Scenario meals() {
        Scenario base = night(Nights.typical(), Nights.weather(-8, -14, 2, 0, 0.8, 10), still(10), Map.of());
        NightPlan plan = new NightPlan(
                20 * 3600,
                36000,
                true,
                Double.NaN,
                List.of(
                        Phase.still("early", 0, 14400, SIT, true),
                        new Phase("drill", 14400, 21600, SIT, false, null, 0.1, 6, null, 0, 1, true),
                        new Phase("huddle", 21600, 36000, SIT, true, null, 0, 0, null, 0.2, 0.5, false)),
                List.of(
                        new Intake(0, 2e6, 1e6, 0.4, 60),
                        new Intake(10800, 1e6, 8e5, 0.3, 70),
                        new Intake(14400, 5e5, 5e5, 0.2, 5)),
                List.of(
                        new HeatBrought("bottle", 3600, 1.0, 80, 0, 0),
                        new HeatBrought("small bottle", 7200, 0.5, 70, 0, 0),
                        new HeatBrought("pack", 10000, 0, 0, 1.5e5, 18000)),
                Map.of("base top", 0.3),
                0.6);
        return base.withPlan(plan);
    }

    static List<Phase> still(double hours) {
        return List.of(Phase.still("night", 0, hours * 3600, SIT, true));
    }

    static Phase march(String name, double from, double to, double speed, double grade, double load, Outfit outfit) {
        return new Phase(
                name, from, to, Posture.STANDING, false, new March(speed, grade, load, 1.2), 0, 0, outfit, 0, 1, false);
    }

    static Scenario night(Outfit outfit, Weather weather, List<Phase> phases, Map<String, Double> damp) {
        double hours = phases.get(phases.size() - 1).to() / 3600;
        Scenario base = Nights.scenario(
                Nights.man(), outfit, Nights.outdoors(Nights.site(0.005, 1, 1, Nights.SNOW), weather, SIT), SIT, hours);
        return base.withPlan(
                new NightPlan(20 * 3600, hours * 3600, true, Double.NaN, phases, List.of(), List.of(), damp, 1));
    }

    private static WaterReport water(NightResult r) {
        return java.util.Objects.requireNonNull(r.water());
    }

    private static double[] sums(WaterReport w, boolean dawn) {
        return w.layers().stream()
                .mapToDouble(l -> dawn
                        ? l.liquidAtDawn() + l.iceAtDawn() + l.boundAtDawn()
                        : l.liquidAtDusk() + l.iceAtDusk() + l.boundAtDusk())
                .toArray();
    }

    record Gap(double core, double shortfall, double layer, String worst) {
        @Override
        public String toString() {
            return String.format(
                    java.util.Locale.ROOT,
                    "core %.4f K, shortfall %.3f %%, layer water %.2f %% (%s)",
                    core,
                    100 * shortfall,
                    100 * layer,
                    worst);
        }
    }

    /** How far two runs of one night lie apart. */
    static Gap gap(NightResult a, NightResult b) {
        double layer = 0;
        String worst = "";
        for (boolean dawn : new boolean[] {false, true}) {
            double[] x = sums(water(a), dawn);
            double[] y = sums(water(b), dawn);
            for (int i = 0; i < x.length; i++) {
                double off = Math.abs(x[i] - y[i]) / Math.max(LEAST_WATER, Math.max(x[i], y[i]));
                if (off > layer) {
                    layer = off;
                    worst = water(a).layers().get(i).id() + (dawn ? " at dawn " : " at dusk ") + x[i] + " " + y[i];
                }
            }
        }
        // inside the night as well: water of each piece at each hour
        for (int i = 0; i < water(a).trace().length; i++) {
            for (double t = 3600; t < a.scenario().plan().duration(); t += 3600) {
                double x = at(water(a), i, t);
                double y = at(water(b), i, t);
                double off = Math.abs(x - y) / Math.max(LEAST_WATER, Math.max(x, y));
                if (off > layer) {
                    layer = off;
                    worst = water(a).layers().get(i).id() + " after " + t / 3600 + " h " + x + " " + y;
                }
            }
        }
        return new Gap(NumericsTest.worstCore(a, b), Math.abs(a.shortfallHeat() / b.shortfallHeat() - 1), layer, worst);
    }

    private static double at(WaterReport w, int piece, double time) {
        int i = Arrays.binarySearch(w.traceTime(), time);
        i = i < 0 ? Math.min(w.traceTime().length - 1, -i - 1) : i;
        return Math.abs(w.traceTime()[i] - time) < 1 ? w.trace()[piece][i] : 0.0;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void booksClose(Scenario scenario) {
        NightResult r = NightEngine.compile(scenario, ModelChoice.nominal()).run(NumericalSettings.standard());
        assertEquals(0, water(r).closure(), 1e-9, "water");
        assertEquals(0, r.ledger().heatClosure(), 1e-9, "heat");
        assertEquals(0, r.ledger().partClosure(), 1e-9, "parts");
        assertEquals(0, r.ledger().payerClosure(), 1e-9, "payers");
        assertTrue(Double.isFinite(r.shortfallHeat()));
        for (HourRow row : r.hours().subList(1, r.hours().size())) {
            assertTrue(Double.isFinite(row.coreCelsius()) && Double.isFinite(row.losses()));
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void halfTheStep(Scenario scenario) {
        NightEngine engine = NightEngine.compile(scenario, ModelChoice.nominal());
        NightResult whole = engine.run(NumericalSettings.standard());
        Gap gap = gap(whole, engine.run(NumericalSettings.standard().divided(2)));
        System.out.println("half the step: " + gap);
        assertTrue(gap.core() < 0.005 && gap.shortfall() < 0.004, gap.toString());
        if (scenario.plan().phases().stream().anyMatch(p -> p.march() != null)) {
            // the one miss: the vest differs by 4 % of 5 g. Water that sweat left moves on in long looks, first order
            // in
            // time; shorter looks halve the miss and the speed. It must not grow, and the note must go when it is gone.
            assertTrue(gap.layer() > 0.01 && gap.layer() < 0.05, gap.toString());
        } else {
            assertTrue(gap.layer() < 0.01, gap.toString());
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void againstAnEighth(Scenario scenario) {
        NightEngine engine = NightEngine.compile(scenario, ModelChoice.nominal());
        NightResult whole = engine.run(NumericalSettings.standard());
        Gap gap = gap(whole, engine.run(NumericalSettings.standard().divided(8)));
        System.out.println("an eighth: " + gap);
        assertTrue(gap.core() < 0.02 && gap.shortfall() < 0.005, gap.toString());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void neverBelowDry(Scenario scenario) {
        NightEngine engine = NightEngine.compile(scenario, ModelChoice.nominal());
        for (double by : new double[] {1, 0.5}) {
            Runner runner = engine.start(NumericalSettings.standard().divided(by));
            runner.run();
            for (Runner.Stretch stretch : runner.stretches) {
                Water w = stretch.net().water;
                for (double[] store : new double[][] {w.liquid, w.ice, w.bound}) {
                    for (double mass : store) {
                        assertTrue(mass >= 0, "mass " + mass);
                    }
                }
            }
        }
    }

    @Test
    @DisplayName("the same digits on one thread and on two")
    void sameDigitsOnThreads() throws Exception {
        List<Scenario> list = new ArrayList<>();
        nights().forEach(n -> list.add(n.getPayload()));
        List<double[]> single = list.stream().map(WaterNumericsTest::digits).toList();
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            List<Future<double[]>> results = new ArrayList<>();
            for (Scenario s : list) {
                results.add(pool.submit(() -> digits(s)));
            }
            for (int i = 0; i < list.size(); i++) {
                assertArrayEquals(single.get(i), results.get(i).get(), 0.0);
            }
        } finally {
            pool.shutdown();
        }
    }

    private static double[] digits(Scenario s) {
        NightResult r = NightEngine.compile(s, ModelChoice.nominal()).run(NumericalSettings.standard());
        List<double[]> all = new ArrayList<>(List.of(r.trace().coreHeatDeficit(), sums(water(r), true)));
        all.addAll(Arrays.asList(water(r).trace()));
        return all.stream().flatMapToDouble(Arrays::stream).toArray();
    }
}

package longnight.night;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
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
 * The working integrator against the reference integrator and against itself at half the step; the books against an
 * independent audit. Bars: core 0.02 K and shortfall 0.5 % against the reference, core 0.005 K and shortfall 0.2 % at half
 * the step, books 1e-9 of the heat turned over.
 */
class NumericsTest {

    static Stream<Named<Scenario>> nights() {
        Posture sit = Posture.SITTING_KNEES_UP;
        Posture lie = Posture.LYING_CURLED;
        return Stream.of(
                Named.of("typical kit, clear calm", Nights.calm(Nights.typical(), -8, -14)),
                Named.of("light kit, clear calm", Nights.calm(Nights.light(), 2, -6)),
                Named.of(
                        "heavy kit, gale, small woman",
                        Nights.scenario(
                                Nights.smallWoman(),
                                Nights.heavy(),
                                Nights.outdoors(
                                        Nights.site(0.01, 0.6, 1, Nights.SNOW),
                                        Nights.weather(-15, -20, 13, 0.4, 0.7, 12),
                                        sit),
                                sit,
                                12)),
                Named.of(
                        "typical kit, wet turf, lying, no pad",
                        Nights.scenario(
                                Nights.man(),
                                new Outfit.Kit(((Outfit.Kit) Nights.typical()).pieces(), List.of()),
                                Nights.outdoors(Nights.site(0.03, 1, 0.5, Nights.WET_SOIL), gusty(), lie),
                                lie,
                                11.5)));
    }

    private static Weather gusty() {
        Weather w = Nights.weather(6, 1, 4, 1, 0.95, 12);
        double[] wind = w.wind10();
        for (int i = 0; i < wind.length; i++) {
            wind[i] = i % 2 == 0 ? 1.5 : 9;
        }
        return new Weather(
                w.time(),
                w.airCelsius(),
                w.relativeHumidity(),
                wind,
                w.cloud(),
                w.precipitation(),
                w.pressure(),
                w.skyLongwave());
    }

    static double worstCore(NightResult a, NightResult b) {
        double worst = 0;
        for (int i = 0; i < a.hours().size(); i++) {
            worst = Math.max(
                    worst,
                    Math.abs(a.hours().get(i).coreCelsius() - b.hours().get(i).coreCelsius()));
        }
        return worst;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void workingAgainstReference(Scenario scenario) {
        NightEngine engine = NightEngine.compile(scenario, ModelChoice.nominal());
        NightResult working = engine.run(NumericalSettings.dry());
        NightResult reference = engine.run(NumericalSettings.referenceIntegrator());
        assertEquals(0, worstCore(working, reference), 0.02);
        assertEquals(1, working.shortfallHeat() / reference.shortfallHeat(), 0.005);
        assertEquals(0, reference.ledger().heatClosure(), 1e-9);
        assertEquals(0, reference.ledger().partClosure(), 1e-6, "parts and ways are integrated as separate rows here");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void halfTheStep(Scenario scenario) {
        NightEngine engine = NightEngine.compile(scenario, ModelChoice.nominal());
        NightResult whole = engine.run(NumericalSettings.standard());
        NightResult half = engine.run(NumericalSettings.standard().divided(2));
        assertEquals(0, worstCore(whole, half), 0.005);
        assertEquals(1, whole.shortfallHeat() / half.shortfallHeat(), 0.002);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void booksClose(Scenario scenario) {
        NightResult r = NightEngine.run(scenario, NumericalSettings.standard());
        assertTrue(r.ledger().turnedOver() > 1e6);
        assertEquals(0, r.ledger().heatClosure(), 1e-9);
        assertEquals(0, r.ledger().partClosure(), 1e-9);
        assertEquals(0, r.ledger().payerClosure(), 1e-9);
        HourRow dawn = r.hours().get(r.hours().size() - 1);
        assertEquals(
                dawn.shortfall(),
                dawn.paidByHeatMade() + dawn.paidByShell() + dawn.paidByCore(),
                1e-9 * r.ledger().turnedOver());
        // the hour rows add up to the books
        double losses = 0;
        for (int i = 1; i < r.hours().size(); i++) {
            double span = r.hours().get(i).time() - r.hours().get(i - 1).time();
            losses += span * r.hours().get(i).losses();
        }
        assertEquals(
                dawn.shortfall() + r.restHeat() * dawn.time(),
                losses,
                1e-9 * r.ledger().turnedOver());
    }

    @Test
    @DisplayName("a planted error in the books is caught")
    void auditorIsNotBlind() {
        NightEngine engine = NightEngine.compile(Nights.calm(Nights.typical(), -8, -14), ModelChoice.nominal());
        Runner runner = engine.start(NumericalSettings.standard());
        runner.run();
        runner.books.part[4] += 1.0;
        Ledger ledger = Auditor.audit(engine.body(), runner);
        assertTrue(ledger.heatClosure() > 1e-8 && ledger.partClosure() > 1e-8, "one joule in ten million must show");
    }

    @Test
    @DisplayName("second order: halving the step divides the step error by about four")
    void order() {
        // boundary frozen alike in all runs, so that only the step differs
        NightEngine engine = NightEngine.compile(Nights.calm(Nights.typical(), -8, -14), ModelChoice.nominal());
        double[] core = new double[4];
        for (int i = 0; i < 4; i++) {
            double step = 240 / StrictMath.pow(2, i);
            NightResult r = engine.run(new NumericalSettings(step, step, 240, 240, false, false, 1e-6));
            core[i] = r.hours().get(2).meanSkin();
        }
        double ratio = Math.abs((core[0] - core[1]) / (core[1] - core[2]));
        assertTrue(ratio > 3 && ratio < 5.5, "error ratio " + ratio);
    }

    @Test
    @DisplayName("the same digits on one thread and on two")
    void sameDigitsOnThreads() throws Exception {
        List<Scenario> list = new ArrayList<>();
        nights().forEach(n -> list.add(n.getPayload()));
        double[][] single = new double[list.size()][];
        for (int i = 0; i < list.size(); i++) {
            single[i] = NightEngine.run(list.get(i), NumericalSettings.standard())
                    .trace()
                    .coreHeatDeficit();
        }
        ExecutorService pool = Executors.newFixedThreadPool(2);
        try {
            for (int round = 0; round < 3; round++) {
                List<Future<double[]>> results = new ArrayList<>();
                for (Scenario s : list) {
                    results.add(pool.submit(() -> NightEngine.run(s, NumericalSettings.standard())
                            .trace()
                            .coreHeatDeficit()));
                }
                for (int i = 0; i < list.size(); i++) {
                    assertArrayEquals(single[i], results.get(i).get(), 0.0);
                }
            }
        } finally {
            pool.shutdown();
        }
    }
}

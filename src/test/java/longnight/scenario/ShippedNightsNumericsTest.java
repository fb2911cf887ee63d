package longnight.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.WaterReport;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every shipped night: books close to 1e-9 of the heat turned over and 1e-9 kg, the payers pay the bill, half the step moves
 * the core by less than 0.005 K and the shortfall by less than 0.4 %, an eighth by less than 0.02 K and 0.5 %; without water the
 * reference integrator agrees within 0.02 K and 0.5 %, and half the step within 0.005 K and 0.2 % (nights with a march are not
 * dry nights: without water the moment at which sweat sets in is only known to a look, which is worth up to 0.008 K).
 */
class ShippedNightsNumericsTest {

    static List<Path> nights() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(
                            f -> f.toString().endsWith(".yaml") && !f.toString().contains("wardrobe"))
                    .sorted()
                    .toList();
        }
    }

    private static double core(NightResult a, NightResult b) {
        double worst = 0;
        for (int i = 0; i < a.hours().size(); i++) {
            worst = Math.max(
                    worst,
                    Math.abs(a.hours().get(i).coreCelsius() - b.hours().get(i).coreCelsius()));
        }
        return worst;
    }

    private static double bill(NightResult a, NightResult b) {
        return Math.abs(a.shortfallHeat() / b.shortfallHeat() - 1);
    }

    /** Largest difference of a layer's water at the end, relative to the larger of it and 5 g. */
    private static double layer(WaterReport a, WaterReport b) {
        double worst = 0;
        for (int i = 0; i < a.layers().size(); i++) {
            double x = sum(a.layers().get(i));
            double y = sum(b.layers().get(i));
            worst = Math.max(worst, Math.abs(x - y) / Math.max(0.005, Math.max(x, y)));
        }
        return worst;
    }

    private static double sum(WaterReport.Layer l) {
        return l.liquidAtDawn() + l.iceAtDawn() + l.boundAtDawn();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("nights")
    void converges(Path file) throws IOException {
        NightEngine engine = NightEngine.compile(ScenarioReader.read(file).scenario(), ModelChoice.nominal());
        NightResult wet = engine.run(NumericalSettings.standard());
        NightResult half = engine.run(NumericalSettings.standard().divided(2));
        NightResult eighth = engine.run(NumericalSettings.standard().divided(8));
        NightResult dry = engine.run(NumericalSettings.dry());
        NightResult dryHalf = engine.run(NumericalSettings.dry().divided(2));
        NightResult reference = engine.run(NumericalSettings.referenceIntegrator());
        System.out.printf(
                "%-22s half: core %.4f K, bill %.3f %%, layer %.2f %% | 1/8: core %.4f K, bill %.3f %%, layer %.2f %% | dry: reference core %.5f K, bill %.4f %%; half core %.5f K, bill %.4f %% | books %.0e %.0e %.0e, water %.0e kg%n",
                file.getFileName(),
                core(wet, half),
                100 * bill(wet, half),
                100 * layer(wet.water(), half.water()),
                core(wet, eighth),
                100 * bill(wet, eighth),
                100 * layer(wet.water(), eighth.water()),
                core(dry, reference),
                100 * bill(dry, reference),
                core(dry, dryHalf),
                100 * bill(dry, dryHalf),
                wet.ledger().heatClosure(),
                wet.ledger().partClosure(),
                wet.ledger().payerClosure(),
                wet.water().closure());
        assertEquals(0, wet.ledger().heatClosure(), 1e-9);
        assertEquals(0, wet.ledger().partClosure(), 1e-9);
        assertEquals(0, wet.ledger().payerClosure(), 1e-9);
        assertEquals(0, wet.water().closure(), 1e-9);
        assertEquals(0, core(wet, half), 0.005);
        assertEquals(0, bill(wet, half), 0.004);
        assertEquals(0, core(wet, eighth), 0.02);
        assertEquals(0, bill(wet, eighth), 0.005);
        assertEquals(0, core(dry, reference), 0.02);
        assertEquals(0, bill(dry, reference), 0.005);
        if (engine.scenario().plan().phases().stream().allMatch(phase -> phase.march() == null)) {
            assertEquals(0, core(dry, dryHalf), 0.005);
            assertEquals(0, bill(dry, dryHalf), 0.002);
        }
    }
}

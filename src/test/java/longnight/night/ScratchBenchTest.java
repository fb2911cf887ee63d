package longnight.night;

import org.junit.jupiter.api.Test;

class ScratchBenchTest {
    @Test
    void go() {
        WaterNumericsTest.nights().forEach(n -> {
            NightEngine e = NightEngine.compile(n.getPayload(), ModelChoice.nominal());
            for (NumericalSettings s :
                    new NumericalSettings[] {NumericalSettings.standard(), NumericalSettings.dry()}) {
                for (int i = 0; i < 60; i++) e.run(s);
                double best = 1e9;
                for (int r = 0; r < 5; r++) {
                    long t = System.nanoTime();
                    for (int i = 0; i < 20; i++) e.run(s);
                    best = Math.min(best, (System.nanoTime() - t) * 1e-9 / 20);
                }
                System.out.printf("%s water %b: %.0f nights/s%n", n.getName(), s.water(), 1 / best);
            }
        });
    }
}

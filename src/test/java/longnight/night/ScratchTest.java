package longnight.night;

import org.junit.jupiter.api.Test;

class ScratchTest {
    @Test
    void look() {
        for (var kit :
                new Object[][] {{"light", Nights.light()}, {"typical", Nights.typical()}, {"heavy", Nights.heavy()}}) {
            for (double air : new double[] {2, -10, -30}) {
                Scenario s = Nights.calm((longnight.clothing.Outfit) kit[1], air + 2, air - 2);
                NightEngine e = NightEngine.compile(s, ModelChoice.nominal());
                NightResult r = e.run(NumericalSettings.dry());
                Runner run = e.start(NumericalSettings.standard(), null);
                double w0 = run.network().water.held();
                run.run();
                NightResult w = e.run(NumericalSettings.standard());
                Water q = run.network().water;
                double liq = 0, ice = 0, bound = 0;
                for (int i = 0; i < q.liquid.length; i++) {
                    liq += q.liquid[i];
                    ice += q.ice[i];
                    bound += q.bound[i];
                }
                System.out.printf(
                        "%s %.0f C clo %.2f nodes %d demand %.3f H %.0f core %.3f | wet demand %.3f H %.0f core %.3f closure %.1e %.1e water %.1f -> %.1f g (liq %.1f ice %.1f bound %.1f) skin %.1f air %.1f err %.1e%n",
                        kit[0],
                        air,
                        r.kitResistance() / 0.155,
                        run.network().nodes,
                        r.demand(),
                        r.shortfallHeat() / 1000,
                        r.trace().core()[r.trace().core().length - 1],
                        w.demand(),
                        w.shortfallHeat() / 1000,
                        w.trace().core()[w.trace().core().length - 1],
                        w.ledger().heatClosure(),
                        w.ledger().partClosure(),
                        w0 * 1000,
                        q.held() * 1000,
                        liq * 1000,
                        ice * 1000,
                        bound * 1000,
                        q.skinTotal * 1000,
                        q.airTotal * 1000,
                        q.held() - w0 - q.skinTotal + q.airTotal);
                for (NumericalSettings n : new NumericalSettings[] {
                    NumericalSettings.standard().divided(2),
                    NumericalSettings.standard().divided(8)
                }) {
                    NightResult z = e.run(n);
                    double worst = 0;
                    for (int i = 0; i < w.hours().size() && i < z.hours().size(); i++)
                        worst = Math.max(
                                worst,
                                Math.abs(z.hours().get(i).coreCelsius()
                                        - w.hours().get(i).coreCelsius()));
                    System.out.printf(
                            "  step %.1f core %.5f H %.4f %%%n",
                            n.step(), worst, 100 * (z.shortfallHeat() / w.shortfallHeat() - 1));
                }
            }
        }
        Scenario s = Nights.calm(Nights.typical(), -8, -12);
        NightEngine e = NightEngine.compile(s, ModelChoice.nominal());
        for (int k = 0; k < 6; k++) {
            long t = System.nanoTime();
            for (int i = 0; i < 300; i++) e.run(NumericalSettings.dry());
            long t2 = System.nanoTime();
            for (int i = 0; i < 300; i++) e.run(NumericalSettings.standard());
            System.out.printf(
                    "%.0f dry %.0f wet nights/s%n", 300 / ((t2 - t) / 1e9), 300 / ((System.nanoTime() - t2) / 1e9));
        }
    }
}

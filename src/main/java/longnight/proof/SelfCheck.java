package longnight.proof;

import java.util.List;
import longnight.night.HourRow;
import longnight.night.Ledger;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;

/**
 * A check of the arithmetic on one night. It speaks of the program, not of people.
 *
 * @param what  what is checked
 * @param value what came out
 * @param limit most that may come out
 */
public record SelfCheck(What what, double value, double limit) {

    /** What is checked. */
    public enum What {
        /** Heat in less heat out less heat kept, over heat turned over [1]. */
        BOOKS_CLOSE,
        /** Core on the hour against half of every step and interval [K]. */
        HALF_STEP_CORE,
        /** Shortfall heat against half of every step and interval, over itself [1]. */
        HALF_STEP_SHORTFALL,
        /** Core on the hour against the reference integrator, both dry [K]. */
        REFERENCE_CORE
    }

    /** Whether it is met. */
    public boolean met() {
        return value <= limit;
    }

    /** All checks of a night. */
    public static List<SelfCheck> of(Scenario night, ModelChoice choice) {
        NightEngine engine = NightEngine.compile(night, choice);
        NightResult working = engine.run(NumericalSettings.standard());
        NightResult half = engine.run(NumericalSettings.standard().divided(2));
        NightResult dry = engine.run(NumericalSettings.dry());
        NightResult reference = engine.run(NumericalSettings.referenceIntegrator());
        Ledger ledger = working.ledger();
        return List.of(
                new SelfCheck(What.BOOKS_CLOSE, Math.abs(ledger.heatClosure()), 1e-9),
                new SelfCheck(What.HALF_STEP_CORE, core(working, half), 0.05),
                new SelfCheck(
                        What.HALF_STEP_SHORTFALL, Math.abs(working.shortfallHeat() / half.shortfallHeat() - 1), 0.01),
                new SelfCheck(What.REFERENCE_CORE, core(dry, reference), 0.05));
    }

    private static double core(NightResult one, NightResult other) {
        double most = 0;
        List<HourRow> rows = one.hours();
        for (int i = 0; i < Math.min(rows.size(), other.hours().size()); i++) {
            most = Math.max(
                    most,
                    Math.abs(rows.get(i).coreCelsius() - other.hours().get(i).coreCelsius()));
        }
        return most;
    }
}

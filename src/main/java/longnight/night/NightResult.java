package longnight.night;

import java.util.List;
import longnight.assumption.Guess;
import org.jspecify.annotations.Nullable;

/**
 * The answer. When the input lies outside the model's range ({@link Scenario#limits}) nothing is run: rows and trace are
 * empty and the numbers NaN.
 *
 * @param scenario        the question it answers
 * @param verdict         outcome, times and reasons
 * @param restHeat        heat at rest, 1.1 BMR [W]
 * @param bodyArea        DuBois area [m2]
 * @param demand          the night's demand: largest 4-hour mean of losses over heat at rest [1]
 * @param demandTime      when that window ends [s from dusk]
 * @param shortfallHeat   [J]
 * @param coreHeatDeficitDawn against the own set level at dawn [J], may be negative
 * @param coreHeatDeficitWorst largest value [J]
 * @param worstTime       when [s from dusk]
 * @param wholeBodyDebt   heat debt of the whole body at dawn against the neutral state [J]
 * @param maximalShivering the person's peak heat production [W]
 * @param kitMass         mass of what is worn in any phase, and of the pads [kg]; NaN for laboratory clothing
 * @param kitResistance   whole-body static insulation, intrinsic, parallel, of what is worn in the longest phase of the night [m2 K/W]
 * @param hours           rows of the hour table
 * @param trace           fine series
 * @param ledger          the books
 * @param guessed         everything guessed
 * @param cautions        codes of the cautions that apply, the general one first
 * @param secondOpinion   null when it does not apply (laboratory or out of range altogether)
 * @param water           the night's water; null when it was not followed
 * @param fuel            food and drink; null when nothing was run
 * @param day             march and drill; null when nothing was run
 * @param stopped         time at which the run stopped because the core fell below 32 degC [s]; NaN when it ran through
 */
public record NightResult(
        Scenario scenario,
        Verdict verdict,
        double restHeat,
        double bodyArea,
        double demand,
        double demandTime,
        double shortfallHeat,
        double coreHeatDeficitDawn,
        double coreHeatDeficitWorst,
        double worstTime,
        double wholeBodyDebt,
        double maximalShivering,
        double kitMass,
        double kitResistance,
        List<HourRow> hours,
        Trace trace,
        Ledger ledger,
        List<Guess> guessed,
        List<Caution> cautions,
        @Nullable SecondOpinion secondOpinion,
        @Nullable WaterReport water,
        @Nullable FuelReport fuel,
        @Nullable DayReport day,
        double stopped) {

    /** The same answer with other reports of water and day, drawn up after the run. */
    public NightResult with(@Nullable WaterReport otherWater, @Nullable DayReport otherDay) {
        return new NightResult(
                scenario,
                verdict,
                restHeat,
                bodyArea,
                demand,
                demandTime,
                shortfallHeat,
                coreHeatDeficitDawn,
                coreHeatDeficitWorst,
                worstTime,
                wholeBodyDebt,
                maximalShivering,
                kitMass,
                kitResistance,
                hours,
                trace,
                ledger,
                guessed,
                cautions,
                secondOpinion,
                otherWater,
                fuel,
                otherDay,
                stopped);
    }
}

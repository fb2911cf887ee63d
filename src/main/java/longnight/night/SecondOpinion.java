package longnight.night;

/**
 * Steady-state second opinion after ISO 11079:2007, from the same kit and weather; never part of the verdict.
 *
 * @param heat              metabolic rate used [W/m2]: the heat at rest
 * @param airCelsius        mean of the night [degC]
 * @param wind              mean air speed at the body [m/s]
 * @param requiredMinimal   IREQ minimal, resultant [m2 K/W]
 * @param requiredNeutral   IREQ neutral, resultant [m2 K/W]
 * @param available         resultant intrinsic insulation of the kit [m2 K/W]
 * @param exposureMinimal   duration limited exposure, minimal criterion [h]; infinite when not limited
 * @param exposureNeutral   the same at the neutral criterion [h]
 * @param insideRange       whether the conditions lie inside the standard's range of validity
 */
public record SecondOpinion(
        double heat,
        double airCelsius,
        double wind,
        double requiredMinimal,
        double requiredNeutral,
        double available,
        double exposureMinimal,
        double exposureNeutral,
        boolean insideRange) {}

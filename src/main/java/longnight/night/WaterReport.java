package longnight.night;

import java.util.List;

/**
 * The night's water. All masses in kg, water of every kind unless said.
 *
 * @param layers       by piece, in dressing order
 * @param fromSkin     vapour and sweat that the skin gave since dusk
 * @param fromOutside  rain, snow, rime and melt that came in since dusk
 * @param toAir        vapour that left since dusk
 * @param drained      liquid that dripped off since dusk
 * @param heldAtDusk   in all cloth at dusk
 * @param heldAtDawn   in all cloth at dawn
 * @param before       came aboard on the march and at halts before dusk
 * @param cost         shortfall heat of this night less that of the same night with dry clothes and no water [J]; NaN when
 *     not computed
 * @param closure      |held at dawn - at dusk - in + out| [kg]
 * @param trace        fine series: time [s] and water held, liquid and ice, by piece [kg], rows as in {@code layers}
 * @param traceTime    [s]
 */
public record WaterReport(
        List<Layer> layers,
        double fromSkin,
        double fromOutside,
        double toAir,
        double drained,
        double heldAtDusk,
        double heldAtDawn,
        double before,
        double cost,
        double closure,
        double[][] trace,
        double[] traceTime) {

    /** The same with its cost in shortfall heat [J]. */
    public WaterReport costing(double joules) {
        return new WaterReport(
                layers,
                fromSkin,
                fromOutside,
                toAir,
                drained,
                heldAtDusk,
                heldAtDawn,
                before,
                joules,
                closure,
                trace,
                traceTime);
    }

    /**
     * One piece.
     *
     * @param id       garment id
     * @param dryMass  of its cloth and fill over the body
     * @param liquidAtDusk liquid
     * @param iceAtDusk ice and frost
     * @param boundAtDusk bound in the fibres
     */
    public record Layer(
            String id,
            double dryMass,
            double liquidAtDusk,
            double iceAtDusk,
            double boundAtDusk,
            double liquidAtDawn,
            double iceAtDawn,
            double boundAtDawn) {}
}

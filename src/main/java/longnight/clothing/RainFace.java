package longnight.clothing;

import longnight.assumption.ParameterSet;
import longnight.clothing.GarmentSpec.Finish;

/** What the outer face of a piece does to rain; engineering estimates, no source (note C-76). */
public enum RainFace {
    /** Laminate, coating, rubber: sheds what its face cannot hold. */
    WATERPROOF,
    /** Tight woven cloth, leather. */
    TIGHT,
    /** Soft shell, open woven trousers. */
    LOOSE,
    /** Knit, fleece, cotton: takes all of it, has no finish worth counting. */
    OPEN;

    /** Above this a woven cloth counts as loose [L/(m2 s) at 100 Pa]; engineering estimate. */
    private static final double LOOSE_FROM = 30;

    static RainFace of(Fabric fabric, double airPermeability) {
        return switch (fabric) {
            case LAMINATE, COATED, RUBBER_FELT -> WATERPROOF;
            case LEATHER -> TIGHT;
            case NYLON_WOVEN -> airPermeability > LOOSE_FROM ? LOOSE : TIGHT;
            case SOFTSHELL -> LOOSE;
            default -> OPEN;
        };
    }

    /** Share of the water the face cannot hold that goes on inwards [1]; the rest runs off. */
    double passes(ParameterSet<ClothingParameter> parameters) {
        return switch (this) {
            case WATERPROOF -> 0;
            case TIGHT -> parameters.get(ClothingParameter.PASSED_BY_TIGHT_FACE);
            case LOOSE -> parameters.get(ClothingParameter.PASSED_BY_LOOSE_FACE);
            case OPEN -> 1;
        };
    }

    /** Share of the first rain that the finish throws off [1]. */
    double repels(Finish finish, ParameterSet<ClothingParameter> parameters) {
        if (this == OPEN) {
            return 0;
        }
        return parameters.get(
                switch (finish) {
                    case NEW -> ClothingParameter.FINISH_NEW;
                    case WORN -> ClothingParameter.FINISH_WORN;
                    case GONE -> ClothingParameter.FINISH_GONE;
                });
    }
}

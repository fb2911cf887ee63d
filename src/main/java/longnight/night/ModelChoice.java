package longnight.night;

import longnight.assumption.ParameterSet;
import longnight.body.BodyOptions;
import longnight.body.BodyParameter;
import longnight.clothing.ClothingParameter;

/**
 * Which model of body and clothing answers the question.
 *
 * @param body     constants of the body
 * @param options  forms of the body's laws
 * @param clothing constants of the clothing
 */
public record ModelChoice(
        ParameterSet<BodyParameter> body, BodyOptions options, ParameterSet<ClothingParameter> clothing) {

    /** Everything at its nominal value. */
    public static ModelChoice nominal() {
        return new ModelChoice(
                ParameterSet.nominal(BodyParameter.class),
                BodyOptions.nominal(),
                ParameterSet.nominal(ClothingParameter.class));
    }
}

package longnight.night;

import longnight.assumption.ParameterSet;
import longnight.body.BodyOptions;
import longnight.body.BodyParameter;
import longnight.clothing.ClothingParameter;
import longnight.outdoors.OutdoorParameter;

/**
 * Which model of body, clothing and outdoors answers the question.
 *
 * @param body     constants of the body
 * @param options  forms of the body's laws
 * @param clothing constants of the clothing
 * @param outdoors constants of the outdoors; laboratories have none
 */
public record ModelChoice(
        ParameterSet<BodyParameter> body,
        BodyOptions options,
        ParameterSet<ClothingParameter> clothing,
        ParameterSet<OutdoorParameter> outdoors) {

    /** Everything at its nominal value. */
    public static ModelChoice nominal() {
        return new ModelChoice(
                ParameterSet.nominal(BodyParameter.class),
                BodyOptions.nominal(),
                ParameterSet.nominal(ClothingParameter.class),
                ParameterSet.nominal(OutdoorParameter.class));
    }
}

package longnight.study;

import longnight.assumption.ModelParameter;
import longnight.body.BodyParameter;
import longnight.clothing.ClothingParameter;
import longnight.night.ModelChoice;
import longnight.outdoors.OutdoorParameter;

/** Models that differ from others in single constants. */
final class Models {
    private Models() {}

    /** The nominal model with the constants of one factor at their low (0) or high (1) ends. */
    static ModelChoice at(Factor factor, double end) {
        ModelChoice model = ModelChoice.nominal();
        for (Factor.Member member : factor.members()) {
            model = with(model, member.parameter(), end < 0.5 ? member.low() : member.high());
        }
        return model;
    }

    /** The same model with another value of one constant, in its own unit. */
    static ModelChoice with(ModelChoice model, ModelParameter parameter, double value) {
        if (parameter instanceof BodyParameter of) {
            return new ModelChoice(model.body().with(of, value), model.options(), model.clothing(), model.outdoors());
        }
        if (parameter instanceof ClothingParameter of) {
            return new ModelChoice(
                    model.body(), model.options(), model.clothing().with(of, value), model.outdoors());
        }
        return new ModelChoice(
                model.body(),
                model.options(),
                model.clothing(),
                model.outdoors().with((OutdoorParameter) parameter, value));
    }
}

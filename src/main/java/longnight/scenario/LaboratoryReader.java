package longnight.scenario;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import longnight.assumption.Guess;
import longnight.clothing.Outfit;
import longnight.figure.Zone;
import longnight.outdoors.Chamber;

/** A climatic chamber, and clothing given as resistances; the person lies or sits on a mesh, in touch with no ground. */
final class LaboratoryReader {
    private static final double SEA_LEVEL = 101325; // Pa, standard atmosphere (ISO 2533:1975)

    /** i_m of ordinary clothing: 0.38 (ISO 9920:2007). */
    private static final double USUAL_MOISTURE_INDEX = 0.38;

    private LaboratoryReader() {}

    static Chamber chamber(Section section, double duration) {
        List<Chamber.Setting> settings = new ArrayList<>();
        if (section.has("steps")) {
            for (String key : List.of("air", "radiant", "wind", "humidity")) {
                if (section.has(key)) {
                    throw section.keyAt(key).fault("\"" + key + "\" beside \"steps\"", "write it in the steps");
                }
            }
            List<Section> steps = section.sections("steps");
            if (steps.isEmpty()) {
                throw section.at("steps").fault("no steps", "write at least one, at 0 h");
            }
            double before = -1;
            for (Section step : steps) {
                double at = step.quantity("at");
                if (before < 0 ? at != 0 : !(at > before)) {
                    throw step.at("at")
                            .fault(
                                    "a step at " + step.text("at"),
                                    before < 0 ? "the first is at 0 h" : "each step is later than the one before");
                }
                if (at > duration) {
                    throw step.at("at").fault("a step at " + step.text("at"), "the plan ends before");
                }
                before = at;
                settings.add(setting(step, at));
            }
        } else {
            settings.add(setting(section, 0));
        }
        return Chamber.ramped(settings, duration, SEA_LEVEL, null);
    }

    private static Chamber.Setting setting(Section section, double at) {
        return new Chamber.Setting(
                at,
                section.quantity("air"),
                section.quantityOr("radiant", Double.NaN),
                section.quantity("wind"),
                section.quantity("humidity"));
    }

    /** Whether the laboratory says what is worn. */
    static boolean dresses(Section section) {
        return section.has("nude") && section.yes("nude") || section.has("clothing");
    }

    static Outfit.Given clothing(Section section, Findings findings) {
        boolean nude = section.yesOr("nude", false);
        if (nude && section.has("clothing")) {
            throw section.keyAt("clothing").fault("\"clothing\" beside \"nude: yes\"", "write one of them");
        }
        Map<Zone, Double> resistance = new EnumMap<>(Zone.class);
        if (!nude) {
            section.parts("clothing")
                    .forEach((word, value) -> resistance.put(
                            Zone.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')), value));
        }
        double index = section.quantityOr("moisture-index", USUAL_MOISTURE_INDEX);
        if (!nude && !section.has("moisture-index")) {
            findings.guesses.add(
                    Guess.number("laboratory clothing", "moisture index i_m", index, "1", "ISO 9920:2007"));
        }
        return new Outfit.Given(resistance, index);
    }
}

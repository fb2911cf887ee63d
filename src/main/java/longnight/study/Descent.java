package longnight.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import longnight.clothing.Outfit;
import longnight.night.NightResult;
import org.jspecify.annotations.Nullable;

/**
 * A light kit that holds, where the search gave up: from the warmest choices of all regions down, one region a step, as long as
 * it holds. Shows nothing of lighter kits.
 */
final class Descent {

    private final LeastQuestion question;
    private final List<Trial> trials;
    private final Map<Region, List<Part>> steps = new EnumMap<>(Region.class);

    Descent(LeastQuestion question, List<Trial> trials) {
        this.question = question;
        this.trials = trials;
        Field field = new Field(trials, question.pieces(), question.pads(), DressRules.isFreezing(trials));
        Cells cells = field.reference(trials.get(0));
        field.choices.forEach((region, choices) -> {
            List<Part> front = new ArrayList<>();
            Part all =
                    new Part(region, choices, IntStream.range(0, choices.size()).toArray());
            for (Part choice : all.warmest(cells, choices.size())) {
                if (front.isEmpty() || choice.lightest < front.get(front.size() - 1).lightest) {
                    front.add(choice);
                }
            }
            steps.put(region, front);
        });
    }

    /** The kit, or null when not even the warmest choices hold. */
    LeastAnswer.@Nullable Found run() {
        Map<Region, Part> at = new EnumMap<>(Region.class);
        steps.forEach((region, front) -> at.put(region, front.get(0)));
        LeastAnswer.@Nullable Found best = look(at);
        boolean goes = best != null;
        while (goes) {
            goes = false;
            for (Region region : Region.values()) {
                List<Part> front = steps.getOrDefault(region, List.of());
                int next = front.indexOf(at.get(region)) + 1;
                if (next >= front.size()) {
                    continue;
                }
                Map<Region, Part> lighter = new EnumMap<>(at);
                lighter.put(region, front.get(next));
                LeastAnswer.@Nullable Found found = look(lighter);
                if (found != null) {
                    best = found;
                    at.putAll(lighter);
                    goes = true;
                }
            }
        }
        return best;
    }

    private LeastAnswer.@Nullable Found look(Map<Region, Part> parts) {
        Node node = Node.of(parts);
        Outfit.Kit kit = node.kit();
        if (!DressRules.allows(kit, DressRules.isFreezing(trials))) {
            return null;
        }
        List<NightResult> nights =
                Together.ask(trials, trial -> trial.run(kit, question.settings()), question.threads());
        boolean holds = nights.stream().allMatch(night -> Pass.passes(night, question.demand()));
        return holds ? new LeastAnswer.Found(kit, node.mass(), nights) : null;
    }
}

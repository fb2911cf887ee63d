package longnight.study;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;
import longnight.clothing.PatchStack;
import longnight.figure.Posture;
import longnight.night.Scenario;

/** All choices of a wardrobe, and what bounds the demand of those that a node still has. */
final class Field {

    final Map<Region, List<Choice>> choices = new EnumMap<>(Region.class);
    final boolean freezing;
    private final List<Trial> trials;
    private final Map<Key, Cells> cells = new HashMap<>();
    private final List<Garment> wardrobe;

    private record Key(List<Double> areas, boolean grounded, Posture posture, Wearing wearing) {}

    Field(List<Trial> trials, List<Garment> pieces, List<Pad> pads, boolean freezing) {
        this.trials = trials;
        this.freezing = freezing;
        wardrobe = pieces;
        for (Region region : Region.values()) {
            choices.put(region, DressRules.choices(region, pieces, pads, freezing));
        }
        for (Trial trial : trials) {
            for (Trial.Stage stage : trial.stages()) {
                cells.computeIfAbsent(key(trial, stage), key -> measure(trial, key));
            }
        }
    }

    private Cells measure(Trial trial, Key key) {
        return new Cells(trial.areas(), key.posture(), key.grounded(), key.wearing(), wardrobe, choices);
    }

    private static Key key(Trial trial, Trial.Stage stage) {
        List<Double> areas = java.util.Arrays.stream(trial.areas()).boxed().toList();
        boolean grounded = trial.scenario().surroundings().ground() != null;
        return new Key(areas, grounded, stage.phase().posture(), stage.wearing());
    }

    private Cells cells(Trial trial, Trial.Stage stage) {
        return java.util.Objects.requireNonNull(cells.get(key(trial, stage)));
    }

    /** By which choices are told apart: the first trial at dusk. */
    Cells reference() {
        return reference(trials.get(0));
    }

    Cells reference(Trial first) {
        return cells(
                first,
                first.stages().stream()
                        .filter(stage -> !stage.before())
                        .findFirst()
                        .orElseThrow());
    }

    /** Demand that no kit of a node falls short of. */
    double relaxed(Trial trial, Map<Region, Part> node) {
        return trial.demandDry(night(trial, node));
    }

    /** The night in clothes at least as warm as every kit of a node. */
    Scenario night(Trial trial, Map<Region, Part> node) {
        return trial.in(stage -> clothes(trial, stage, node));
    }

    Outfit clothes(Trial trial, Trial.Stage stage, Map<Region, Part> node) {
        Cells skin = cells(trial, stage);
        Relaxed relaxed = new Relaxed(
                skin,
                node.values().stream()
                        .filter(part -> part.region != Region.PADS)
                        .toList());
        List<PatchStack> patches = stage.before()
                ? relaxed.coldest()
                : relaxed.warmest(
                        java.util.Objects.requireNonNull(node.get(Region.PADS)).taken());
        return new Outfit.Patches(Map.of(stage.phase().posture(), patches));
    }
}

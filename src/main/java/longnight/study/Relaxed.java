package longnight.study;

import java.util.ArrayList;
import java.util.List;
import longnight.clothing.LayerWater;
import longnight.clothing.Pad;
import longnight.clothing.PatchStack;
import longnight.clothing.law.WholeBody;
import longnight.study.Cells.Cell;
import longnight.study.Cells.Fact;

/**
 * Patches at least as warm as those of every kit that takes one choice from each of some sets: each cell has the best that any
 * choice of a region gives it, and regions that share a cell add up without crushing each other. What cannot be ordered by one
 * value is taken from its good side: no growth of the outer surface, the diameter of bare skin, cloth heat next to the skin.
 */
final class Relaxed {

    /** Most that still air gives bare skin in any posture [m2 K/W]; numerical bound, a test looks. */
    static final double BARE = 0.19;

    /** Where cloth heat is put, innermost first. */
    private static final double[] HEAT = {0.7, 0.2, 0.1};

    /** Heat capacity of what is pressed [J/(m2 K)]: little, it starts colder than it ends on a pad. */
    private static final double PRESSED = 500;

    private static final double LEAST_CLOTH = 1e-3;

    private final Cells cells;
    private final List<Part> parts;
    private final List<Envelope> envelopes;

    Relaxed(Cells cells, List<Part> parts) {
        this.cells = cells;
        this.parts = parts;
        envelopes = parts.stream().map(part -> part.envelope(cells)).toList();
    }

    /** The warmest that can be. */
    List<PatchStack> warmest(List<Choice> pads) {
        List<PatchStack> patches = new ArrayList<>();
        for (int c = 0; c < cells.exposed.size(); c++) {
            patches.add(warmest(c));
        }
        double[] cloth = new double[cells.pressed.size()];
        for (int c = 0; c < cloth.length; c++) {
            for (Envelope envelope : envelopes) {
                cloth[c] += envelope.pressedMost()[c];
            }
        }
        patches.addAll(onPads(cloth, pads));
        return patches;
    }

    /** The coldest that can be, for the time before dusk: who arrives warm gives off more. */
    List<PatchStack> coldest() {
        List<PatchStack> patches = new ArrayList<>();
        for (int c = 0; c < cells.exposed.size(); c++) {
            patches.add(coldest(c));
        }
        double[] cloth = new double[cells.pressed.size()];
        for (int c = 0; c < cloth.length; c++) {
            for (Envelope envelope : envelopes) {
                cloth[c] += envelope.pressedLeast()[c];
            }
        }
        patches.addAll(onPads(cloth, List.of()));
        return patches;
    }

    private PatchStack warmest(int c) {
        double cloth = 0;
        double film = Double.POSITIVE_INFINITY;
        double vapour = 0;
        double capacity = 0;
        double tight = 0;
        double openTight = 0;
        double diameter = 0;
        boolean mayBeBare = true;
        List<Envelope> over = over(c);
        for (Envelope e : over) {
            double here = e.most(c, Fact.CLOTH);
            cloth += here;
            film = Math.min(film, e.most(c, Fact.TOTAL) - here);
            vapour += e.most(c, Fact.VAPOUR);
            capacity += e.most(c, Fact.CAPACITY);
            tight += e.most(c, Fact.TIGHTNESS_OF_CLOTH);
            openTight += e.most(c, Fact.TIGHTNESS);
            diameter = Math.max(diameter, 1 / e.most(c, Fact.SLIMNESS));
            mayBeBare &= !e.barred()[c];
        }
        if (over.isEmpty()) {
            return bare(cells.exposed.get(c));
        }
        double total = cloth + film;
        if (mayBeBare) {
            total = Math.max(total, BARE);
        }
        return air(cells.exposed.get(c), diameter, total, vapour, capacity, over.size() == 1 ? openTight : tight);
    }

    /** What lies over a cell; two parts of few choices are taken together, pair by pair, crush and all. */
    private List<Envelope> over(int c) {
        List<Part> over = new ArrayList<>();
        for (int r = 0; r < parts.size(); r++) {
            if (envelopes.get(r).most(c, Fact.CLOTH) > 0) {
                over.add(parts.get(r));
            }
        }
        if (over.size() == 2 && over.get(0).pairsWith(over.get(1))) {
            return List.of(over.get(0).envelope(cells, over.get(1)));
        }
        return over.stream().map(part -> part.envelope(cells)).toList();
    }

    private PatchStack coldest(int c) {
        double total = 0;
        double vapour = 0;
        boolean covered = false;
        for (Envelope e : envelopes) {
            if (e.barred()[c]) {
                covered = true;
                total = Math.max(total, e.least(c, Fact.TOTAL));
                vapour = Math.max(vapour, e.least(c, Fact.VAPOUR));
            }
        }
        Cell cell = cells.exposed.get(c);
        return covered ? air(cell, cell.diameter(), total, vapour, 0, 0) : bare(cell);
    }

    private static PatchStack air(
            Cell cell, double diameter, double total, double vapour, double capacity, double tightness) {
        int n = HEAT.length;
        double resistance = Math.max(LEAST_CLOTH, total - WholeBody.STILL_AIR);
        double[] resistances = new double[n];
        double[] vapours = new double[n];
        double[] capacities = new double[n];
        for (int k = 0; k < n; k++) {
            resistances[k] = resistance / n;
            vapours[k] = vapour / n;
            capacities[k] = Math.max(1, HEAT[k] * capacity);
        }
        return new PatchStack(
                cell.zone(),
                cell.area(),
                false,
                new String[] {"inner", "middle", "outer"},
                resistances,
                vapours,
                capacities,
                new double[n],
                1,
                diameter,
                tightness > 0 ? 1 / tightness : Double.POSITIVE_INFINITY,
                0,
                0,
                0,
                new LayerWater[0],
                false);
    }

    private static PatchStack bare(Cell cell) {
        double[] none = new double[0];
        return new PatchStack(
                cell.zone(),
                cell.area(),
                false,
                new String[0],
                none,
                none,
                none,
                none,
                1,
                cell.diameter(),
                Double.POSITIVE_INFINITY,
                0,
                0,
                0,
                new LayerWater[0],
                false);
    }

    /** What is pressed, each zone on the best of the pads. */
    private List<PatchStack> onPads(double[] cloth, List<Choice> pads) {
        List<PatchStack> best = new ArrayList<>(onPads(cloth, new Choice(List.of(), List.of(), 0, false)));
        for (Choice choice : pads) {
            List<PatchStack> other = onPads(cloth, choice);
            for (int c = 0; c < best.size(); c++) {
                if (other.get(c).padResistance() > best.get(c).padResistance()) {
                    best.set(c, other.get(c));
                }
            }
        }
        return best;
    }

    private List<PatchStack> onPads(double[] cloth, Choice choice) {
        List<Pad> pads = cells.wearing.pads(choice.pads());
        List<PatchStack> patches = new ArrayList<>();
        for (PatchStack patch : cells.onPads(cloth, pads)) {
            patches.add(light(patch));
        }
        return patches;
    }

    private static PatchStack light(PatchStack patch) {
        int n = patch.layers();
        double[] capacity = new double[n];
        java.util.Arrays.fill(capacity, PRESSED);
        return new PatchStack(
                patch.zone(),
                patch.area(),
                true,
                patch.layerIds(),
                patch.resistance(),
                patch.vapourResistance(),
                capacity,
                new double[n],
                1,
                patch.outerDiameter(),
                patch.airPermeability(),
                patch.padResistance(),
                Math.min(PRESSED, patch.padHeatCapacity()),
                patch.contactRadius(),
                new LayerWater[0],
                false);
    }
}

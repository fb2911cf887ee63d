package longnight.night;

import java.util.ArrayList;
import java.util.List;
import longnight.clothing.LayerWater;
import longnight.clothing.PatchStack;
import longnight.clothing.WaterClass;
import longnight.clothing.law.WetLoft;
import org.jspecify.annotations.Nullable;

/**
 * The cloth over one patch cut into elements, innermost first: each layer gives its fill in up to four slices of equal
 * resistance, then its cloth (lining and face together). A node of the network sits in the middle of each element. All values
 * per skin area.
 */
final class Chain {

    /** A slice of fill has at most about this resistance [m2 K/W]; numerical choice, see the decisions. */
    private static final double SLICE = 0.2;

    private static final int MOST_SLICES = 4;

    final PatchStack stack;
    final int elements;
    final double[] resistance;
    final double[] gap;
    final double[] vapour;
    final double[] gapVapour;
    final double[] heatCapacity;
    final double[] mass;
    final double[] hold;
    final double[] bindingTime;
    final @Nullable WaterClass[] kind;
    final @Nullable WetLoft[] loft;
    final int[] layer;

    private record Element(
            int layer,
            double resistance,
            double gap,
            double vapour,
            double gapVapour,
            double heatCapacity,
            double mass,
            double hold,
            double bindingTime,
            @Nullable WaterClass kind,
            @Nullable WetLoft loft) {}

    Chain(PatchStack stack) {
        this.stack = stack;
        List<Element> list = new ArrayList<>();
        for (int k = 0; k < stack.layers(); k++) {
            if (stack.water().length == 0) {
                list.add(new Element(
                        k,
                        stack.resistance()[k],
                        0,
                        stack.vapourResistance()[k],
                        0,
                        stack.heatCapacity()[k],
                        0,
                        0,
                        1200,
                        null,
                        null));
                continue;
            }
            LayerWater w = stack.water()[k];
            double whole = w.clothMass() + w.fillMass();
            double perMass = stack.heatCapacity()[k] / whole;
            double gap = w.gapResistance();
            double gapVapour = w.gapVapour();
            if (w.fill() != null) {
                int slices = Math.min(MOST_SLICES, Math.max(1, (int) Math.ceil(w.fillResistance() / SLICE)));
                for (int i = 0; i < slices; i++) {
                    list.add(new Element(
                            k,
                            w.fillResistance() / slices,
                            i == 0 ? gap : 0,
                            w.fillVapour() / slices,
                            i == 0 ? gapVapour : 0,
                            perMass * w.fillMass() / slices,
                            w.fillMass() / slices,
                            w.fillHold() / slices,
                            w.sorptionTime(),
                            w.fill(),
                            w.fillLoft()));
                }
                gap = 0;
                gapVapour = 0;
            }
            list.add(new Element(
                    k,
                    w.clothResistance(),
                    gap,
                    w.clothVapour(),
                    gapVapour,
                    perMass * w.clothMass(),
                    w.clothMass(),
                    w.clothHold(),
                    w.sorptionTime(),
                    w.cloth(),
                    w.clothLoft()));
        }
        elements = list.size();
        resistance = list.stream().mapToDouble(Element::resistance).toArray();
        gap = list.stream().mapToDouble(Element::gap).toArray();
        vapour = list.stream().mapToDouble(Element::vapour).toArray();
        gapVapour = list.stream().mapToDouble(Element::gapVapour).toArray();
        heatCapacity = list.stream().mapToDouble(Element::heatCapacity).toArray();
        mass = list.stream().mapToDouble(Element::mass).toArray();
        hold = list.stream().mapToDouble(Element::hold).toArray();
        bindingTime = list.stream().mapToDouble(Element::bindingTime).toArray();
        layer = list.stream().mapToInt(Element::layer).toArray();
        kind = list.stream().map(Element::kind).toArray(WaterClass[]::new);
        loft = list.stream().map(Element::loft).toArray(WetLoft[]::new);
    }

    /** True when water is followed here: real cloth, in the air or pressed on the ground. */
    boolean breathes() {
        return !stack.prescribed() && stack.water().length > 0 && elements > 0;
    }
}

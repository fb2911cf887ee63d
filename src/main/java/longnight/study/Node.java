package longnight.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import longnight.clothing.Dressing;
import longnight.clothing.Garment;
import longnight.clothing.Outfit;
import longnight.clothing.Pad;

/**
 * All kits that take one choice from each of some parts.
 *
 * @param parts by region
 * @param mass  of the lightest of them, or less [kg]
 * @param open  true when its bound is as good as that of a node already found open: then it need not be asked
 */
record Node(Map<Region, Part> parts, double mass, boolean open) {

    /** Conductance over that of the whole by which a half is as warm as the whole; orders work, no more. */
    private static final double AS_WARM = 1.0005;

    static Node of(Map<Region, Part> parts) {
        return of(parts, false);
    }

    private static Node of(Map<Region, Part> parts, boolean open) {
        double mass = 0;
        for (Part part : parts.values()) {
            mass += part.lightest;
        }
        return new Node(parts, mass, open);
    }

    Part part(Region region) {
        return Objects.requireNonNull(parts.get(region));
    }

    boolean isOneKit() {
        return parts.values().stream().allMatch(part -> part.set.length == 1);
    }

    /** How many kits there are; with the head left bare they do not count in frost. */
    double kits(boolean freezing) {
        double all = 1;
        for (Part part : parts.values()) {
            all *= part.set.length;
        }
        return freezing ? all - bareHeaded() : all;
    }

    private double bareHeaded() {
        double bare = 1;
        for (Part part : parts.values()) {
            bare *= switch (part.region) {
                case TORSO, HEAD -> part.set.length - part.hooded;
                default -> part.set.length;
            };
        }
        return bare;
    }

    Outfit.Kit kit() {
        List<Garment> pieces = new ArrayList<>();
        List<Pad> pads = new ArrayList<>();
        for (Part part : parts.values()) {
            pieces.addAll(part.only().pieces());
            pads.addAll(part.only().pads());
        }
        return new Outfit.Kit(Dressing.inOrder(pieces), List.copyOf(pads));
    }

    /** Two nodes with the same kits between them: parted where that tells most, in warmth and in mass. */
    List<Node> split(Cells cells) {
        List<Part> best = List.of();
        double most = -1;
        for (Part part : parts.values()) {
            if (part.set.length > 1 && part.halves(cells).gain() > most) {
                most = part.halves(cells).gain();
                best = part.halves(cells).parts();
            }
        }
        List<Node> nodes = new ArrayList<>();
        for (Part half : best) {
            Map<Region, Part> other = new EnumMap<>(parts);
            other.put(half.region, half);
            boolean asWarm = half.conductance(cells) <= part(half.region).conductance(cells) * AS_WARM;
            nodes.add(of(other, asWarm));
        }
        return nodes;
    }
}

package longnight.night;

import java.util.HashMap;
import java.util.Map;
import longnight.body.Body;
import longnight.clothing.PatchStack;

/** What goes over from one phase to the next: the body, what is worn and its water, the seat. */
final class Handover {

    private static final double[] NONE = new double[3];

    private final Network net;

    Handover(Network net) {
        this.net = net;
    }

    /** Writes what the cloth holds and how warm it is into a closet. */
    void putInto(Closet closet, double[] y) {
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                closet.clear(place(p, k));
            }
        }
        Map<String, double[]> warmth = new HashMap<>();
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                int i = net.node(p, k);
                String key = key(p, k);
                Closet.Entry entry = closet.of(key);
                entry.liquid += net.water.liquid[i];
                entry.ice += net.water.ice[i];
                entry.bound += net.water.bound[i];
                entry.dry += net.water.mass[i];
                if (k == net.chains[p].elements - 1) {
                    entry.rained = Math.max(entry.rained, net.rained[p]);
                }
                double[] w = warmth.computeIfAbsent(key, x -> new double[2]);
                w[0] += net.capacity[i] * y[i];
                w[1] += net.capacity[i];
                entry.celsius = w[0] / w[1];
            }
        }
    }

    /**
     * The state with which this phase begins: the body as it was, cloth that was worn as warm as it was, cloth from the pack as
     * cold as the air, water shared over a piece's patches by dry mass, pad and ground as cold as the place.
     */
    double[] continueFrom(Network before, double[] last, Closet closet) {
        double[] y = net.start();
        System.arraycopy(last, before.sleep, y, net.sleep, 3);
        if (hasShapeOf(before)) {
            System.arraycopy(last, 0, y, 0, net.nodes);
            System.arraycopy(before.water.liquid, 0, net.water.liquid, 0, net.nodes);
            System.arraycopy(before.water.ice, 0, net.water.ice, 0, net.nodes);
            System.arraycopy(before.water.bound, 0, net.water.bound, 0, net.nodes);
            System.arraycopy(before.rained, 0, net.rained, 0, net.patches);
            return y;
        }
        System.arraycopy(last, 0, y, 0, Body.NODES);
        Map<String, Integer> slices = new HashMap<>();
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                slices.merge(place(p, k), slice(p, k) + 1, Math::max);
            }
        }
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                int i = net.node(p, k);
                // slice by slice where the piece is cut alike, else spread over it by dry mass
                Closet.Entry entry = closet.slices(place(p, k)) == slices.getOrDefault(place(p, k), 0)
                        ? closet.of(key(p, k))
                        : closet.whole(place(p, k));
                y[i] = Double.isNaN(entry.celsius) ? net.around.airCelsius : entry.celsius;
                if (entry.dry <= 0) {
                    net.water.liquid[i] += net.water.mass[i] * net.plan.damp().getOrDefault(net.piece(p, k), 0.0);
                    net.entered += net.water.liquid[i] + net.water.bound[i];
                } else {
                    double share = net.water.mass[i] / entry.dry;
                    net.water.liquid[i] = share * entry.liquid;
                    net.water.ice[i] = share * entry.ice;
                    net.water.bound[i] = share * entry.bound;
                }
                if (k == net.chains[p].elements - 1) {
                    net.rained[p] = entry.rained;
                }
            }
        }
        rescale(closet);
        if (net.posture == before.posture) {
            keepSeat(before, last, y);
        }
        return y;
    }

    private boolean hasShapeOf(Network other) {
        if (net.patches != other.patches || net.nodes != other.nodes) {
            return false;
        }
        for (int p = 0; p < net.patches; p++) {
            if (net.chainLength[p] != other.chainLength[p]
                    || net.chains[p].elements != other.chains[p].elements
                    || net.stacks[p].contact() != other.stacks[p].contact()
                    || net.stacks[p].zone() != other.stacks[p].zone()
                    || net.stacks[p].area() != other.stacks[p].area()) {
                return false;
            }
            for (int k = 0; k < net.chains[p].elements; k++) {
                if (!key(p, k).equals(new Handover(other).key(p, k))
                        || net.own[net.node(p, k)] != other.own[other.node(p, k)]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Who does not get up keeps pad and ground as warm as they were. */
    private void keepSeat(Network before, double[] last, double[] y) {
        boolean[] taken = new boolean[before.patches];
        for (int p = 0; p < net.patches; p++) {
            for (int q = 0; net.stacks[p].contact() && q < before.patches; q++) {
                PatchStack a = net.stacks[p];
                PatchStack b = before.stacks[q];
                int under = net.chainLength[p] - net.chains[p].elements;
                if (!taken[q]
                        && b.contact()
                        && a.zone() == b.zone()
                        && Math.abs(a.area() - b.area()) < 1e-9
                        && under == before.chainLength[q] - before.chains[q].elements) {
                    taken[q] = true;
                    for (int k = 0; k < under; k++) {
                        y[net.node(p, net.chains[p].elements + k)] =
                                last[before.node(q, before.chains[q].elements + k)];
                    }
                    break;
                }
            }
        }
    }

    /** Dry mass per zone differs a little between postures; what a piece holds must not. */
    private void rescale(Closet closet) {
        Map<String, double[]> sums = new HashMap<>();
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                int i = net.node(p, k);
                double[] sum = sums.computeIfAbsent(place(p, k), x -> new double[3]);
                sum[0] += net.water.liquid[i];
                sum[1] += net.water.ice[i];
                sum[2] += net.water.bound[i];
            }
        }
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                Closet.Entry entry = closet.whole(place(p, k));
                if (entry.dry <= 0) {
                    continue;
                }
                int i = net.node(p, k);
                double[] sum = sums.getOrDefault(place(p, k), NONE);
                net.water.liquid[i] *= sum[0] > 0 ? entry.liquid / sum[0] : 0.0;
                net.water.ice[i] *= sum[1] > 0 ? entry.ice / sum[1] : 0.0;
                net.water.bound[i] *= sum[2] > 0 ? entry.bound / sum[2] : 0.0;
            }
        }
    }

    /** Wets a piece at the start: liquid per dry mass [kg/kg]. */
    void dampen(String garment, double perDryMass) {
        for (int p = 0; p < net.patches; p++) {
            for (int k = 0; k < net.chains[p].elements; k++) {
                if (net.piece(p, k).equals(garment)) {
                    int i = net.node(p, k);
                    net.water.liquid[i] += perDryMass * net.water.mass[i];
                }
            }
        }
    }

    /** Piece and zone of an element, and which slice of the piece it is. */
    private String key(int p, int k) {
        return place(p, k) + Closet.BREAK + slice(p, k);
    }

    private String place(int p, int k) {
        return net.piece(p, k) + Closet.BREAK + net.stacks[p].zone();
    }

    private int slice(int p, int k) {
        int slice = 0;
        while (k - slice > 0 && net.chains[p].layer[k - slice - 1] == net.chains[p].layer[k]) {
            slice++;
        }
        return slice;
    }
}

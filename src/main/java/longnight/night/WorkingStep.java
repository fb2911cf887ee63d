package longnight.night;

import java.util.Arrays;
import longnight.body.Body;
import longnight.figure.BodySegment;

/**
 * The working integrator: a two-stage linearly implicit step, second order and L-stable, over the arrow-shaped network.
 *
 * <p>{@code (C - g h K) k1 = F(y)}, {@code (C - g h K) k2 = F(y + h k1) - 2 C k1}, {@code y += h (3/2 k1 + 1/2 k2)} with
 * g = 1 - 1/sqrt 2, implicit in conduction, blood and surface exchange, explicit in the controllers, the breath and the
 * small thigh link. Cloth chains are eliminated into the skin nodes, the four body layers into the blood, and one equation
 * for the blood is left.
 *
 * <p>The integral of the temperatures that belongs to a step, {@code h (y1 + y2 + g h (k1 + k2)) / 2}, is handed out too:
 * every flux is linear in it, so heat booked with it closes to rounding.
 *
 * <p><b>Source.</b> Verwer, Spee, Blom and Hundsdorfer 1999, SIAM J Sci Comput 20:1456, method ROS2 (from memory); the order
 * is tested here by halving the step.
 */
final class WorkingStep {

    private static final double GAMMA = 1.0 - 1.0 / Math.sqrt(2.0);
    private static final int S = BodySegment.COUNT;
    private static final int CORE = Body.CORE;
    private static final int MUSCLE = Body.MUSCLE;
    private static final int FAT = Body.FAT;
    private static final int SKIN = Body.SKIN;
    private static final int BLOOD = Body.BLOOD;

    private final Network net;
    private final double[] d1;
    private final double[] d2;
    private final double[] d3;
    private final double[] rate;
    private final double[] k1;
    private final double[] k2;
    private final double[] y2;
    private final double[] inverse;
    private final double[] carry;
    private final double[] skinExtra = new double[S];
    private final double[] diagonal = new double[BLOOD];
    private final double[] column = new double[BLOOD];
    private final double[] frozen = new double[BLOOD];
    private double bloodDiagonal;
    private double gh;

    /** Temperatures integrated since the last {@link #clear} [K s]. */
    final double[] integral;
    /** Heat made since then [J]. */
    double made;

    WorkingStep(Network net) {
        this.net = net;
        double[][] d = net.body.conductances();
        d1 = d[0];
        d2 = d[1];
        d3 = d[2];
        rate = new double[net.size];
        k1 = new double[net.size];
        k2 = new double[net.size];
        y2 = new double[net.size];
        inverse = new double[net.nodes];
        carry = new double[net.nodes];
        integral = new double[net.nodes];
    }

    /** Forgets the integrals. */
    void clear() {
        Arrays.fill(integral, 0.0);
        made = 0;
    }

    /** Factors the chains for a step length; to be called after every relinearisation and change of step. */
    void prepare(double h) {
        gh = GAMMA * h;
        double[] inner = net.inner;
        double[] outer = net.outer;
        double[] capacity = net.capacity;
        for (int s = 0; s < S; s++) {
            skinExtra[s] = gh * (net.bareAir[s] + net.bareRadiation[s] + net.vapourSlope[s]);
        }
        int levels = net.levelCount.length;
        for (int k = levels - 1; k >= 0; k--) {
            int start = net.levelStart[k];
            int count = net.levelCount[k];
            int above = k + 1 < levels ? net.levelCount[k + 1] : 0;
            int next = net.levelStart[k + 1];
            for (int p = 0; p < count; p++) {
                int i = start + p;
                double d = capacity[i] + gh * (inner[i] + outer[i]);
                if (p < above) {
                    d += gh * inner[next + p] * (1.0 - carry[next + p]);
                }
                inverse[i] = 1.0 / d;
                carry[i] = gh * inner[i] * inverse[i];
            }
        }
        if (levels > 0) {
            int start = net.levelStart[0];
            for (int p = 0; p < net.levelCount[0]; p++) {
                skinExtra[net.segmentOf[p]] += gh * net.inner[start + p] * (1.0 - carry[start + p]);
            }
        }
    }

    /** Advances the state by one step of the prepared length. */
    void advance(double time, double h, double[] y) {
        net.rates(time, y, rate);
        double made1 = net.control.made;
        factorBody();
        solve(rate, k1);
        int size = net.size;
        for (int i = 0; i < size; i++) {
            y2[i] = y[i] + h * k1[i];
        }
        net.rates(time + h, y2, rate);
        double made2 = net.control.made;
        int nodes = net.nodes;
        double[] capacity = net.capacity;
        for (int i = 0; i < nodes; i++) {
            rate[i] -= 2.0 * capacity[i] * k1[i];
        }
        for (int i = nodes; i < size; i++) {
            rate[i] -= 2.0 * k1[i];
        }
        solve(rate, k2);
        double half = 0.5 * h;
        for (int i = 0; i < nodes; i++) {
            integral[i] += half * (y[i] + y2[i] + gh * (k1[i] + k2[i]));
        }
        for (int i = 0; i < size; i++) {
            y[i] += half * (3.0 * k1[i] + k2[i]);
        }
        made += half * (made1 + made2);
    }

    private void factorBody() {
        // the flows of the first stage stay in the matrix of both
        System.arraycopy(net.control.flow, 0, frozen, 0, BLOOD);
        double[] flow = frozen;
        double[] capacity = net.capacity;
        double blood = capacity[BLOOD];
        for (int s = 0; s < S; s++) {
            double bc = gh * flow[CORE + s];
            double bm = gh * flow[MUSCLE + s];
            double bf = gh * flow[FAT + s];
            double bk = gh * flow[SKIN + s];
            double g1 = gh * d1[s];
            double g2 = gh * d2[s];
            double g3 = gh * d3[s];
            double c = 1.0 / (capacity[CORE + s] + bc + g1);
            double e1 = g1 * c;
            double m = 1.0 / (capacity[MUSCLE + s] + bm + g1 + g2 - e1 * g1);
            double e2 = g2 * m;
            double f = 1.0 / (capacity[FAT + s] + bf + g2 + g3 - e2 * g2);
            double e3 = g3 * f;
            double k = 1.0 / (capacity[SKIN + s] + bk + g3 + skinExtra[s] - e3 * g3);
            diagonal[CORE + s] = c;
            diagonal[MUSCLE + s] = m;
            diagonal[FAT + s] = f;
            diagonal[SKIN + s] = k;
            // the blood column
            double um = bm + e1 * bc;
            double uf = bf + e2 * um;
            double uk = bk + e3 * uf;
            double xk = uk * k;
            double xf = uf * f + e3 * xk;
            double xm = um * m + e2 * xf;
            double xc = bc * c + e1 * xm;
            column[SKIN + s] = xk;
            column[FAT + s] = xf;
            column[MUSCLE + s] = xm;
            column[CORE + s] = xc;
            blood += bc * (1.0 - xc) + bm * (1.0 - xm) + bf * (1.0 - xf) + bk * (1.0 - xk);
        }
        bloodDiagonal = blood;
    }

    private void solve(double[] right, double[] x) {
        int levels = net.levelCount.length;
        for (int k = levels - 1; k > 0; k--) {
            int start = net.levelStart[k];
            int below = net.levelStart[k - 1];
            int count = net.levelCount[k];
            for (int p = 0; p < count; p++) {
                right[below + p] += carry[start + p] * right[start + p];
            }
        }
        if (levels > 0) {
            int start = net.levelStart[0];
            for (int p = 0; p < net.levelCount[0]; p++) {
                right[SKIN + net.segmentOf[p]] += carry[start + p] * right[start + p];
            }
        }
        double bloodRight = right[BLOOD];
        for (int s = 0; s < S; s++) {
            double e1 = gh * d1[s] * diagonal[CORE + s];
            double e2 = gh * d2[s] * diagonal[MUSCLE + s];
            double e3 = gh * d3[s] * diagonal[FAT + s];
            double rm = right[MUSCLE + s] + e1 * right[CORE + s];
            double rf = right[FAT + s] + e2 * rm;
            double rk = right[SKIN + s] + e3 * rf;
            double xk = rk * diagonal[SKIN + s];
            double xf = rf * diagonal[FAT + s] + e3 * xk;
            double xm = rm * diagonal[MUSCLE + s] + e2 * xf;
            double xc = right[CORE + s] * diagonal[CORE + s] + e1 * xm;
            x[SKIN + s] = xk;
            x[FAT + s] = xf;
            x[MUSCLE + s] = xm;
            x[CORE + s] = xc;
            bloodRight += gh
                    * (frozen[CORE + s] * xc + frozen[MUSCLE + s] * xm + frozen[FAT + s] * xf + frozen[SKIN + s] * xk);
        }
        double blood = bloodRight / bloodDiagonal;
        x[BLOOD] = blood;
        for (int i = 0; i < BLOOD; i++) {
            x[i] += column[i] * blood;
        }
        if (levels > 0) {
            int start = net.levelStart[0];
            for (int p = 0; p < net.levelCount[0]; p++) {
                x[start + p] = right[start + p] * inverse[start + p] + carry[start + p] * x[SKIN + net.segmentOf[p]];
            }
        }
        for (int k = 1; k < levels; k++) {
            int start = net.levelStart[k];
            int below = net.levelStart[k - 1];
            int count = net.levelCount[k];
            for (int p = 0; p < count; p++) {
                x[start + p] = right[start + p] * inverse[start + p] + carry[start + p] * x[below + p];
            }
        }
        int slow = net.sleep;
        x[slow] = right[slow] / (1.0 + gh / Network.SLEEP_TIME);
        x[slow + 1] = right[slow + 1] / (1.0 + gh / Network.LEVEL_TIME);
        x[slow + 2] = right[slow + 2] / (1.0 + gh / Network.LAG_TIME);
    }
}

package longnight.night;

import java.util.Arrays;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince54Integrator;

/** Takes a network from dusk to dawn with either integrator and keeps the diary. */
final class Runner {

    private static final double LOWEST_CORE = 32.0;

    private final Network net;
    private final NumericalSettings settings;
    final Network.Books books = new Network.Books();
    final Diary diary;
    final double[] state;
    /** Time at which the run stopped early [s]; NaN when it reached dawn. */
    double stopped = Double.NaN;

    double endTime;

    Runner(Network net, NumericalSettings settings) {
        this.net = net;
        this.settings = settings;
        state = net.start();
        diary = new Diary(net, state);
    }

    Network network() {
        return net;
    }

    void run() {
        Course course = new Course(net.plan, net.surroundings, settings);
        Integrator integrator = settings.reference() ? new Reference() : new Working();
        diary.note(0.0, state, books, true);
        for (int i = 0; i + 1 < course.stops.length; i++) {
            double from = course.stops[i];
            double to = course.stops[i + 1];
            integrator.advance(from, to, course.stepsAfter(i));
            endTime = to;
            boolean below = net.body.coreMean(state) < LOWEST_CORE;
            diary.note(to, state, books, course.isRow[i + 1] || below);
            if (below) {
                stopped = to;
                return;
            }
        }
    }

    private interface Integrator {
        void advance(double from, double to, int steps);
    }

    private final class Working implements Integrator {
        private final WorkingStep step = new WorkingStep(net);

        @Override
        public void advance(double from, double to, int steps) {
            double h = (to - from) / steps;
            net.relinearise(0.5 * (from + to), state);
            net.moveWater(to - from, state);
            step.prepare(h);
            step.clear();
            for (int i = 0; i < steps; i++) {
                step.advance(from + i * h, h, state);
            }
            net.book(to - from, step.integral, step.made, books);
        }
    }

    /** The same right-hand side, the surface exchange taken afresh at every stage, the books as extra rows of the state. */
    private final class Reference implements Integrator, OrdinaryDifferentialEquation {
        private final int ways = books.way.length;
        private final int parts = books.part.length;
        private final double[] rate = new double[net.size];
        private final DormandPrince54Integrator integrator =
                new DormandPrince54Integrator(1e-9, 300.0, settings.tolerance(), settings.tolerance());

        @Override
        public int getDimension() {
            return net.size + 1 + ways + parts;
        }

        @Override
        public double[] computeDerivatives(double time, double[] y) {
            net.relinearise(time, y);
            net.rates(time, y, rate);
            double[] derivative = new double[getDimension()];
            for (int i = 0; i < net.nodes; i++) {
                derivative[i] = rate[i] / net.capacity[i];
            }
            System.arraycopy(rate, net.nodes, derivative, net.nodes, net.size - net.nodes);
            Network.Books flow = new Network.Books();
            net.book(1.0, y, net.control.made, flow);
            derivative[net.size] = flow.made;
            System.arraycopy(flow.way, 0, derivative, net.size + 1, ways);
            System.arraycopy(flow.part, 0, derivative, net.size + 1 + ways, parts);
            return derivative;
        }

        @Override
        public void advance(double from, double to, int steps) {
            double[] y = Arrays.copyOf(state, getDimension());
            // books are integrated from zero over each stretch in kJ-sized numbers, so that the tolerance bites on them
            ODEStateAndDerivative end = integrator.integrate(this, new ODEState(from, y), to);
            double[] at = end.getPrimaryState();
            System.arraycopy(at, 0, state, 0, net.size);
            books.made += at[net.size];
            for (int i = 0; i < ways; i++) {
                books.way[i] += at[net.size + 1 + i];
            }
            for (int i = 0; i < parts; i++) {
                books.part[i] += at[net.size + 1 + ways + i];
            }
        }
    }
}

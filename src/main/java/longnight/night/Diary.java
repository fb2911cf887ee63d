package longnight.night;

import java.util.ArrayList;
import java.util.List;
import longnight.body.Body;
import longnight.figure.BodySegment;

/** Writes down a run at its stops: fine trace, hour rows, books. */
final class Diary {

    private static final double WINDOW = 4 * 3600.0;
    private static final int HAND = Body.SKIN + BodySegment.HAND.ordinal();
    private static final int FOOT = Body.SKIN + BodySegment.FOOT.ordinal();
    private static final double DAY = 86400.0;

    private Network net;
    private final NightPlan plan;
    private final boolean brief;
    private final double rest;
    private final double core0;
    private final double shell0;
    private double cloth0;
    private double clothBefore;
    private final double coreCapacity;
    private final double setMean;
    private final List<double[]> trace = new ArrayList<>();
    private final List<HourRow> rows = new ArrayList<>();
    private final double window;

    final List<Double> waterTimes = new ArrayList<>();
    final List<java.util.Map<String, Double>> waterByPiece = new ArrayList<>();

    private double lastRow;
    private double madeAtRow;
    private final double[] wayAtRow = new double[Way.values().length];
    private final double[] partAtRow = new double[BodySegment.COUNT];
    private final double[] way = new double[Way.values().length];

    double lowestCore = Double.POSITIVE_INFINITY;
    double storedCore;
    double storedShell;
    double storedClothing;
    double shortfall;
    double lossesByWay;

    private enum Column {
        TIME,
        SHORTFALL,
        HEAT_MADE,
        SHELL,
        CORE,
        DEFICIT,
        LINE_35,
        LINE_32,
        DEMAND,
        CORE_CELSIUS,
        SKIN,
        HAND,
        FOOT,
        LOSSES
    }

    /** @param brief true to keep the fine trace alone */
    Diary(Network net, NightPlan plan, double[] start, boolean brief) {
        this.net = net;
        this.brief = brief;
        this.plan = plan;
        rest = net.body.restHeat();
        core0 = net.coreStore(start);
        shell0 = net.shellStore(start);
        cloth0 = net.clothingStore(start);
        coreCapacity = net.body.coreCapacity();
        setMean = net.body.coreMean(net.body.neutralState());
        window = Math.min(WINDOW, plan.duration());
    }

    /** A new phase: other cloth from here on. */
    void change(Network next, double[] begin) {
        net = next;
        clothBefore = storedClothing;
        cloth0 = next.clothingStore(begin);
    }

    /** Notes a stop. */
    void note(double time, double[] y, Network.Books books, boolean row) {
        Body body = net.body;
        storedCore = net.coreStore(y) - core0;
        storedShell = net.shellStore(y) - shell0;
        storedClothing = clothBefore + net.clothingStore(y) - cloth0;
        System.arraycopy(books.way, 0, way, 0, way.length);
        way[Way.CLOTHING_STORE.ordinal()] = storedClothing;
        double losses = 0;
        for (double w : way) {
            losses += w;
        }
        lossesByWay = losses;
        shortfall = losses - rest * time;
        double paidByHeat = books.made - rest * time;
        double clock = plan.clockActive() ? plan.startOfDay() + time : Double.NaN;
        Body.Control control = net.control;
        body.control(y, y[net.sleep], y[net.sleep + 1], y[net.sleep + 2], clock, net.circumstances, control);
        double core = body.coreMean(y);
        lowestCore = Math.min(lowestCore, core);
        double level = setMean + control.setShift;
        double deficit = coreCapacity * (level - core);
        double[] line = new double[Column.values().length];
        line[Column.TIME.ordinal()] = time;
        line[Column.SHORTFALL.ordinal()] = shortfall;
        line[Column.HEAT_MADE.ordinal()] = paidByHeat;
        line[Column.SHELL.ordinal()] = -storedShell;
        line[Column.CORE.ordinal()] = -storedCore;
        line[Column.DEFICIT.ordinal()] = deficit;
        line[Column.LINE_35.ordinal()] = coreCapacity * (level - 35.0);
        line[Column.LINE_32.ordinal()] = coreCapacity * (level - 32.0);
        line[Column.CORE_CELSIUS.ordinal()] = core;
        line[Column.SKIN.ordinal()] = control.meanSkin;
        line[Column.HAND.ordinal()] = y[HAND];
        line[Column.FOOT.ordinal()] = y[FOOT];
        line[Column.LOSSES.ordinal()] = losses;
        trace.add(line);
        line[Column.DEMAND.ordinal()] = demandAt(time);
        if (brief) {
            return;
        }
        if (row) {
            addRow(time, y, books, losses, line, control);
        }
        waterTimes.add(time);
        waterByPiece.add(net.waterByPiece());
    }

    private double demandAt(double time) {
        if (time < window - 1e-6 || window <= 0) {
            return Double.NaN;
        }
        double from = Math.max(0.0, time - window);
        int high = trace.size() - 1;
        int low = 0;
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (trace.get(middle)[0] <= from) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double[] a = trace.get(low);
        double[] b = trace.get(high);
        int c = Column.LOSSES.ordinal();
        double then = a[c] + (b[c] - a[c]) * (from - a[0]) / (b[0] - a[0]);
        return (trace.get(trace.size() - 1)[c] - then) / (rest * (time - from));
    }

    private void addRow(
            double time, double[] y, Network.Books books, double losses, double[] line, Body.Control control) {
        double span = time - lastRow;
        double[] byWay = new double[way.length];
        double[] byPart = new double[partAtRow.length];
        double all = 0;
        for (int i = 0; i < byWay.length; i++) {
            byWay[i] = (way[i] - wayAtRow[i]) / span;
            all += byWay[i];
        }
        for (int i = 0; i < byPart.length; i++) {
            byPart[i] = (books.part[i] - partAtRow[i]) / span;
        }
        net.look(time);
        double wind = 0;
        double[] area = net.body.segmentAreas();
        for (int s = 0; s < area.length; s++) {
            wind += area[s] * net.around.windAt[s] / net.body.bodyArea();
        }
        rows.add(new HourRow(
                time,
                (plan.startOfDay() + time) % DAY,
                net.around.airCelsius,
                wind,
                (books.made - madeAtRow) / span,
                byWay,
                byPart,
                all,
                line[Column.SHORTFALL.ordinal()],
                line[Column.HEAT_MADE.ordinal()],
                line[Column.SHELL.ordinal()],
                line[Column.CORE.ordinal()],
                line[Column.DEFICIT.ordinal()],
                line[Column.CORE.ordinal()] - line[Column.DEFICIT.ordinal()],
                line[Column.DEMAND.ordinal()],
                line[Column.CORE_CELSIUS.ordinal()],
                control.rectal,
                control.meanSkin,
                y[HAND],
                y[FOOT],
                y[net.sleep],
                control.shivering));
        lastRow = time;
        madeAtRow = books.made;
        System.arraycopy(way, 0, wayAtRow, 0, way.length);
        System.arraycopy(books.part, 0, partAtRow, 0, partAtRow.length);
    }

    List<HourRow> rows() {
        return List.copyOf(rows);
    }

    Trace trace() {
        return new Trace(
                column(Column.TIME),
                column(Column.SHORTFALL),
                column(Column.HEAT_MADE),
                column(Column.SHELL),
                column(Column.CORE),
                column(Column.DEFICIT),
                column(Column.LINE_35),
                column(Column.LINE_32),
                column(Column.DEMAND),
                column(Column.CORE_CELSIUS),
                column(Column.SKIN),
                column(Column.HAND),
                column(Column.FOOT));
    }

    private double[] column(Column column) {
        double[] out = new double[trace.size()];
        for (int i = 0; i < out.length; i++) {
            out[i] = trace.get(i)[column.ordinal()];
        }
        return out;
    }
}

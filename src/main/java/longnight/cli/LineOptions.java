package longnight.cli;

import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.QuantityFault;
import longnight.report.Prose;
import longnight.study.Line;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** What a night may ask at most; one of them. */
final class LineOptions {
    /** Below heat at rest nothing is asked of anybody; above this nobody makes so much for hours. */
    private static final double LEAST_DEMAND = 1;

    private static final double MOST_DEMAND = 5;
    private static final double USUAL_DEMAND = 2;

    @Option(names = "--demand", paramLabel = "X", descriptionKey = "demand")
    private @Nullable Double demand;

    @Option(names = "--shortfall", paramLabel = "HEAT", descriptionKey = "shortfall")
    private @Nullable String shortfall;

    @Option(names = "--core-heat", descriptionKey = "core-heat")
    private boolean coreHeat;

    /** The line chosen. */
    static Line line(@Nullable LineOptions chosen, CommandSpec spec) {
        return chosen == null ? new Line(Line.Measure.DEMAND, USUAL_DEMAND) : chosen.line(spec);
    }

    private Line line(CommandSpec spec) {
        if (coreHeat) {
            return new Line(Line.Measure.CORE_HEAT_DEFICIT, Line.DEAD_BAND);
        }
        if (shortfall != null) {
            return new Line(Line.Measure.SHORTFALL_HEAT, heat(shortfall, spec));
        }
        double limit = demand == null ? USUAL_DEMAND : demand;
        if (!(limit >= LEAST_DEMAND && limit <= MOST_DEMAND)) {
            throw new ParameterException(
                    spec.commandLine(),
                    Prose.text(
                            "fault.demand",
                            String.valueOf(limit),
                            String.valueOf((int) LEAST_DEMAND),
                            String.valueOf((int) MOST_DEMAND)));
        }
        return new Line(Line.Measure.DEMAND, limit);
    }

    private static double heat(String text, CommandSpec spec) {
        try {
            double heat = Quantities.parse(text, Dimension.HEAT_PER_AREA);
            if (heat > 0) {
                return heat;
            }
            throw new ParameterException(spec.commandLine(), Prose.text("fault.positive", "--shortfall", text));
        } catch (QuantityFault fault) {
            throw new ParameterException(
                    spec.commandLine(),
                    Prose.text("fault.quantity", "--shortfall", text, String.valueOf(fault.getMessage())));
        }
    }
}

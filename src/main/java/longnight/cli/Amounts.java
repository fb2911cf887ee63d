package longnight.cli;

import longnight.quantity.Dimension;
import longnight.quantity.Quantities;
import longnight.quantity.QuantityFault;
import longnight.quantity.UnitSystem;
import longnight.report.Prose;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Quantities on the command line: with their unit, and within what an option allows. */
final class Amounts {
    private Amounts() {}

    /** @return in the dimension's engine unit */
    static double between(String option, String text, Dimension dimension, double low, double high, CommandSpec spec) {
        double value = parse(option, text, dimension, spec);
        if (!(value >= low && value <= high)) {
            throw new ParameterException(
                    spec.commandLine(),
                    Prose.text(
                            "fault.range",
                            option,
                            text,
                            Quantities.format(low, dimension, UnitSystem.METRIC),
                            Quantities.format(high, dimension, UnitSystem.METRIC)));
        }
        return value;
    }

    private static double parse(String option, String text, Dimension dimension, CommandSpec spec) {
        try {
            return Quantities.parse(text, dimension);
        } catch (QuantityFault fault) {
            throw new ParameterException(
                    spec.commandLine(), Prose.text("fault.quantity", option, text, String.valueOf(fault.getMessage())));
        }
    }
}

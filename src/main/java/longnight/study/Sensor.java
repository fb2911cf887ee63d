package longnight.study;

import longnight.night.NightLog;
import longnight.night.Trace;

/**
 * What a log may measure on the body. A sensor is not where the model's mean is, and people differ in their level: both are allowed
 * for by a constant that the sensor may be off. A half hour's mean is told from the model's to no better than a wander. Both are
 * engineering estimates, no source.
 */
public enum Sensor {
    CORE(0.3, 0.1),
    SKIN(1.5, 0.4);

    private final double constant;
    private final double wander;

    Sensor(double constant, double wander) {
        this.constant = constant;
        this.wander = wander;
    }

    /** Standard deviation of the constant [K]. */
    public double constant() {
        return constant;
    }

    /** Least standard deviation of a half hour's mean about model and constant [K]. */
    double wander() {
        return wander;
    }

    double[] of(NightLog log) {
        return this == CORE ? log.core() : log.skin();
    }

    double[] of(Trace trace) {
        return this == CORE ? trace.core() : trace.meanSkin();
    }
}

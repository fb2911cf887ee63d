package longnight.night;

import static longnight.night.ChamberRun.day;
import static longnight.night.ChamberRun.exceeds;
import static longnight.night.ChamberRun.mean;
import static longnight.night.ChamberRun.night;

import java.util.List;
import java.util.function.Function;
import longnight.clothing.law.WholeBody;
import longnight.figure.Posture;
import longnight.night.ChamberRun.Dress;
import longnight.night.ChamberRun.Man;
import longnight.night.ChamberRun.Phase;
import longnight.night.ChamberRun.Subject;

/**
 * Published experiments in cold air that a dry engine can express, as data. Measured values and set-ups were mostly read in
 * abstracts; build, wind in "still" chambers, walls at air temperature, posture and the part of the body that shorts cover are
 * assumptions; where a source gives a range, "measured" is its middle. No band was chosen for this engine. Daytime runs start
 * with an hour at 28 degC in the stated clothes; its end is what changes are counted from and what "rest" means. Night studies
 * start at bedtime.
 */
final class ColdAirExperiments {

    /** One set of assumptions: mass [kg] and fat [percent] moved, air speed [m/s] (NaN: the one assumed), model. */
    record Variant(double kilograms, double percent, double wind, ModelChoice model) {

        static final Variant NOMINAL = of(ModelChoice.nominal());

        /** The assumed build and air with a model. */
        static Variant of(ModelChoice model) {
            return new Variant(0, 0, Double.NaN, model);
        }

        double windOr(double assumed) {
            return Double.isNaN(wind) ? assumed : wind;
        }

        Subject of(Man man) {
            return new Subject(man.moved(kilograms, percent), model, Double.NaN);
        }
    }

    /** A closed interval; NaN at an end that is open, both NaN for none. */
    record Band(double low, double high) {

        static final Band NONE = new Band(Double.NaN, Double.NaN);

        boolean exists() {
            return !Double.isNaN(low) || !Double.isNaN(high);
        }

        boolean holds(double value) {
            return !Double.isNaN(value) && !(value < low) && !(value > high);
        }
    }

    /**
     * One quantity of an experiment.
     *
     * @param name     with its unit
     * @param measured what the source says; NaN when it gives no number
     * @param gate     outside: wrong physics
     * @param goal     outside: counts against the score
     * @param second   what the second, independent calculation of the same equations gave; NaN where it printed nothing
     * @param spread   its range over the same kind of variants
     * @param decimals places to print
     * @param kind     which root mean square it enters
     */
    record Quantity(
            String name, double measured, Band gate, Band goal, double second, Band spread, int decimals, Kind kind) {

        Quantity gate(double low, double high) {
            return new Quantity(name, measured, new Band(low, high), goal, second, spread, decimals, kind);
        }

        Quantity goal(double low, double high) {
            return new Quantity(name, measured, gate, new Band(low, high), second, spread, decimals, kind);
        }

        Quantity second(double value) {
            return new Quantity(name, measured, gate, goal, value, spread, decimals, kind);
        }

        Quantity second(double value, double low, double high) {
            return new Quantity(name, measured, gate, goal, value, new Band(low, high), decimals, kind);
        }

        Quantity as(Kind of) {
            return new Quantity(name, measured, gate, goal, second, spread, decimals, of);
        }
    }

    /** What a measured value is pooled with. */
    enum Kind {
        CORE,
        SKIN,
        /** Mean skin with the model's own heat, where the source says what heat was made. */
        SKIN_OWN,
        /** The same with that heat held: the shell alone. */
        SKIN_HELD,
        HEAT,
        OTHER
    }

    /** One experiment: its source, its quantities, and what a set of assumptions makes of them. */
    record Experiment(String source, List<Quantity> quantities, Function<Variant, double[]> run) {}

    private static final double NO = Double.NaN;
    private static final Phase WARM = new Phase(28, 60);
    private static final int START = 60;

    private ColdAirExperiments() {}

    private static Quantity quantity(String name, double measured, int decimals) {
        return new Quantity(name, measured, Band.NONE, Band.NONE, NO, Band.NONE, decimals, Kind.OTHER);
    }

    static final List<Experiment> ALL = List.of(
            new Experiment(
                    "Hardy and Stolwijk 1966",
                    List.of(
                            quantity("heat debt at 2 h, mean of 13 and 18 degC [kJ/m2]", 419, 0)
                                    .gate(300, 540)
                                    .goal(340, 500)
                                    .second(328, 311, 376),
                            quantity("still losing at 2 h, 13 degC [W/m2]", 35, 0)
                                    .gate(12, 58)
                                    .second(28),
                            quantity("still losing at 2 h, 18 degC [W/m2]", 35, 0)
                                    .gate(12, 58)
                                    .second(21),
                            quantity("heat made over rest at 2 h, 18 degC [1]", 1.0, 2)
                                    .goal(0.9, 1.2)
                                    .second(1.23, 1.14, 1.41)),
                    v -> {
                        ChamberRun cold = step(v, new Man(72, 1.76, 15, 23), Dress.even(0.05), 0.1, 0.4, 13);
                        ChamberRun cool = step(v, new Man(72, 1.76, 15, 23), Dress.even(0.05), 0.1, 0.4, 18);
                        return new double[] {
                            0.5 * (debt(cold, 180) + debt(cool, 180)),
                            netLoss(cold, 180),
                            netLoss(cool, 180),
                            cool.made[180] / cool.made[START]
                        };
                    }),
            new Experiment(
                    "Tikuisis, Bell and Jacobs 1991",
                    List.of(
                            quantity("rectal change in 2 h at 10 degC [K]", 0, 2)
                                    .gate(-0.35, 0.25)
                                    .second(0.16, -0.01, 0.32)
                                    .as(Kind.CORE),
                            quantity("blood change [K]", NO, 2).second(0.08),
                            quantity("heat made, lean minus normal [W/m2]", NO, 0)
                                    .gate(0, NO)
                                    .second(8),
                            quantity("limb minus trunk skin [K]", NO, 1)
                                    .gate(NO, 0)
                                    .second(-6.5),
                            quantity("lean over normal slope of heat against skin, over root of fat [1]", 1, 2)
                                    .goal(0.75, 1.3)
                                    .second(1.08)),
                    v -> {
                        ChamberRun[] men = new ChamberRun[2];
                        double[] fat = new double[2];
                        for (int i = 0; i < 2; i++) {
                            Subject man = v.of(i == 0 ? new Man(72, 1.78, 11, 23) : new Man(80, 1.78, 19, 23));
                            fat[i] = man.fat();
                            men[i] = day(
                                    man,
                                    Dress.even(0.05),
                                    Posture.LYING_SUPINE,
                                    v.windOr(0.25),
                                    0.42,
                                    WARM,
                                    new Phase(10, 120));
                        }
                        return new double[] {
                            0.5 * (change(men[0].rectal, 180) + change(men[1].rectal, 180)),
                            0.5 * (change(men[0].blood, 180) + change(men[1].blood, 180)),
                            perArea(men[0], 180) - perArea(men[1], 180),
                            0.5 * (men[0].limbs[180] - men[0].trunk[180] + men[1].limbs[180] - men[1].trunk[180]),
                            slope(men[0]) / slope(men[1]) / Math.sqrt(fat[1] / fat[0])
                        };
                    }),
            new Experiment(
                    "Buskirk, Thompson and Whedon 1963",
                    List.of(
                            quantity("heat made at 2 h at 10 degC, fat 13 % [W/m2]", 68, 0)
                                    .gate(51, 87)
                                    .second(79)
                                    .as(Kind.HEAT),
                            quantity("heat made at 2 h at 10 degC, fat 20 % [W/m2]", 63.7, 0)
                                    .gate(48, 80)
                                    .second(70)
                                    .as(Kind.HEAT),
                            quantity("heat made at 2 h at 10 degC, fat 45 % [W/m2]", 48.6, 0)
                                    .gate(40, 61)
                                    .second(53)
                                    .as(Kind.HEAT),
                            quantity("slope over fat [W/m2 per percent]", -0.605, 2)
                                    .goal(-1.0, -0.3)
                                    .second(-0.81)),
                    v -> {
                        double[] fat = {13, 20, 45};
                        double[] mass = {70, 75, 110};
                        double[] heat = new double[3];
                        for (int i = 0; i < 3; i++) {
                            ChamberRun run =
                                    step(v, new Man(mass[i], 1.75, fat[i], 27), Dress.even(0.06), 0.15, 0.5, 10);
                            heat[i] = perArea(run, 180);
                        }
                        return new double[] {heat[0], heat[1], heat[2], leastSquares(fat, heat)};
                    }),
            new Experiment(
                    "Iampietro, Bass and Buskirk 1957",
                    List.of(
                            quantity("heat made after 12 h at 15.6 over 26.7 degC [1]", 1.16, 2)
                                    .gate(1.05, 1.35)
                                    .second(1.41, 1.34, 1.60)
                                    .as(Kind.HEAT),
                            quantity("rectal, cold minus control [K]", 0, 2)
                                    .gate(-0.25, 0.3)
                                    .second(-0.05, -0.14, 0.15)
                                    .as(Kind.CORE)),
                    v -> {
                        ChamberRun cold = longRun(v, 15.6);
                        ChamberRun control = longRun(v, 26.7);
                        return new double[] {cold.made[780] / control.made[780], cold.rectal[780] - control.rectal[780]
                        };
                    }),
            new Experiment(
                    "Spurr, Hutt and Horvath 1957",
                    List.of(
                            quantity("heat made above 1.2 x rest after [min]", 6.4, 0)
                                    .gate(2, 18)
                                    .second(16),
                            quantity("heat made above 1.4 x rest after [min]", 10.3, 0)
                                    .goal(4, 35)
                                    .second(37)),
                    v -> {
                        ChamberRun run = step(v, Man.ORDINARY, Dress.nude(), 0.2, 0.5, 10);
                        return new double[] {
                            exceeds(run.made, 1.2 * run.made[START], START),
                            exceeds(run.made, 1.4 * run.made[START], START)
                        };
                    }),
            new Experiment(
                    "Five nude men at 10 degC, 1960s (authors unknown to us)",
                    List.of(quantity("heat made over rest at 10 min [1]", NO, 2)
                            .goal(1.02, NO)
                            .second(1.13)),
                    v -> {
                        ChamberRun run = step(v, Man.ORDINARY, Dress.nude(), 0.15, 0.5, 10);
                        return new double[] {run.made[START + 10] / run.made[START]};
                    }),
            new Experiment(
                    "Adolph and Molnar 1946",
                    List.of(
                            quantity("heat made in the first hour at 0.6 degC, wind 1.5 (0.7-3) m/s [W]", 349, 0)
                                    .goal(240, 470)
                                    .second(197)
                                    .as(Kind.HEAT),
                            quantity("heat lost in the first hour [W]", 814, 0)
                                    .goal(600, 1050)
                                    .second(575),
                            quantity("peak of heat made over rest in 4 h [1]", 5, 1)
                                    .gate(NO, 5.5)
                                    .second(3.6)),
                    v -> {
                        double wind = Double.isNaN(v.wind) ? 1.5 : v.wind < 0.2 ? 0.7 : 3.0;
                        ChamberRun run = ChamberRun.outdoors(
                                v.of(Man.ORDINARY), Dress.even(0.05), wind, 0.7, new Phase(0.6, 240));
                        return new double[] {
                            mean(run.made, 0, 60),
                            mean(run.lost, 0, 60),
                            ChamberRun.peak(run.made, 0) / run.body.restHeat()
                        };
                    }),
            new Experiment(
                    "Timbal, Boutelier, Loncle and Bougues 1976",
                    List.of(quantity("slope of heat made against skin, 15-25 degC [W/(m2 K)]", 5.01, 1)
                            .gate(3.0, 8.0)
                            .second(3.1, 1.8, 4.9)),
                    v -> {
                        double[] skin = new double[3];
                        double[] heat = new double[3];
                        for (int i = 0; i < 3; i++) {
                            ChamberRun run = step(v, Man.ORDINARY, Dress.even(0.03), 0.15, 0.5, 15 + 5 * i);
                            skin[i] = mean(run.skin, 150, 180);
                            heat[i] = mean(run.made, 150, 180) / run.body.bodyArea();
                        }
                        return new double[] {-leastSquares(skin, heat)};
                    }),
            new Experiment(
                    "Wyndham, Williams and Loots 1968",
                    List.of(
                            quantity("skin at which heat made passes 1.15 x rest, average man [degC]", 30, 1)
                                    .gate(28, 32)
                                    .second(28.3),
                            quantity("skin at which heat made passes 1.15 x rest, very fat man [degC]", 25, 1)
                                    .goal(23, 29)
                                    .second(21.0),
                            quantity("least conductance, average over fat man [1]", 2.0, 2)
                                    .goal(1.5, 2.6)
                                    .second(1.23),
                            quantity("conductance at skin 27 degC over its least, average man [1]", 1.0, 2)
                                    .goal(1.0, 1.2)),
                    v -> {
                        Threshold average = threshold(v, new Man(70, 1.75, 15, 23));
                        Threshold fat = threshold(v, new Man(125, 1.78, 40, 23));
                        return new double[] {
                            average.skin, fat.skin, average.least / fat.least, average.at27 / average.least
                        };
                    }),
            new Experiment(
                    "Esmat et al. 2012",
                    List.of(
                            quantity("mean skin after 2 h at 10 degC [degC]", 22, 1)
                                    .gate(20.5, 24.0)
                                    .second(23.5)
                                    .as(Kind.SKIN),
                            quantity("heat made then [W/kg]", 2.36, 2)
                                    .gate(1.75, 2.9)
                                    .second(2.00)
                                    .as(Kind.HEAT),
                            quantity("mean skin after 2 h more at 25 degC [degC]", 27, 1)
                                    .goal(25.5, 29.5)
                                    .second(29.5)
                                    .as(Kind.SKIN),
                            quantity("rectal change in those 2 h [K]", -0.5, 2)
                                    .goal(-0.8, -0.1)
                                    .second(-0.22)
                                    .as(Kind.CORE)),
                    v -> {
                        Subject man = v.of(new Man(75, 1.78, 14, 22));
                        ChamberRun run = day(
                                man,
                                Dress.even(0.1),
                                Posture.CHAIR,
                                v.windOr(0.15),
                                0.5,
                                WARM,
                                new Phase(10, 120),
                                new Phase(25, 120));
                        return new double[] {
                            run.skin[180], run.made[180] / man.mass(), run.skin[300], run.rectal[300] - run.rectal[180]
                        };
                    }),
            new Experiment(
                    "Young et al. 1998",
                    List.of(
                            quantity("rectal change in 4 h at 10 degC, rested [K]", 0, 2)
                                    .gate(-0.4, 0.25)
                                    .second(0.15)
                                    .as(Kind.CORE),
                            quantity("starved build minus rested build [K]", NO, 2)
                                    .goal(NO, 0)
                                    .second(-0.18)),
                    v -> {
                        double rested = fourHours(v, new Man(78, 1.77, 15, 23));
                        return new double[] {rested, fourHours(v, new Man(68, 1.77, 7, 23)) - rested};
                    }),
            new Experiment(
                    "Ducharme et al. 2007, Mak et al. 2009 (liferaft, 21.8 degC inferred)",
                    List.of(
                            quantity("mean skin at 135 min, dry on an inflated floor [degC]", 33.5, 1)
                                    .goal(31.9, 34.6)
                                    .second(32.1)
                                    .as(Kind.SKIN_OWN),
                            quantity("mean skin, soaked on an inflated floor [degC]", 30.9, 1)
                                    .goal(29.1, 32.7)
                                    .second(29.6)
                                    .as(Kind.SKIN_OWN),
                            quantity("mean skin, dry on an uninflated floor [degC]", 32.1, 1)
                                    .goal(30.6, 33.6)
                                    .second(31.0)
                                    .as(Kind.SKIN_OWN),
                            quantity("mean skin, soaked on an uninflated floor [degC]", 30.0, 1)
                                    .goal(28.2, 31.8)
                                    .second(28.5)
                                    .as(Kind.SKIN_OWN),
                            quantity("heat made, soaked uninflated minus dry inflated [W]", 21, 0)
                                    .goal(0, 45)
                                    .second(9),
                            quantity("the same, making the heat they made: dry, inflated [degC]", 33.5, 1)
                                    .as(Kind.SKIN_HELD),
                            quantity("soaked, inflated [degC]", 30.9, 1).as(Kind.SKIN_HELD),
                            quantity("dry, uninflated [degC]", 32.1, 1).as(Kind.SKIN_HELD),
                            quantity("soaked, uninflated [degC]", 30.0, 1).as(Kind.SKIN_HELD)),
                    v -> {
                        double[] total = {0.224, 0.145, 0.185, 0.116};
                        double[] made = {111, 122, 117.6, 131.8};
                        double[] skin = new double[9];
                        double[] heat = new double[4];
                        Subject man = v.of(new Man(80, 1.78, 18, 23));
                        for (int i = 0; i < 4; i++) {
                            ChamberRun run = raft(v, man, total[i]);
                            skin[i] = run.skin[135];
                            heat[i] = run.made[135];
                            skin[5 + i] = raft(v, man.making(made[i]), total[i]).skin[135];
                        }
                        skin[4] = heat[3] - heat[0];
                        return skin;
                    }),
            new Experiment(
                    "Kreider, Buskirk and Bass 1958 (warm night)",
                    List.of(
                            quantity("rectal change by 5.6 h [K]", -1.2, 2)
                                    .gate(-1.5, -0.6)
                                    .second(-1.14)
                                    .as(Kind.CORE),
                            quantity("time of the lowest rectal [h]", 5.6, 1)
                                    .goal(4.0, 7.5)
                                    .second(6.5)),
                    v -> {
                        ChamberRun run = warmNight(v, Man.ORDINARY);
                        return new double[] {run.rectal[336] - run.rectal[0], ChamberRun.lowest(run.rectal) / 60.0};
                    }),
            new Experiment(
                    "Irving et al. 1960 (cold night, cover set by the trunk skin)",
                    List.of(
                            quantity("heat made over warm sleep, 7 h at 0 degC [1]", 1.305, 2)
                                    .gate(1.15, 1.5)
                                    .second(1.22, 1.15, 1.47)
                                    .as(Kind.HEAT),
                            quantity("foot skin against a warm night [K]", -15, 0)
                                    .goal(-20, -9)
                                    .second(-17),
                            quantity("trunk skin against a warm night, set by the cover [K]", -4, 1)
                                    .second(-4.1),
                            quantity("rectal change [K]", -0.5, 2)
                                    .goal(-1.2, -0.2)
                                    .second(-0.45)
                                    .as(Kind.CORE),
                            quantity("share of the night asleep [1]", 0.41, 2).second(0.29),
                            quantity("cover, total [clo]", NO, 2).second(NO, 2.5, 2.9),
                            quantity("heat made over warm sleep, other reading: trunk 4 K below bedtime [1]", 1.305, 2),
                            quantity("share of the night asleep, other reading [1]", 0.41, 2),
                            quantity("cover, total, other reading [clo]", NO, 2)),
                    v -> {
                        Man man = new Man(75, 1.77, 14, 25);
                        ChamberRun warm = warmNight(v, man);
                        double clo = cover(v, man, warm.trunk[420] - 4);
                        ChamberRun run = coldNight(v, man, clo);
                        double more = cover(v, man, warm.trunk[0] - 4);
                        ChamberRun other = coldNight(v, man, more);
                        return new double[] {
                            mean(run.made, 0, 420) / mean(warm.made, 0, 420),
                            run.foot[420] - warm.foot[420],
                            run.trunk[420] - warm.trunk[420],
                            run.rectal[420] - run.rectal[0],
                            mean(run.sleep, 0, 420),
                            clo,
                            mean(other.made, 0, 420) / mean(warm.made, 0, 420),
                            mean(other.sleep, 0, 420),
                            more
                        };
                    }),
            new Experiment(
                    "Scholander et al. 1958 (one blanket, 4 degC, 2.0 clo in all)",
                    List.of(
                            quantity("heat made over basal, 8 h [1]", NO, 2)
                                    .goal(1.05, 1.55)
                                    .second(1.32),
                            quantity("foot minus the coldest other part [K]", NO, 1)
                                    .goal(NO, 0)),
                    v -> {
                        ChamberRun run = night(
                                v.of(new Man(72, 1.79, 11, 23)),
                                Dress.total(2.0 * WholeBody.CLO),
                                v.windOr(0.2),
                                0.8,
                                new Phase(4, 480));
                        return new double[] {
                            mean(run.made, 0, 480) / run.body.basalHeat(), run.foot[480] - run.coldestOther[480]
                        };
                    }),
            new Experiment(
                    "Westerterp-Plantenga et al. 2002",
                    List.of(
                            quantity("heat made in the night, 16 degC [W/m2]", 44, 0)
                                    .gate(38, 50)
                                    .second(42)
                                    .as(Kind.HEAT),
                            quantity("24 h heat, 16 over 22 degC, day spent sitting [1]", 1.06, 2)
                                    .goal(1.0, 1.13)
                                    .second(1.01)),
                    v -> {
                        Subject man = v.of(new Man(76.2, 1.83, 18, 24));
                        double[] day = new double[2];
                        double sleeping = 0;
                        for (int i = 0; i < 2; i++) {
                            double air = i == 0 ? 16 : 22;
                            ChamberRun awake =
                                    day(man, Dress.even(0.7), Posture.CHAIR, v.windOr(0.1), 0.55, new Phase(air, 960));
                            ChamberRun asleep = night(
                                    man, Dress.total(2.5 * WholeBody.CLO), v.windOr(0.1), 0.55, new Phase(air, 480));
                            day[i] = mean(awake.made, 0, 960) * 2 / 3 + mean(asleep.made, 0, 480) / 3;
                            sleeping = i == 0 ? mean(asleep.made, 60, 480) / asleep.body.bodyArea() : sleeping;
                        }
                        return new double[] {sleeping, day[0] / day[1]};
                    }),
            new Experiment(
                    "Lin et al. 2013 (bags at the limit of their standard)",
                    List.of(
                            quantity("mean skin at 2 h, mean of four bags [degC]", 33, 1)
                                    .goal(31, 34.5)
                                    .second(32.5)
                                    .as(Kind.SKIN),
                            quantity("mean skin minus foot [K]", NO, 1)
                                    .goal(3, NO)
                                    .second(3.1),
                            quantity("mean skin minus foot, other reading: free to sleep from 22:30 [K]", NO, 1)),
                    v -> {
                        double skin = 0;
                        double foot = 0;
                        double asleep = 0;
                        for (double air : new double[] {11.2, 3.8, 2.1, -9.0}) {
                            ChamberRun run = day(
                                    v.of(Man.ORDINARY),
                                    Dress.total((33 - air) / 48),
                                    Posture.LYING_SUPINE,
                                    v.windOr(0.1),
                                    0.5,
                                    new Phase(air, 120));
                            skin += run.skin[120] / 4;
                            foot += (run.skin[120] - run.foot[120]) / 4;
                            ChamberRun dozing = night(
                                    v.of(Man.ORDINARY),
                                    Dress.total((33 - air) / 48),
                                    v.windOr(0.1),
                                    0.5,
                                    new Phase(air, 120));
                            asleep += (dozing.skin[120] - dozing.foot[120]) / 4;
                        }
                        return new double[] {skin, foot, asleep};
                    }),
            new Experiment(
                    "Gymnasium shelter night 2019 (2.06 clo in all, 5 degC)",
                    List.of(quantity("lowest rectal in 7 h [degC]", NO, 1)
                            .gate(35.4, NO)
                            .second(36.2)),
                    v -> {
                        ChamberRun run = night(
                                v.of(Man.ORDINARY),
                                Dress.total(2.06 * WholeBody.CLO),
                                v.windOr(0.1),
                                0.6,
                                new Phase(5, 420));
                        return new double[] {run.rectal[ChamberRun.lowest(run.rectal)]};
                    }));

    // ---------------------------------------------------------------- set-ups and readings

    private static ChamberRun step(Variant v, Man man, Dress dress, double wind, double humidity, double air) {
        return day(v.of(man), dress, Posture.CHAIR, v.windOr(wind), humidity, WARM, new Phase(air, 120));
    }

    private static ChamberRun raft(Variant v, Subject who, double total) {
        return day(who, Dress.total(total), Posture.SITTING_LEGS_OUT, v.windOr(0.1), 0.5, new Phase(21.8, 135));
    }

    private static ChamberRun longRun(Variant v, double air) {
        return day(v.of(Man.ORDINARY), Dress.even(0.05), Posture.CHAIR, v.windOr(0.1), 0.5, WARM, new Phase(air, 720));
    }

    private static double fourHours(Variant v, Man man) {
        ChamberRun run = day(v.of(man), Dress.even(0.08), Posture.CHAIR, v.windOr(0.15), 0.5, WARM, new Phase(10, 240));
        return change(run.rectal, 300);
    }

    private static ChamberRun warmNight(Variant v, Man man) {
        return night(v.of(man), Dress.total(1.2 * WholeBody.CLO), v.windOr(0.1), 0.5, new Phase(26.5, 480));
    }

    private static ChamberRun coldNight(Variant v, Man man, double clo) {
        return night(v.of(man), Dress.total(clo * WholeBody.CLO), v.windOr(0.1), 0.7, new Phase(0, 420));
    }

    /** Total cover [clo] under which the trunk skin ends a cold night at a given temperature [degC]. */
    private static double cover(Variant v, Man man, double trunk) {
        double low = 1.2;
        double high = 5;
        for (int i = 0; i < 14; i++) {
            double clo = 0.5 * (low + high);
            if (coldNight(v, man, clo).trunk[420] < trunk) {
                low = clo;
            } else {
                high = clo;
            }
        }
        return low;
    }

    /** Skin temperature at which heat made passes 1.15 x rest, and conductances [W/(m2 K)], over five exposures. */
    private record Threshold(double skin, double least, double at27) {}

    private static Threshold threshold(Variant v, Man man) {
        double[] air = {27, 20, 15, 10, 5};
        double[] skin = new double[air.length];
        double[] ratio = new double[air.length];
        double[] conductance = new double[air.length];
        for (int i = 0; i < air.length; i++) {
            ChamberRun run = step(v, man, Dress.even(0.03), Double.isNaN(v.wind) ? 0.45 : v.wind, 0.5, air[i]);
            skin[i] = run.skin[180];
            ratio[i] = run.made[180] / run.made[START];
            conductance[i] = run.lost[180] / run.body.bodyArea() / (run.rectal[180] - run.skin[180]);
        }
        double least = Double.POSITIVE_INFINITY;
        double crossing = Double.NaN;
        double at27 = Double.NaN;
        for (int i = 0; i < air.length; i++) {
            least = Math.min(least, conductance[i]);
            if (i > 0 && ratio[i] > 1.15 && ratio[i - 1] <= 1.15) {
                crossing = skin[i - 1] + (skin[i] - skin[i - 1]) * (1.15 - ratio[i - 1]) / (ratio[i] - ratio[i - 1]);
            }
            if (i > 0 && skin[i] <= 27 && skin[i - 1] > 27) {
                at27 = conductance[i - 1]
                        + (conductance[i] - conductance[i - 1]) * (27 - skin[i - 1]) / (skin[i] - skin[i - 1]);
            }
        }
        return new Threshold(crossing, least, at27);
    }

    private static double change(double[] series, int at) {
        return series[at] - series[START];
    }

    private static double perArea(ChamberRun run, int at) {
        return run.made[at] / run.body.bodyArea();
    }

    private static double debt(ChamberRun run, int at) {
        return (run.stored[START] - run.stored[at]) / 1000 / run.body.bodyArea();
    }

    private static double netLoss(ChamberRun run, int at) {
        return (run.lost[at] - run.made[at]) / run.body.bodyArea();
    }

    private static double slope(ChamberRun run) {
        return (run.made[180] - run.made[START]) / run.body.bodyArea() / (run.skin[START] - run.skin[180]);
    }

    private static double leastSquares(double[] x, double[] y) {
        double mx = 0;
        double my = 0;
        for (int i = 0; i < x.length; i++) {
            mx += x[i] / x.length;
            my += y[i] / x.length;
        }
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
            xx += (x[i] - mx) * (x[i] - mx);
        }
        return xy / xx;
    }
}

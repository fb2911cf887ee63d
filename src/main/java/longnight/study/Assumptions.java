package longnight.study;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.UnaryOperator;
import longnight.body.BodyOptions;
import longnight.body.Person;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;
import longnight.outdoors.Weather;

/** Which assumption moves the night, and by how much. */
final class Assumptions {
    private static final ModelChoice NOMINAL = ModelChoice.nominal();

    private Assumptions() {}

    /** One thing assumed, lower and higher. */
    private record Trial(Assumption.Kind kind, String name, String from, String to, Night low, Night high) {}

    /** A question for a model. */
    private record Night(Scenario scenario, ModelChoice model) {}

    /** Ranked by what they move, the most first. */
    static List<Assumption> of(Scenario night, NumericalSettings settings, int threads) {
        List<Trial> trials = new ArrayList<>(inputs(night));
        Draws.factors().forEach(factor -> trials.add(model(night, factor)));
        List<Night> nights = new ArrayList<>();
        nights.add(new Night(night, NOMINAL));
        trials.forEach(trial -> nights.addAll(List.of(trial.low(), trial.high())));
        List<Double> shortfall = Together.ask(nights, each -> shortfall(each, settings), threads);
        List<Assumption> ranked = new ArrayList<>();
        for (int i = 0; i < trials.size(); i++) {
            Trial trial = trials.get(i);
            ranked.add(new Assumption(
                    trial.kind(),
                    trial.name(),
                    trial.from(),
                    trial.to(),
                    shortfall.get(1 + 2 * i) - shortfall.get(0),
                    shortfall.get(2 + 2 * i) - shortfall.get(0)));
        }
        ranked.sort(Comparator.comparingDouble(Assumption::moves).reversed());
        return List.copyOf(ranked);
    }

    /** Nights run for {@link #of}. */
    static int nights(List<Assumption> found) {
        return 1 + 2 * found.size();
    }

    private static double shortfall(Night night, NumericalSettings settings) {
        NightResult result =
                NightEngine.compile(night.scenario(), night.model()).run(settings);
        return Double.isNaN(result.stopped()) ? result.shortfallHeat() : Double.NaN;
    }

    // --- The model ---

    private static Trial model(Scenario night, Factor factor) {
        if (factor.members().isEmpty()) { // the choice between two laws
            BodyOptions second =
                    new BodyOptions(BodyOptions.Law.GATED, BodyOptions.Limbs.EFFECTIVE, Double.NaN, Double.NaN);
            ModelChoice gated = new ModelChoice(NOMINAL.body(), second, NOMINAL.clothing(), NOMINAL.outdoors());
            return new Trial(
                    Assumption.Kind.MODEL,
                    "SHIVERING_LAW",
                    NOMINAL.options().law().name(),
                    BodyOptions.Law.GATED.name(),
                    new Night(night, NOMINAL),
                    new Night(night, gated));
        }
        return new Trial(
                Assumption.Kind.MODEL,
                String.join(
                        "+",
                        factor.members().stream()
                                .map(each -> each.parameter().name())
                                .toList()),
                value(factor.members().get(0).low()),
                value(factor.members().get(0).high()) + unit(factor),
                new Night(night, Models.at(factor, 0)),
                new Night(night, Models.at(factor, 1)));
    }

    private static String value(double value) {
        return BigDecimal.valueOf(value)
                .round(new MathContext(3))
                .stripTrailingZeros()
                .toString();
    }

    private static String unit(Factor factor) {
        String unit = factor.members().get(0).parameter().unit();
        return unit.equals("1") ? "" : " " + unit;
    }

    // --- Inputs ---

    private static List<Trial> inputs(Scenario night) {
        List<Trial> trials = new ArrayList<>();
        trials.add(weather(night, "AIR", weather -> weather.warmer(-2), weather -> weather.warmer(2)));
        trials.add(weather(night, "WIND", wind(0.5), wind(1.5)));
        trials.add(weather(night, "CLOUD", cloud(-0.5), cloud(0.5)));
        trials.add(weather(night, "HUMIDITY", humidity(-0.2), humidity(0.2)));
        trials.add(weather(night, "PRECIPITATION", precipitation(0.5), precipitation(1.5)));
        Person person = night.person();
        trials.add(person(night, "BODY_FAT", fat(person, -5), fat(person, 5)));
        trials.add(person(night, "BODY_MASS", mass(person, 0.9), mass(person, 1.1)));
        trials.add(person(night, "HEAT_PRODUCTION", heat(person, 0.9), heat(person, 1.1)));
        trials.add(new Trial(
                Assumption.Kind.INPUT,
                "FUEL",
                "",
                "",
                nominal(night.withPlan(
                        night.plan().withFuel(Math.max(0.2, night.plan().fuel() - 0.4)))),
                nominal(night.withPlan(
                        night.plan().withFuel(Math.min(1, night.plan().fuel() + 0.4))))));
        return trials;
    }

    private static Night nominal(Scenario scenario) {
        return new Night(scenario, NOMINAL);
    }

    private static Trial weather(Scenario night, String name, UnaryOperator<Weather> low, UnaryOperator<Weather> high) {
        return new Trial(
                Assumption.Kind.INPUT,
                name,
                "",
                "",
                nominal(night.withSurroundings(night.surroundings().under(low))),
                nominal(night.withSurroundings(night.surroundings().under(high))));
    }

    private static Trial person(Scenario night, String name, Person low, Person high) {
        return new Trial(
                Assumption.Kind.INPUT, name, "", "", nominal(night.withPerson(low)), nominal(night.withPerson(high)));
    }

    private static UnaryOperator<Weather> wind(double factor) {
        return w -> new Weather(
                w.time(),
                w.airCelsius(),
                w.relativeHumidity(),
                each(w.wind10(), v -> Math.min(75, factor * v)),
                w.cloud(),
                w.precipitation(),
                w.pressure(),
                w.skyLongwave());
    }

    /** A sky that was measured gives way to one that follows from the cloud. */
    private static UnaryOperator<Weather> cloud(double more) {
        return w -> new Weather(
                w.time(),
                w.airCelsius(),
                w.relativeHumidity(),
                w.wind10(),
                each(w.cloud(), v -> Math.min(1, Math.max(0, v + more))),
                w.precipitation(),
                w.pressure(),
                each(w.skyLongwave(), v -> Double.NaN));
    }

    private static UnaryOperator<Weather> humidity(double more) {
        return w -> new Weather(
                w.time(),
                w.airCelsius(),
                each(w.relativeHumidity(), v -> Math.min(1, Math.max(0.05, v + more))),
                w.wind10(),
                w.cloud(),
                w.precipitation(),
                w.pressure(),
                w.skyLongwave());
    }

    private static UnaryOperator<Weather> precipitation(double factor) {
        return w -> new Weather(
                w.time(),
                w.airCelsius(),
                w.relativeHumidity(),
                w.wind10(),
                w.cloud(),
                each(w.precipitation(), v -> Math.min(200, factor * v)),
                w.pressure(),
                w.skyLongwave());
    }

    private static double[] each(double[] values, DoubleUnaryOperator change) {
        return Arrays.stream(values).map(change).toArray();
    }

    private static Person fat(Person p, double more) {
        double fat = Math.min(60, Math.max(4, p.bodyFat() + more));
        return new Person(p.name(), p.sex(), p.age(), p.height(), p.mass(), fat, p.peakOxygen(), p.heatOffset());
    }

    private static Person mass(Person p, double factor) {
        double mass = Math.min(200, Math.max(30, factor * p.mass()));
        return new Person(p.name(), p.sex(), p.age(), p.height(), mass, p.bodyFat(), p.peakOxygen(), p.heatOffset());
    }

    private static Person heat(Person p, double factor) {
        double offset = Math.min(1.2, Math.max(0.8, factor * p.heatOffset()));
        return new Person(p.name(), p.sex(), p.age(), p.height(), p.mass(), p.bodyFat(), p.peakOxygen(), offset);
    }
}

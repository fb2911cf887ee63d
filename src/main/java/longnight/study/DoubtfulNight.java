package longnight.study;

import java.util.Arrays;
import java.util.Set;
import longnight.body.Person;
import longnight.night.ModelChoice;
import longnight.night.NightEngine;
import longnight.night.NightResult;
import longnight.night.NumericalSettings;
import longnight.night.Scenario;

/** A night as a function of places in the unit cube: those of the person, then of the forecast, then of the model. */
final class DoubtfulNight {
    private final SpreadQuestion question;
    private final Scenario night;
    private final NumericalSettings settings;
    private final double[] moments;
    private final double[] times;
    private final Band.Mended mended;

    /** @param nominal the night's answer in the steps of every other answer, for which something was run */
    DoubtfulNight(SpreadQuestion question, NightResult nominal) {
        this.question = question;
        double duration = nominal.scenario().plan().duration();
        moments = ForecastError.moments(duration);
        Scenario as = nominal.scenario();
        night = question.over().contains(Doubt.FORECAST)
                ? as.withSurroundings(as.surroundings().under(weather -> weather.withEntriesAt(moments)))
                : as;
        NumericalSettings coarse = NumericalSettings.coarse();
        settings = nominal.water() == null ? coarse.withoutWater() : coarse;
        times = new double[] {0, duration};
        mended = Band.Mended.of(nominal, night, settings, times);
    }

    /** Places of a point. */
    static int dimensions(Scenario night) {
        return modelFrom(ForecastError.moments(night.plan().duration()).length)
                + Draws.factors().size()
                + 1;
    }

    private static int modelFrom(int moments) {
        return PeopleRange.PLACES + ForecastError.places(moments);
    }

    /** What a place belongs to. */
    static Driver driver(Scenario night, int place) {
        int moments = ForecastError.moments(night.plan().duration()).length;
        if (place < PeopleRange.PLACES) {
            return PeopleRange.driver(place);
        }
        int model = modelFrom(moments);
        if (place < model) {
            return ForecastError.driver(place - PeopleRange.PLACES, moments);
        }
        return place - model < Draws.factors().size() ? Factors.driver(place - model) : Driver.SKIN_MISFIT;
    }

    /** The nominal answer in short. */
    Draw nominal() {
        return Draw.of(mended.fine());
    }

    /**
     * One draw.
     *
     * @param place a point
     * @param over  what is drawn; all else is as the files say
     */
    Draw at(double[] place, Set<Doubt> over) {
        Scenario drawn = night;
        if (over.contains(Doubt.PEOPLE)) {
            Person person = question.people().at(Arrays.copyOf(place, PeopleRange.PLACES));
            drawn = drawn.withPerson(person);
        }
        int model = modelFrom(moments.length);
        if (over.contains(Doubt.FORECAST)) {
            double[] off = Arrays.copyOfRange(place, PeopleRange.PLACES, model);
            drawn = drawn.withSurroundings(
                    drawn.surroundings().under(weather -> question.forecast().at(weather, moments, off)));
        }
        boolean drawsModel = over.contains(Doubt.MODEL);
        ModelChoice choice = drawsModel ? Draws.model(place, model) : ModelChoice.nominal();
        double misfit = drawsModel ? Draws.misfit(place[place.length - 1]) : 0;
        return Draw.of(mended.of(NightEngine.compile(drawn, choice).outline(settings, times), misfit));
    }
}

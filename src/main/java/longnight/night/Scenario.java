package longnight.night;

import java.util.List;
import longnight.assumption.Guess;
import longnight.body.Person;
import longnight.clothing.Outfit;
import longnight.outdoors.Surroundings;

/**
 * The question: this person, dressed so, in these surroundings, with this plan.
 *
 * @param title        shown to people, not blank
 * @param nightName    name of the night or place, shown to people
 * @param kitName      name of the kit, shown to people
 * @param person       who
 * @param outfit       what is worn and sat on
 * @param surroundings where and in what weather
 * @param plan         what is done
 * @param guesses      everything that was guessed on the way here
 * @param cautions     codes of cautions that reading the input already called for
 * @param limits       reasons for which the input lies outside the model's range; empty when inside
 */
public record Scenario(
        String title,
        String nightName,
        String kitName,
        Person person,
        Outfit outfit,
        Surroundings surroundings,
        NightPlan plan,
        List<Guess> guesses,
        List<Caution> cautions,
        List<String> limits) {

    /** Whether the surroundings have weather that can be changed: a laboratory has none. */
    public boolean isOutdoors() {
        return surroundings.hasWeather();
    }

    /** The same question for somebody else. */
    public Scenario withPerson(Person other) {
        return new Scenario(title, nightName, kitName, other, outfit, surroundings, plan, guesses, cautions, limits);
    }

    /** The same question in other surroundings. Whether these lie within the model's range is for the caller to know. */
    public Scenario withSurroundings(Surroundings other) {
        return new Scenario(title, nightName, kitName, person, outfit, other, plan, guesses, cautions, limits);
    }

    /** The same question in other clothes; phases of the plan that have clothes of their own keep them. */
    public Scenario withOutfit(String name, Outfit other) {
        return new Scenario(title, nightName, name, person, other, surroundings, plan, guesses, cautions, limits);
    }

    /** The same question with another plan. */
    public Scenario withPlan(NightPlan other) {
        return new Scenario(title, nightName, kitName, person, outfit, surroundings, other, guesses, cautions, limits);
    }
}

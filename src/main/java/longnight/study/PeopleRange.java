package longnight.study;

import longnight.body.Person;
import longnight.night.Scenario;

/**
 * Who may sit there: ranges about which nothing more is known, every value alike likely. Tall people are the heavier ones: the
 * place in the range of masses follows that in the range of heights to {@link #BY_HEIGHT}, which makes their correlation 0.53. Fat, age
 * and fitness move on their own, and all are of the sex of the person named. Engineering estimates, no source.
 *
 * @param about   who the night was written for
 * @param mass    [kg], 30 to 200
 * @param height  [m], 1.2 to 2.2
 * @param fat     [percent], 4 to 60
 * @param age     [years], 14 to 90
 * @param fitness maximal oxygen uptake [mL/(kg min)], 15 to 90
 */
public record PeopleRange(Person about, Extent mass, Extent height, Extent fat, Extent age, Extent fitness) {
    /** How many places in the unit cube a person takes. */
    static final int PLACES = 5;

    private static final double BY_HEIGHT = 0.4;

    /** Allowed. */
    public static final Extent MASSES = new Extent(30, 200);
    /** Allowed. */
    public static final Extent HEIGHTS = new Extent(1.2, 2.2);
    /** Allowed. */
    public static final Extent FATS = new Extent(4, 60);
    /** Allowed. */
    public static final Extent AGES = new Extent(14, 90);
    /** Allowed. */
    public static final Extent FITNESSES = new Extent(15, 90);

    /** The age for which the model was made [years]. */
    private static final Extent GROWN = new Extent(18, 65);

    /** Groups that have a name. Engineering estimates, no source. */
    public enum Group {
        /** Much like the person named: mass 10 %, height 5 cm, fat 5 points, age 10 years, fitness 15 % either way. */
        LIKE,
        /** Most of those who walk in mountains. */
        ADULTS,
        YOUNG,
        OLDER,
        /** Much surface for the mass, little fat. */
        SMALL_AND_LEAN
    }

    /** @throws IllegalArgumentException when a range leaves what the model has an answer for */
    public PeopleRange {
        require("mass [kg]", mass, MASSES);
        require("height [m]", height, HEIGHTS);
        require("fat [percent]", fat, FATS);
        require("age [years]", age, AGES);
        require("fitness [mL/(kg min)]", fitness, FITNESSES);
    }

    private static void require(String what, Extent range, Extent allowed) {
        if (range.low() < allowed.low() || range.high() > allowed.high()) {
            throw new IllegalArgumentException(what + " from " + range.low() + " to " + range.high() + ", allowed "
                    + allowed.low() + " to " + allowed.high());
        }
    }

    /** A group, of the sex of the person of a night. */
    public static PeopleRange of(Group group, Scenario night) {
        Person person = night.person();
        return switch (group) {
            case LIKE -> like(person);
            case ADULTS -> range(person, 50, 95, 1.55, 1.90, 10, 35, 18, 65, 28, 55);
            case YOUNG -> range(person, 50, 90, 1.58, 1.92, 8, 30, 18, 30, 36, 60);
            case OLDER -> range(person, 52, 95, 1.53, 1.85, 15, 38, 50, 65, 22, 42);
            case SMALL_AND_LEAN -> range(person, 42, 56, 1.48, 1.65, 8, 22, 18, 40, 32, 55);
        };
    }

    private static PeopleRange like(Person p) {
        Extent ages = new Extent(Math.min(GROWN.low(), p.age()), Math.max(GROWN.high(), p.age()));
        return new PeopleRange(
                p,
                new Extent(0.9 * p.mass(), 1.1 * p.mass()).within(MASSES.low(), MASSES.high()),
                new Extent(p.height() - 0.05, p.height() + 0.05).within(HEIGHTS.low(), HEIGHTS.high()),
                new Extent(p.bodyFat() - 5, p.bodyFat() + 5).within(FATS.low(), FATS.high()),
                new Extent(p.age() - 10, p.age() + 10).within(ages.low(), ages.high()),
                new Extent(0.85 * p.peakOxygen(), 1.15 * p.peakOxygen()).within(FITNESSES.low(), FITNESSES.high()));
    }

    private static PeopleRange range(Person person, double... ends) {
        return new PeopleRange(
                person,
                new Extent(ends[0], ends[1]),
                new Extent(ends[2], ends[3]),
                new Extent(ends[4], ends[5]),
                new Extent(ends[6], ends[7]),
                new Extent(ends[8], ends[9]));
    }

    /** The same with other masses [kg]. */
    public PeopleRange withMass(Extent other) {
        return new PeopleRange(about, other, height, fat, age, fitness);
    }

    /** The same with other heights [m]. */
    public PeopleRange withHeight(Extent other) {
        return new PeopleRange(about, mass, other, fat, age, fitness);
    }

    /** The same with other shares of fat [percent]. */
    public PeopleRange withFat(Extent other) {
        return new PeopleRange(about, mass, height, other, age, fitness);
    }

    /** The same with other ages [years]. */
    public PeopleRange withAge(Extent other) {
        return new PeopleRange(about, mass, height, fat, other, fitness);
    }

    /** The same with other fitness [mL/(kg min)]. */
    public PeopleRange withFitness(Extent other) {
        return new PeopleRange(about, mass, height, fat, age, other);
    }

    /**
     * One of them.
     *
     * @param place 0 to 1 each: height, mass, fat, age, fitness
     */
    Person at(double[] place) {
        double heavy = even(BY_HEIGHT * place[0] + (1 - BY_HEIGHT) * place[1]);
        return new Person(
                about.name(),
                about.sex(),
                age.at(place[3]),
                height.at(place[0]),
                mass.at(heavy),
                fat.at(place[2]),
                fitness.at(place[4]),
                about.heatOffset());
    }

    /** Share of two even places, weighed, that lies below: so that the place in the range of masses is even as well. */
    private static double even(double weighed) {
        double top = Math.max(BY_HEIGHT, 1 - BY_HEIGHT);
        double foot = 1 - top;
        if (weighed < foot) {
            return weighed * weighed / (2 * foot * top);
        }
        return weighed > top ? 1 - (1 - weighed) * (1 - weighed) / (2 * foot * top) : (weighed - 0.5 * foot) / top;
    }

    /** What a place of a person belongs to. */
    static Driver driver(int place) {
        return switch (place) {
            case 0, 1 -> Driver.BUILD;
            case 2 -> Driver.FAT;
            case 3 -> Driver.AGE;
            default -> Driver.FITNESS;
        };
    }
}

package longnight.study;

import longnight.body.Person;

/** Invented people whom every night may be asked for. */
public final class People {
    private People() {}

    /**
     * A small lean person: much surface for the mass, little muscle to shiver with and little fat. 25 years, 1.60 m, 51 kg, 19 %
     * fat, 40 mL/(kg min). Invented; weaker people than this sit out nights too.
     *
     * @param name shown to people
     */
    public static Person smallAndLean(String name) {
        return new Person(name, Person.Sex.FEMALE, 25, 1.60, 51, 19, 40, 1);
    }
}

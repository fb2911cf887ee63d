package longnight;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMember;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.domain.JavaType;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The rooms of the engine and the doors between them. What is not named here as a door is a wall. */
@AnalyzeClasses(packages = "longnight", importOptions = ImportOption.DoNotIncludeTests.class)
class ArchitectureTest {
    private static final String HIPPARCHUS = "org.hipparchus..";
    private static final String COMMONS_MATH = "org.apache.commons.math3..";
    private static final String YAML = "org.snakeyaml.engine..";
    private static final String CSV = "org.apache.commons.csv..";
    private static final String CHARTS = "org.jfree..";
    private static final String SVG = "org.apache.batik..";
    private static final String JSON = "com.fasterxml.jackson.core..";
    private static final String PDF = "org.apache.pdfbox..";
    private static final String FONTS = "org.apache.fontbox..";
    private static final String COMMANDS = "picocli..";

    private static final String[] ROOMS = {
        "assumption",
        "figure",
        "quantity",
        "air",
        "body",
        "clothing",
        "outdoors",
        "night",
        "proof",
        "study",
        "scenario",
        "report",
        "cli"
    };

    /** Everything a scenario or a result may be made of. */
    private static final String[] DOMAIN = {
        "night", "proof", "body", "clothing", "outdoors", "air", "assumption", "figure"
    };

    /** Rooms where the same question has the same answer, to the last digit, on every machine and at every hour. */
    private static final String[] PURE =
            packages("assumption", "figure", "air", "body", "clothing", "outdoors", "night", "proof");

    // --- Doors ---

    @ArchTest
    static final ArchRule assumption = room("assumption");

    @ArchTest
    static final ArchRule figure = room("figure");

    @ArchTest
    static final ArchRule quantity = room("quantity");

    @ArchTest
    static final ArchRule air = room("air");

    @ArchTest
    static final ArchRule body = room("body", packages("assumption", "figure", "air"));

    @ArchTest
    static final ArchRule clothing = room("clothing", packages("assumption", "figure", "air"));

    @ArchTest
    static final ArchRule outdoors = room("outdoors", packages("assumption", "figure", "air"));

    @ArchTest
    static final ArchRule night =
            room("night", packages("body", "clothing", "outdoors", "air", "assumption", "figure"), HIPPARCHUS);

    @ArchTest
    static final ArchRule proof =
            room("proof", packages("night", "body", "clothing", "outdoors", "air", "assumption", "figure"));

    @ArchTest
    static final ArchRule study = room("study", packages(DOMAIN), HIPPARCHUS, COMMONS_MATH);

    @ArchTest
    static final ArchRule scenario = room("scenario", with(packages(DOMAIN), "longnight.quantity.."), YAML, CSV);

    @ArchTest
    static final ArchRule report = room(
            "report",
            with(packages(DOMAIN), "longnight.study..", "longnight.quantity.."),
            CHARTS,
            SVG,
            CSV,
            JSON,
            PDF,
            FONTS);

    @ArchTest
    static final ArchRule cli =
            room("cli", packages("scenario", "study", "report", "proof", "night", "quantity"), COMMANDS);

    @ArchTest
    static final ArchRule everything_lives_in_a_room = classes()
            .should()
            .resideInAnyPackage(packages(ROOMS))
            .because("a class outside the rooms is outside the rules")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule no_cycles_between_packages = slices().matching("longnight.(**)")
            .namingSlices("$1")
            .should()
            .beFreeOfCycles()
            .allowEmptyShould(true);

    // --- Purity ---

    @ArchTest
    static final ArchRule pure_rooms_take_nothing_but_the_plain_language = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .dependOnClassesThat(
                    describe("reach files, clocks, chance, customs, threads or logs", ArchitectureTest::isImpure))
            .because("a night depends on its scenario and on nothing else")
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule pure_rooms_ask_nothing_of_the_machine = noClasses()
            .that()
            .resideInAnyPackage(PURE)
            .should()
            .accessTargetWhere(target(
                    "asks the machine",
                    (owner, name) -> (owner.equals("java.lang.System")
                                    && !Set.of("arraycopy", "identityHashCode").contains(name))
                            || (owner.equals("java.lang.Math") && name.equals("random"))
                            || name.equals("parallelStream")
                            || (owner.startsWith("java.util.stream.") && name.equals("parallel"))))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule laws_give_the_same_digits_everywhere = noClasses()
            .that()
            .resideInAnyPackage(packages("air", "body", "clothing", "outdoors", "night"))
            .should()
            .accessTargetWhere(target(
                    "is a Math function free in its last digit",
                    (owner, name) -> owner.equals("java.lang.Math")
                            && Set.of(
                                            "exp", "expm1", "pow", "log", "log10", "log1p", "sin", "cos", "tan", "asin",
                                            "acos", "atan", "atan2", "sinh", "cosh", "tanh", "cbrt", "hypot")
                                    .contains(name)))
            .because("StrictMath has them with the same last digit on every machine")
            .allowEmptyShould(true);

    // --- Manners ---

    @ArchTest
    static final ArchRule only_the_command_line_ends_the_process = noClasses()
            .that()
            .resideOutsideOfPackage("longnight.cli..")
            .should()
            .accessTargetWhere(target(
                    "ends the process",
                    (owner, name) -> (owner.equals("java.lang.System") && name.equals("exit"))
                            || (owner.equals("java.lang.Runtime")
                                    && Set.of("exit", "halt").contains(name))))
            .allowEmptyShould(true);

    @ArchTest
    static final ArchRule borrowed_types_stay_indoors = classes()
            .that()
            .resideOutsideOfPackage("longnight.cli..")
            .and()
            .arePublic()
            .should(showNoBorrowedTypes())
            .because("a library must be replaceable without its room's callers noticing")
            .allowEmptyShould(true);

    private static ArchRule room(String name) {
        return room(name, new String[0]);
    }

    private static ArchRule room(String name, String[] doors, String... libraries) {
        String[] allowed = with(
                with(with(doors, libraries), "longnight." + name + ".."),
                "", // arrays of primitives
                "java..",
                "javax..",
                "org.w3c.dom..",
                "org.jspecify..");
        return classes()
                .that()
                .resideInAPackage("longnight." + name + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(allowed)
                .allowEmptyShould(true);
    }

    private static boolean isImpure(JavaClass type) {
        String name = type.getBaseComponentType().getName();
        if (!name.startsWith("java") || name.equals("java.lang.Object")) {
            return false;
        }
        boolean plain = resideInAnyPackage(
                        "java.lang",
                        "java.lang.annotation",
                        "java.lang.invoke",
                        "java.lang.runtime",
                        "java.math",
                        "java.util",
                        "java.util.function",
                        "java.util.stream")
                .test(type.getBaseComponentType());
        return !plain
                || Set.of(
                                "java.lang.Process",
                                "java.lang.ProcessBuilder",
                                "java.lang.Runtime",
                                "java.lang.Thread",
                                "java.lang.ThreadLocal",
                                "java.util.Calendar",
                                "java.util.Date",
                                "java.util.GregorianCalendar",
                                "java.util.Locale",
                                "java.util.Random",
                                "java.util.Scanner",
                                "java.util.SplittableRandom",
                                "java.util.TimeZone",
                                "java.util.Timer",
                                "java.util.UUID")
                        .contains(name)
                || name.startsWith("java.lang.System$");
    }

    /** Looks at calls, at field accesses and at method references alike. */
    private static DescribedPredicate<JavaAccess<?>> target(String what, TargetTest test) {
        return describe(what, access -> test.test(access.getTargetOwner().getName(), access.getName()));
    }

    private interface TargetTest {
        boolean test(String owner, String name);
    }

    private static ArchCondition<JavaClass> showNoBorrowedTypes() {
        return new ArchCondition<>("show no type of a library in a signature") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                Stream<JavaType> ancestors =
                        Stream.concat(type.getSuperclass().stream(), type.getInterfaces().stream());
                ancestors.forEach(ancestor -> check(type, type.getName() + " extends", ancestor, events));
                type.getMembers().stream()
                        .filter(ArchitectureTest::isVisible)
                        .forEach(member -> typesOf(member)
                                .forEach(shown -> check(type, member.getFullName() + " shows", shown, events)));
            }

            private void check(JavaClass type, String who, JavaType shown, ConditionEvents events) {
                for (JavaClass raw : shown.getAllInvolvedRawTypes()) {
                    JavaClass base = raw.getBaseComponentType();
                    boolean ours = base.isPrimitive()
                            || resideInAnyPackage("longnight..", "java..", "javax..", "org.w3c.dom..")
                                    .test(base);
                    if (!ours) {
                        events.add(SimpleConditionEvent.violated(type, who + " " + base.getName()));
                    }
                }
            }
        };
    }

    private static boolean isVisible(JavaMember member) {
        return !member.getModifiers().contains(JavaModifier.SYNTHETIC)
                && (member.getModifiers().contains(JavaModifier.PUBLIC)
                        || member.getModifiers().contains(JavaModifier.PROTECTED));
    }

    private static List<JavaType> typesOf(JavaMember member) {
        List<JavaType> types = new ArrayList<>();
        if (member instanceof JavaField field) {
            types.add(field.getType());
        } else if (member instanceof JavaCodeUnit unit) {
            types.add(unit.getReturnType());
            types.addAll(unit.getParameterTypes());
            types.addAll(unit.getExceptionTypes());
        }
        return types;
    }

    private static String[] packages(String... rooms) {
        return Arrays.stream(rooms).map(room -> "longnight." + room + "..").toArray(String[]::new);
    }

    private static String[] with(String[] some, String... more) {
        return Stream.concat(Arrays.stream(some), Arrays.stream(more)).toArray(String[]::new);
    }
}

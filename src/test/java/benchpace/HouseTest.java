package benchpace;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.belongToAnyOf;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.conditions.ArchPredicates.are;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.InstantSource;
import java.util.Arrays;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;

/** The house as DEVELOPERS.md draws it: who may know whom, and what the pure core does without. */
@AnalyzeClasses(packages = "benchpace", importOptions = ImportOption.DoNotIncludeTests.class)
class HouseTest {
    /** Floors 0 to 2: values in, values out. */
    private static final String[] CORE = {
        "benchpace.plan..", "benchpace.live..", "benchpace.cure..", "benchpace.pace..", "benchpace.breaks..",
        "benchpace.shelf..", "benchpace.report..", "benchpace.history..", "benchpace.units..", "benchpace.prep.."};
    /** The same of what turns values into words. */
    private static final String[] PURE = concat(CORE, "benchpace.words..");

    // ---- floors

    /** Same-floor neighbours are held apart by the rules below it. */
    @ArchTest static final ArchRule imports_run_downward_only = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("benchpace..")
            .layer("plan").definedBy("benchpace.plan..")
            .layer("units").definedBy("benchpace.units..")
            .layer("live, cure, pace").definedBy("benchpace.live..", "benchpace.cure..", "benchpace.pace..")
            .layer("breaks, shelf, report").definedBy("benchpace.breaks..", "benchpace.shelf..", "benchpace.report..",
                    "benchpace.history..")
            .layer("prep").definedBy("benchpace.prep..")
            .layer("files, store").definedBy("benchpace.files..", "benchpace.store..")
            .layer("board").definedBy("benchpace.board..")
            .layer("words").definedBy("benchpace.words..")
            .layer("web").definedBy("benchpace.web..")
            .layer("Main").definedBy("benchpace")
            .whereLayer("Main").mayNotBeAccessedByAnyLayer()
            .whereLayer("web").mayOnlyBeAccessedByLayers("Main")
            .whereLayer("words").mayOnlyBeAccessedByLayers("web", "Main")
            .whereLayer("board").mayOnlyBeAccessedByLayers("words", "web", "Main")
            .whereLayer("files, store").mayOnlyBeAccessedByLayers("board", "web", "Main")
            .whereLayer("prep").mayOnlyBeAccessedByLayers("files, store", "board", "words", "web", "Main")
            .whereLayer("breaks, shelf, report").mayOnlyBeAccessedByLayers(
                    "files, store", "board", "words", "web", "Main")
            .whereLayer("live, cure, pace").mayOnlyBeAccessedByLayers(
                    "breaks, shelf, report", "prep", "files, store", "board", "words", "web", "Main");

    @ArchTest static final ArchRule packages_are_free_of_cycles =
            slices().matching("benchpace.(*)..").should().beFreeOfCycles();

    @ArchTest static final ArchRule every_class_lives_on_a_floor = classes()
            .should().resideInAnyPackage(concat(CORE, "benchpace", "benchpace.files..", "benchpace.store..",
                    "benchpace.board..", "benchpace.words..", "benchpace.web.."));

    @ArchTest static final ArchRule the_class_itself_knows_neither_the_cure_nor_the_pace = noClasses()
            .that().resideInAPackage("benchpace.live..")
            .should().dependOnClassesThat().resideInAnyPackage("benchpace.cure..", "benchpace.pace..");

    @ArchTest static final ArchRule the_cure_knows_neither_the_pace_nor_the_class = noClasses()
            .that().resideInAPackage("benchpace.cure..")
            .should().dependOnClassesThat().resideInAnyPackage("benchpace.pace..", "benchpace.live..");

    @ArchTest static final ArchRule the_pace_knows_neither_the_cure_nor_the_class = noClasses()
            .that().resideInAPackage("benchpace.pace..")
            .should().dependOnClassesThat().resideInAnyPackage("benchpace.cure..", "benchpace.live..");

    @ArchTest static final ArchRule words_are_made_of_facts_that_a_view_gives = noClasses()
            .that().resideInAPackage("benchpace.words..")
            .should().dependOnClassesThat().resideInAPackage("benchpace.board");

    @ArchTest static final ArchRule the_plan_knows_nothing_above_it = noClasses()
            .that().resideInAPackage("benchpace.plan..")
            .should().dependOnClassesThat(are(resideInAnyPackage("benchpace.."))
                    .and(not(resideInAnyPackage("benchpace.plan.."))));

    @ArchTest static final ArchRule units_know_nothing_but_numbers = noClasses()
            .that().resideInAPackage("benchpace.units..")
            .should().dependOnClassesThat(are(resideInAnyPackage("benchpace.."))
                    .and(not(resideInAnyPackage("benchpace.units.."))));

    // ---- rooms

    @ArchTest static final ArchRule the_board_uses_its_rooms_downward_only = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("benchpace.board..")
            .layer("playback").definedBy("benchpace.board.playback")
            .layer("writer").definedBy("benchpace.board")
            .layer("export").definedBy("benchpace.board.export")
            .layer("view").definedBy("benchpace.board.view")
            .layer("waiting").definedBy("benchpace.board.waiting")
            .layer("pacing").definedBy("benchpace.board.pacing")
            .layer("cooling").definedBy("benchpace.board.cooling")
            .layer("prep").definedBy("benchpace.board.prep")
            .layer("attempt, time").definedBy("benchpace.board.attempt", "benchpace.board.time")
            .layer("plans").definedBy("benchpace.board.plans")
            .whereLayer("plans").mayNotBeAccessedByAnyLayer()
            .whereLayer("playback").mayNotBeAccessedByAnyLayer()
            .whereLayer("writer").mayOnlyBeAccessedByLayers("playback")
            .whereLayer("export").mayOnlyBeAccessedByLayers("writer")
            .whereLayer("view").mayOnlyBeAccessedByLayers("writer", "playback", "export")
            .whereLayer("prep").mayOnlyBeAccessedByLayers("writer")
            .whereLayer("waiting").mayOnlyBeAccessedByLayers("writer", "view")
            .whereLayer("pacing").mayOnlyBeAccessedByLayers("writer", "playback", "view", "waiting")
            .whereLayer("cooling")
            .mayOnlyBeAccessedByLayers("writer", "playback", "export", "view", "waiting", "pacing");

    /** What is played back cannot write: it is given no store. */
    @ArchTest static final ArchRule what_is_played_back_knows_no_store = noClasses()
            .that().resideInAPackage("benchpace.board.playback..")
            .should().dependOnClassesThat().resideInAnyPackage("benchpace.store..", "benchpace.board.prep..")
            .orShould().callMethodWhere(named("something is written", Set.of("submit", "create", "delete", "restore",
                    "begin", "draw", "accept", "forget", "reset"), "benchpace.board"));

    @ArchTest static final ArchRule the_waits_room_does_without_the_paces = noClasses()
            .that().resideInAPackage("benchpace.board.waiting..")
            .should().dependOnClassesThat().resideInAPackage("benchpace.board.pacing..");

    @ArchTest static final ArchRule a_case_knows_no_solver_and_the_solver_no_room = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("benchpace.cure..")
            .layer("case").definedBy("benchpace.cure")
            .layer("solver").definedBy("benchpace.cure.solver")
            .layer("room").definedBy("benchpace.cure.room")
            .whereLayer("room").mayNotBeAccessedByAnyLayer()
            .whereLayer("solver").mayOnlyBeAccessedByLayers("room");

    @ArchTest static final ArchRule the_pace_uses_its_rooms_downward_only = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("benchpace.pace..")
            .layer("engine").definedBy("benchpace.pace.engine")
            .layer("forecast").definedBy("benchpace.pace.forecast")
            .layer("belief").definedBy("benchpace.pace.belief")
            .layer("record").definedBy("benchpace.pace")
            .whereLayer("engine").mayNotBeAccessedByAnyLayer()
            .whereLayer("forecast").mayOnlyBeAccessedByLayers("engine")
            .whereLayer("belief").mayOnlyBeAccessedByLayers("engine", "forecast");

    @ArchTest static final ArchRule what_a_plan_of_the_wait_is_knows_no_search = noClasses()
            .that().resideInAPackage("benchpace.breaks")
            .should().dependOnClassesThat().resideInAPackage("benchpace.breaks.search");

    @ArchTest static final ArchRule the_file_knows_no_table = noClasses()
            .that().resideInAPackage("benchpace.store.sqlite")
            .should().dependOnClassesThat().resideInAPackage("benchpace.store");

    @ArchTest static final ArchRule rooms_of_the_web_are_free_of_cycles =
            slices().matching("benchpace.web.(*)..").should().beFreeOfCycles();

    @ArchTest static final ArchRule no_room_of_the_web_knows_the_server = noClasses()
            .that().resideInAPackage("benchpace.web.*..")
            .should().dependOnClassesThat().resideInAPackage("benchpace.web");

    @ArchTest static final ArchRule rooms_of_the_screens_are_free_of_cycles =
            slices().matching("benchpace.web.screen.(*)..").should().beFreeOfCycles();

    @ArchTest static final ArchRule no_screen_knows_who_asks_for_it = noClasses()
            .that().resideInAPackage("benchpace.web.screen..")
            .should().dependOnClassesThat(are(resideInAnyPackage("benchpace.web.."))
                    .and(not(resideInAnyPackage("benchpace.web.screen.."))));

    @ArchTest static final ArchRule no_screen_knows_all_the_others = noClasses()
            .that().resideInAPackage("benchpace.web.screen.*..")
            .should().dependOnClassesThat().resideInAPackage("benchpace.web.screen");

    @ArchTest static final ArchRule kinds_of_file_are_free_of_cycles =
            slices().matching("benchpace.files.(*)..").should().beFreeOfCycles();

    @ArchTest static final ArchRule what_all_files_need_knows_no_kind_of_file = noClasses()
            .that().resideInAPackage("benchpace.files")
            .should().dependOnClassesThat().resideInAPackage("benchpace.files.*..");

    // ---- the pure core

    @ArchTest static final ArchRule the_core_has_no_clock = noClasses()
            .that().resideInAnyPackage(PURE)
            .should().callMethodWhere(named("a clock is read", Set.of("now", "currentTimeMillis", "nanoTime",
                    "systemDefault", "systemDefaultZone", "systemUTC"), "java."))
            .orShould().dependOnClassesThat(are(belongToAnyOf(Clock.class, InstantSource.class)));

    @ArchTest static final ArchRule the_core_draws_no_lots_but_from_a_seed = noClasses()
            .that().resideInAnyPackage(PURE)
            .should().callConstructorWhere(unseeded())
            .orShould().callMethodWhere(named("lots are drawn without a seed", Set.of("random", "randomUUID"), "java."))
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
            .orShould().dependOnClassesThat().haveFullyQualifiedName("java.security.SecureRandom");

    @ArchTest static final ArchRule the_core_has_no_files_network_database_log_or_threads = noClasses()
            .that().resideInAnyPackage(PURE)
            .should().dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio.file..", "java.nio.channels..",
                    "java.net..", "java.sql..", "javax..", "java.util.logging..",
                    "org.slf4j..", "java.util.concurrent..")
            .orShould().dependOnClassesThat().areAssignableTo(Thread.class)
            .orShould().dependOnClassesThat().areAssignableTo(ThreadLocal.class)
            .orShould().dependOnClassesThat().areAssignableTo(System.Logger.class)
            .orShould().callMethodWhere(named("work is spread over threads", Set.of("parallel", "parallelStream"),
                    "java."));

    @ArchTest static final ArchRule the_core_asks_nothing_of_its_surroundings = noClasses()
            .that().resideInAnyPackage(PURE)
            .should().callMethodWhere(named("the surroundings are asked", Set.of("getProperty", "getenv", "exit"),
                    "java.lang."))
            .orShould().accessField(System.class, "out")
            .orShould().accessField(System.class, "err");

    @ArchTest static final ArchRule the_core_stands_on_java_alone = noClasses()
            .that().resideInAnyPackage(PURE)
            .should().dependOnClassesThat(not(resideInAnyPackage("benchpace..", "java.."))
                    .and(not(primitiveOrArray())));

    @ArchTest static final ArchRule core_classes_are_values_interfaces_or_final = classes()
            .that().resideInAnyPackage(PURE).and().areNotAnonymousClasses()
            .should(be(
                    DescribedPredicate.<JavaClass>describe("records, enums, interfaces or final", c -> c.isRecord()
                            || c.isEnum() || c.isInterface() || c.getModifiers().contains(JavaModifier.FINAL))));

    // ---- the edge

    @ArchTest static final ArchRule json_is_read_and_written_at_the_edge = noClasses()
            .that().resideOutsideOfPackages("benchpace.files..", "benchpace.store..", "benchpace.web..")
            .should().dependOnClassesThat().resideInAnyPackage("com.fasterxml.jackson..");

    @ArchTest static final ArchRule only_the_store_speaks_to_the_database = noClasses()
            .that().resideOutsideOfPackage("benchpace.store..")
            .should().dependOnClassesThat().resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite..");

    @ArchTest static final ArchRule only_the_web_and_the_wiring_know_server_and_templates = noClasses()
            .that().resideOutsideOfPackages("benchpace", "benchpace.web..")
            .should().dependOnClassesThat().resideInAnyPackage(
                    "io.javalin..", "gg.jte..", "jakarta.servlet..", "org.eclipse.jetty..");

    @ArchTest static final ArchRule only_the_command_line_knows_the_command_line = noClasses()
            .that().resideOutsideOfPackage("benchpace")
            .should().dependOnClassesThat().resideInAnyPackage("picocli..");

    // ---- names

    @ArchTest static final ArchRule names_are_the_trades_or_the_textbooks = noClasses()
            .should().haveSimpleNameEndingWith("Manager")
            .orShould().haveSimpleNameEndingWith("Helper")
            .orShould().haveSimpleNameEndingWith("Helpers")
            .orShould().haveSimpleNameEndingWith("Util")
            .orShould().haveSimpleNameEndingWith("Utils")
            .orShould().haveSimpleNameEndingWith("Impl")
            .orShould().haveSimpleNameEndingWith("Data")
            .orShould().haveSimpleNameEndingWith("Info")
            .orShould().haveSimpleNameEndingWith("Service");

    private static DescribedPredicate<JavaCall<?>> named(String what, Set<String> methods, String ownerPrefix) {
        return DescribedPredicate.describe(what, call -> methods.contains(call.getTarget().getName())
                && call.getTarget().getOwner().getName().startsWith(ownerPrefix));
    }

    private static DescribedPredicate<JavaCall<?>> unseeded() {
        return DescribedPredicate.describe("a source of lots is made without a seed", call -> {
            AccessTarget target = call.getTarget();
            JavaClass owner = target.getOwner();
            boolean source = owner.isAssignableTo(Random.class) || owner.isAssignableTo(SplittableRandom.class)
                    || owner.isAssignableTo(RandomGenerator.class);
            return source && call.getTarget().getRawParameterTypes().isEmpty();
        });
    }

    private static DescribedPredicate<JavaClass> primitiveOrArray() {
        return DescribedPredicate.describe("primitive or an array", c -> c.isPrimitive() || c.isArray());
    }

    private static String[] concat(String[] first, String... more) {
        String[] all = Arrays.copyOf(first, first.length + more.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return all;
    }
}

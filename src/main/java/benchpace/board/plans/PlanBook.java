package benchpace.board.plans;

import benchpace.board.plans.PlanAnswer.Kept;
import benchpace.files.plan.PlanFolder;
import benchpace.plan.Plan;
import benchpace.plan.PlanId;
import benchpace.store.SavedPlans;
import benchpace.store.SavedPlans.By;
import java.time.Instant;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * All plans that a class can be set up from: the organiser's own and the starter plans. Each change is a new version,
 * durable in the store before anybody is told; then it goes to the plan's file ({@link PlanFiles}). A file that
 * somebody put in the folder is a version like others, taken in at the start and before the next change of its plan, so
 * that neither side overwrites the other unseen; with the id of a starter plan it stands in that plan's place. Safe for
 * use by many threads.
 */
public final class PlanBook {
    /** By their ids; empty until somebody first asks. */
    private final Map<String, BookPlan> starters = new LinkedHashMap<>();
    private final Supplier<List<Plan>> readingStarters;
    private final SavedPlans saved;
    private final PlanFiles files;
    private final InstantSource clock;
    private final List<PlanTrouble> unreadable = new ArrayList<>();
    private final Map<String, BookPlan> own = new LinkedHashMap<>();
    private final Map<String, Instant> deleted;
    private volatile Optional<Map<String, BookPlan>> listed = Optional.empty();

    private PlanBook(Supplier<List<Plan>> starters, SavedPlans saved, PlanFolder folder, InstantSource clock) {
        this.readingStarters = starters;
        this.saved = saved;
        this.files = new PlanFiles(saved, folder);
        this.clock = clock;
        saved.latest().forEach(version -> own.put(version.id(), BookPlan.own(version)));
        deleted = new LinkedHashMap<>(saved.deleted());
        saved.lastNumbers().forEach((id, last) -> {
            int readable = Optional.ofNullable(own.get(id)).map(BookPlan::version).orElse(0);
            if (readable < last) {
                unreadable.add(new PlanTrouble.Unreadable(id, last, readable));
            }
        });
    }

    /**
     * Opens the book, takes in what was put in the folder, and writes what it lacks.
     *
     * @param starters come with the program; never changed, and read when somebody first looks
     * @throws benchpace.files.BadFile if a file of the folder holds no sound plan
     */
    public static PlanBook open(Supplier<List<Plan>> starters, SavedPlans saved, PlanFolder folder,
                                InstantSource clock) {
        List<PlanFolder.Found> found = folder.found();
        PlanBook book = new PlanBook(starters, saved, folder, clock);
        synchronized (book) {
            book.files.changed(found, book.deleted.keySet()).forEach(book::takeIn);
            book.ownListed().forEach(book.files::bringUpToDate);
        }
        return book;
    }

    private BookPlan takeIn(PlanFolder.Found file) {
        String id = file.plan().id().value();
        BookPlan before = own.get(id);
        BookPlan now = before == null || deleted.containsKey(id) || !before.plan().equals(file.plan())
                ? keep(file.plan(), By.FOLDER) : before;
        files.tookIn(file);
        return now;
    }

    // ---- looking

    /** The organiser's own by name, then the starter plans in their order. */
    public Collection<BookPlan> all() {
        return listed().values();
    }

    private Map<String, BookPlan> listed() {
        return listed.orElseGet(this::list);
    }

    public Optional<BookPlan> find(String id) {
        return Optional.ofNullable(listed().get(id));
    }

    /** Those that were deleted, as they last stood, the latest first. */
    public synchronized List<BookPlan> deleted() {
        return deleted.entrySet().stream()
                .sorted(Map.Entry.<String, Instant>comparingByValue().reversed())
                .flatMap(gone -> Stream.ofNullable(own.get(gone.getKey())))
                .toList();
    }

    /** Every version of a plan that is there or was deleted, newest first; none of a starter plan. */
    public List<SavedPlans.Version> versions(String id) {
        return saved.versions(id);
    }

    /** A plan as it was in one of its versions. */
    public Optional<Plan> version(String id, int number) {
        return saved.version(id, number).flatMap(SavedPlans.Version::plan);
    }

    /** What is amiss and worth a sentence. */
    public synchronized List<PlanTrouble> troubles() {
        List<PlanTrouble> troubles = new ArrayList<>(unreadable);
        files.notWritten().forEach(id -> troubles.add(new PlanTrouble.NotWritten(id, PlanFolder.file(new PlanId(id)))));
        return troubles;
    }

    // ---- changing

    /** Keeps a new plan; if its id is taken, under one like it that is free. */
    public synchronized BookPlan add(Plan plan, By by) {
        return written(keep(plan.as(free(plan.id()), plan.name()), by));
    }

    /** The organiser's own plan of that name that says all that this one says, whatever its id. */
    public Optional<BookPlan> alike(Plan plan) {
        return all().stream().filter(p -> !p.starter())
                .filter(p -> p.plan().as(plan.id(), p.plan().name()).equals(plan)).findFirst();
    }

    /** Keeps a new plan, unless there is one {@link #alike}: then that one is it. */
    public synchronized BookPlan addOnce(Plan plan, By by) {
        return alike(plan).orElseGet(() -> add(plan, by));
    }

    /** Keeps a copy of a plan, a starter plan or another. @param name of the copy */
    public synchronized PlanAnswer copy(String id, String name, By by) {
        BookPlan of = listed().get(id);
        return of == null ? refused(missing(id)) : new Kept(add(of.plan().as(of.plan().id(), name), by));
    }

    /**
     * Keeps a plan as the next version of its id; nothing if it is no other than the last.
     *
     * @param looked whether that is the version which whoever changes it looked at
     */
    public synchronized PlanAnswer save(Plan plan, IntPredicate looked, By by) {
        String id = plan.id().value();
        Optional<PlanRefusal> refusal = fault(id, looked);
        if (refusal.isPresent()) {
            return refused(refusal.get());
        }
        BookPlan before = own.get(id);
        return new Kept(before.plan().equals(plan) ? before : written(keep(plan, by)));
    }

    /** Makes an earlier version the newest again. @param looked as {@link #save} */
    public synchronized PlanAnswer bringBack(String id, int number, IntPredicate looked, By by) {
        Optional<PlanRefusal> refusal = fault(id, looked);
        if (refusal.isPresent()) {
            return refused(refusal.get());
        }
        Optional<Plan> earlier = version(id, number);
        return earlier.isPresent() ? save(earlier.get(), looked, by)
                : refused(new PlanRefusal.NoSuchVersion(own.get(id).plan(), number));
    }

    /** Takes a plan off the list; its versions stay. @param looked as {@link #save} */
    public synchronized PlanAnswer delete(String id, IntPredicate looked) {
        Optional<PlanRefusal> refusal = fault(id, looked);
        if (refusal.isPresent()) {
            return refused(refusal.get());
        }
        BookPlan plan = own.get(id);
        Instant now = now();
        saved.delete(plan.plan().id(), now);
        deleted.put(id, now);
        list();
        files.remove(plan);
        return new Kept(plan);
    }

    /** Puts a plan that was deleted on the list again; one that is on it stays. */
    public synchronized PlanAnswer restore(String id) {
        BookPlan plan = own.get(id);
        if (plan == null) {
            return refused(missing(id));
        }
        if (deleted.containsKey(id)) {
            saved.restore(plan.plan().id());
            deleted.remove(id);
            list();
            written(plan);
        }
        return new Kept(plan);
    }

    private static PlanAnswer refused(PlanRefusal why) {
        return new PlanAnswer.Refused(why);
    }

    /** Why nothing of a plan may be changed now. */
    private Optional<PlanRefusal> fault(String id, IntPredicate looked) {
        BookPlan there = listed().get(id);
        if (there == null || there.starter()) {
            return Optional.of(missing(id));
        }
        files.putThere(there).map(this::takeIn).filter(taken -> !taken.id().equals(id)).ifPresent(this::written);
        BookPlan now = own.get(id);
        return looked.test(now.version()) ? Optional.empty() : Optional.of(new PlanRefusal.Stale(now));
    }

    /** Why a plan cannot be changed that is not among the organiser's own. */
    public synchronized PlanRefusal missing(String id) {
        if (starters().containsKey(id)) {
            return new PlanRefusal.Starter(starters().get(id).plan());
        }
        return own.containsKey(id) ? new PlanRefusal.Deleted(own.get(id).plan()) : new PlanRefusal.NoSuchPlan(id);
    }

    private BookPlan keep(Plan plan, By by) {
        BookPlan kept = BookPlan.own(saved.add(plan, now(), by));
        own.put(kept.id(), kept);
        deleted.remove(kept.id());
        unreadable.removeIf(trouble -> trouble instanceof PlanTrouble.Unreadable one && one.id().equals(kept.id()));
        list();
        return kept;
    }

    private BookPlan written(BookPlan plan) {
        files.write(plan);
        return plan;
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /** The id itself, or with the first number from 2 on that none has or had. */
    private PlanId free(PlanId id) {
        PlanId free = id;
        for (int n = 2; taken(free); n++) {
            String ending = "-" + n;
            String stem = id.value().substring(0, Math.min(id.value().length(), PlanId.LONGEST - ending.length()));
            free = new PlanId(stem + ending);
        }
        return free;
    }

    private boolean taken(PlanId id) {
        return starters().containsKey(id.value()) || saved.version(id.value(), 1).isPresent();
    }

    private synchronized Map<String, BookPlan> starters() {
        if (starters.isEmpty()) {
            readingStarters.get().forEach(plan -> starters.put(plan.id().value(), BookPlan.starter(plan)));
        }
        return starters;
    }

    private Stream<BookPlan> ownListed() {
        return own.values().stream().filter(plan -> !deleted.containsKey(plan.id()))
                .sorted(Comparator.comparing((BookPlan plan) -> plan.plan().name(), String.CASE_INSENSITIVE_ORDER)
                        .thenComparing(BookPlan::id));
    }

    private synchronized Map<String, BookPlan> list() {
        Map<String, BookPlan> now = new LinkedHashMap<>();
        ownListed().forEach(plan -> now.put(plan.id(), plan));
        starters().forEach(now::putIfAbsent);
        listed = Optional.of(now);
        return now;
    }
}

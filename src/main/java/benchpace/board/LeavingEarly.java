package benchpace.board;

import benchpace.board.cooling.CandleClock;
import benchpace.live.ClassEvent;
import benchpace.live.Command;
import benchpace.live.LiveClass;
import benchpace.live.Recorded;
import benchpace.live.Refusal;
import benchpace.live.Seat;
import benchpace.plan.SeatNumber;
import benchpace.shelf.Claim;
import benchpace.shelf.ClaimWord;
import benchpace.shelf.ShelfEntry;
import benchpace.shelf.ShelfEvent;
import benchpace.shelf.ShelfPlace;
import benchpace.shelf.ShelfRefusal;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A guest leaves before the candle is set: what that means for the class and for the shelf, which keep a log each.
 *
 * <p>The candle goes to the shelf first, then the seat leaves: a place that somebody else took meanwhile leaves the
 * class as it was, and a class that refuses has the candle taken back. A class that is over, or a seat that has left
 * already, keeps no candle from the shelf. If the store fails between the two, the same wish sent again does the rest.
 *
 * <p>The shelf follows the class afterwards: who is back at the table has no candle waiting there, and who was not back
 * after all has it there again, with its word.
 */
public final class LeavingEarly {
    /** The longest id of a wish, characters: room is left for what it leads to in the class. */
    public static final int LONGEST_ID = Command.LONGEST_ID - Command.own("leave.").length();

    private final ShelfBoard shelf;

    public LeavingEarly(ShelfBoard shelf) {
        this.shelf = shelf;
    }

    /**
     * Somebody wishes to leave.
     *
     * @param id        makes repeating harmless: the same wish again has its first answer
     * @param device    the mark of the device that asks
     * @param claim     the word that was drawn for the guest before; empty if one is to be drawn
     * @param name      empty unless the guest wants one kept
     * @param collectBy until when the candle is kept; empty for the shop's usual time
     */
    public record Wish(String id, String device, SeatNumber seat, ShelfPlace place, Optional<ClaimWord> claim,
                       String name, Optional<Instant> collectBy) {
        /** Whether that candle was put there by this wish; words that were erased since are as they were sent. */
        private boolean led(String classId, ShelfEvent.Placed put) {
            boolean erased = put.claim() instanceof Claim.Erased;
            return put.classId().equals(classId) && put.seat().equals(seat) && put.place().equals(place)
                    && collectBy.filter(day -> !day.isBefore(put.readyFrom())).map(put.collectBy()::equals).orElse(true)
                    && (erased || put.name().equals(name) && claim.map(put.claim()::equals).orElse(true));
        }
    }

    /** What became of it. */
    public sealed interface Outcome {
        /** @param left whether the seat has left the class; not if that was over */
        record OnTheShelf(ShelfEntry candle, boolean left) implements Outcome { }

        /** It was put there by the same wish before, and taken back since. */
        record TakenBack() implements Outcome { }

        /** The seat has no candle of its own. */
        record NotPoured(SeatNumber seat) implements Outcome { }

        /** The class is as it was. */
        record ShelfRefused(ShelfRefusal why) implements Outcome { }

        /** Both are as they were. */
        record ClassRefused(Refusal why) implements Outcome { }
    }

    /** What became of a seat's candle with an event of the class. */
    public enum Followed { NOTHING, OFF, ON }

    /** @param fresh draws a claim word, where the wish has none */
    public Outcome leave(ClassBoard board, Wish wish, Supplier<ClaimWord> fresh) {
        Optional<CandleClock> candle = board.view().seats().stream()
                .filter(s -> s.seat() == wish.seat().value()).findFirst().flatMap(s -> s.candle());
        if (candle.isEmpty()) {
            return new Outcome.NotPoured(wish.seat());
        }
        ClaimWord claim = wish.claim().orElseGet(fresh);
        ShelfBoard.Outcome outcome = shelf.submit(wish.id(),
                e -> e instanceof ShelfEvent.Placed put && wish.led(board.id(), put),
                s -> shelf.standing(board.id(), wish.seat()).map(ShelfEntry::id),
                (rules, s, now) -> rules.put(s, board.id(), wish.seat(), wish.place(), candle.get().said().until(),
                        wish.collectBy(), claim, wish.name(), now));
        if (outcome instanceof ShelfBoard.Outcome.Refused refused) {
            return new Outcome.ShelfRefused(refused.why());
        }
        ShelfBoard.Outcome.Done done = (ShelfBoard.Outcome.Done) outcome;
        Optional<Refusal> refusal = leaves(board, wish);
        if (refusal.isPresent()) {
            if (!done.duplicate()) { // what another wish put there is not this one's to take back
                shelf.guestIsBack(Command.own("back." + wish.id()), board.id(), wish.seat(), shelf.now());
            }
            return new Outcome.ClassRefused(refusal.get());
        }
        boolean left = is(board.live(), wish.seat(), Seat.Presence.LEFT);
        return done.entry().<Outcome>map(e -> new Outcome.OnTheShelf(e, left)).orElseGet(Outcome.TakenBack::new);
    }

    /** Why the seat stays at the table of a class that goes on. */
    private static Optional<Refusal> leaves(ClassBoard board, Wish wish) {
        Answer answer = board.submit(new Command(Command.own("leave." + wish.id()), "instructor", wish.device(),
                board.now(), new ClassEvent.SeatLeft(wish.seat())));
        return answer instanceof Answer.Refused refused && !(refused.reason() instanceof Refusal.AlreadySo)
                && !(refused.reason() instanceof Refusal.ClassIsClosed)
                ? Optional.of(refused.reason()) : Optional.empty();
    }

    /**
     * What the shelf makes of an event of a class. Safe to be asked again for the same event, as after an answer that
     * was lost or a shelf that could not be written.
     *
     * @param seq the event that a command became, just now or before
     */
    Followed after(ClassBoard board, long seq) {
        LiveClass live = board.live();
        Recorded recorded = live.recorded(seq).orElseThrow();
        ClassEvent event = recorded.event();
        if (event instanceof ClassEvent.SeatArrived arrived) {
            return back(board, recorded, arrived.seat());
        }
        if (!(event instanceof ClassEvent.Undone undone)) {
            return Followed.NOTHING;
        }
        ClassEvent what = live.recorded(undone.seq()).orElseThrow().event();
        if (what instanceof ClassEvent.SeatLeft left) {
            return back(board, recorded, left.seat());
        }
        boolean gone = what instanceof ClassEvent.SeatArrived arrived
                && is(live, arrived.seat(), Seat.Presence.LEFT)
                && shelf.guestIsGone(id("gone.", board, seq), id("back.", board, undone.seq()));
        return gone ? Followed.ON : Followed.NOTHING;
    }

    private Followed back(ClassBoard board, Recorded recorded, SeatNumber seat) {
        return is(board.live(), seat, Seat.Presence.PRESENT)
                && shelf.guestIsBack(id("back.", board, recorded.seq()), board.id(), seat, recorded.recordedAt())
                ? Followed.OFF : Followed.NOTHING;
    }

    private static boolean is(LiveClass live, SeatNumber number, Seat.Presence presence) {
        return live.seat(number).filter(s -> s.presence() == presence).isPresent();
    }

    private static String id(String what, ClassBoard board, long seq) {
        return Command.own(what + board.id() + "." + seq);
    }
}

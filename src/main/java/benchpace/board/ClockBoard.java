package benchpace.board;

import benchpace.board.time.BoardTime;
import benchpace.board.time.ClockChoice;
import benchpace.board.time.ClockDisagreement;
import benchpace.board.time.ImpossibleClock;
import benchpace.live.Era;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * The only place where the board's time is set: somebody said which clock is right, and what was written by the wrong
 * one moves along. No tap is written meanwhile, so each stands wholly before or wholly after it.
 */
public final class ClockBoard {
    private final BoardTime time;
    private final Supplier<Collection<ClassBoard>> classes;
    private final ReadWriteLock setting = new ReentrantReadWriteLock();
    private final List<Consumer<Duration>> followers = new CopyOnWriteArrayList<>();

    ClockBoard(BoardTime time, Supplier<Collection<ClassBoard>> classes) {
        this.time = time;
        this.classes = classes;
    }

    /** Held by whatever writes an event down. */
    Lock writing() {
        return setting.readLock();
    }

    public Instant board() {
        return time.instant();
    }

    /**
     * The board's time for a class that is set up now.
     *
     * @throws ImpossibleClock if there is no telling what day it is: such a class could not be told from others
     */
    public Instant forNew() {
        mend();
        Instant now = time.instant();
        if (!Era.isPossibleNow(now)) {
            throw new ImpossibleClock(now);
        }
        return now;
    }

    public Instant computer() {
        return time.computer();
    }

    /** What somebody should decide for all classes. */
    public Optional<ClockDisagreement> disagreement() {
        return time.disagreement();
    }

    /** @param action told how far the board's time was set right: what else was written by it moves along */
    public void whenSetRight(Consumer<Duration> action) {
        followers.add(action);
    }

    /**
     * Does as somebody says.
     *
     * @return whether there was anything to decide, and it can be so
     */
    public boolean choose(ClockChoice choice) {
        setting.writeLock().lock();
        try {
            Optional<ClockDisagreement> open = time.disagreement();
            if (open.isEmpty() || choice != ClockChoice.BOARD && !Era.isPossibleNow(time.computer())
                    || choice == ClockChoice.SLEPT && !open.get().slept()) {
                return false;
            }
            switch (choice) {
                case BOARD -> time.keep();
                case COMPUTER -> setRight();
                case SLEPT -> time.follow();
            }
        } finally {
            setting.writeLock().unlock();
        }
        classes.get().forEach(ClassBoard::lookAgain);
        return true;
    }

    /** A class that goes by its own time, ahead of the board's, goes by the board's again: its times move back. */
    public boolean bringBack(ClassBoard board) {
        setting.writeLock().lock();
        try {
            return Era.isPossibleNow(time.instant()) && !board.ahead().isZero()
                    && board.setRight(board.ahead().negated());
        } finally {
            setting.writeLock().unlock();
        }
    }

    /** A board whose time cannot be asks nobody: it goes by the computer's clock as soon as that shows one that can. */
    void mend() {
        if (!mendable()) {
            return;
        }
        setting.writeLock().lock();
        try {
            if (mendable()) {
                setRight();
            }
        } finally {
            setting.writeLock().unlock();
        }
        classes.get().forEach(ClassBoard::lookAgain);
    }

    private boolean mendable() {
        return !Era.isPossibleNow(time.instant()) && Era.isPossibleNow(time.computer());
    }

    /** What a class wrote by a time of its own, ahead of the board's, is off by that much less. */
    private void setRight() {
        Map<ClassBoard, Duration> ahead = new HashMap<>();
        classes.get().forEach(board -> ahead.put(board, board.ahead()));
        Duration by = time.follow();
        ahead.forEach((board, own) -> board.follow(by, own));
        followers.forEach(follower -> follower.accept(by));
    }
}

package benchpace.board;

import benchpace.live.ActivityRun;
import benchpace.live.LiveClass;
import benchpace.plan.Activity;
import java.util.List;

/** Derives what screens show of the wait. */
final class WaitViews {
    private WaitViews() { }

    static WaitView of(LiveClass live) {
        return new WaitView(live.plan().activities().stream().map(a -> activity(live, a)).toList());
    }

    private static WaitView.ActivityView activity(LiveClass live, Activity activity) {
        ActivityRun run = live.activity(activity.id());
        List<Integer> seats = live.seats().stream()
                .filter(s -> s.activity().filter(j -> j.activity().equals(activity.id())).isPresent())
                .map(s -> s.number().value())
                .toList();
        return new WaitView.ActivityView(activity.id().value(), activity.name(), activity.where(), run.open(),
                run.skipped(), run.openedAt(), seats);
    }
}

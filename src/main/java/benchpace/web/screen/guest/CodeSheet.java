package benchpace.web.screen.guest;

import benchpace.web.screen.start.StartView;
import java.util.List;

/** The codes of a class's seats, to be printed and cut. @param on whether guests may use them now */
public record CodeSheet(String name, String classId, boolean on, List<Card> cards) {

    /** One seat's code. */
    public record Card(int seat, StartView.Link link) { }

    public CodeSheet {
        cards = List.copyOf(cards);
    }
}

package benchpace.web.screen.prep;

import benchpace.prep.card.SafetyLine;
import benchpace.words.prep.PrepWords;
import benchpace.words.prep.SafetyWords;
import java.util.List;
import java.util.stream.Stream;

/** Burns, fire and the table: what is to be known by heart. @param first what comes before this sheet */
public record SafetyCard(List<Topic> topics, String first) {

    /** One subject. @param lines each with its source */
    public record Topic(String heading, List<Line> lines) { }

    /** @param full with its source */
    public record Line(String words, String full) { }

    static SafetyCard card() {
        return new SafetyCard(Stream.of(SafetyLine.Topic.values()).map(topic -> new Topic(SafetyWords.topic(topic),
                SafetyLine.of(topic).stream().map(l -> new Line(SafetyWords.text(l), SafetyWords.of(l))).toList()))
                .toList(), PrepWords.FIRST);
    }
}

package benchpace.web.screen.plans;

import static java.util.stream.Collectors.joining;

import benchpace.files.Words;
import benchpace.plan.Picture;
import benchpace.plan.StepKind;
import benchpace.web.screen.drawing.Drawing;
import benchpace.web.screen.plans.EditField.Choice;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A picture that a step may name, with its drawing beside the choice.
 *
 * @param word  by which plan files know it
 * @param kinds the kinds of step that show it when they name none, apart by spaces
 */
public record PictureChoice(String word, Drawing drawing, String kinds) {

    public static List<PictureChoice> all() {
        return Arrays.stream(Picture.values()).map(picture -> new PictureChoice(Words.of(picture), Drawing.of(picture),
                Arrays.stream(StepKind.values()).filter(kind -> kind.picture() == picture).map(Words::of)
                        .collect(joining(" ")))).toList();
    }

    /** What a step's picture is chosen from; the first names none. */
    static List<Choice> choices() {
        List<Choice> choices = new ArrayList<>(List.of(new Choice("", "as its kind")));
        for (Picture picture : Picture.values()) {
            choices.add(new Choice(Words.of(picture), words(picture)));
        }
        return choices;
    }

    private static String words(Picture picture) {
        return switch (picture) {
            case WELCOME -> "an apron";
            case TALK -> "somebody speaking";
            case VESSEL -> "the vessel and a cloth";
            case WICK -> "wick and bar";
            case SCENT -> "scent and paper strips";
            case COLOUR -> "colours";
            case SCALE -> "a scale";
            case STIR -> "stirring in a jug";
            case WATER -> "water in the vessel";
            case POUR -> "pouring";
            case CENTRE -> "centring the wick";
            case SETTING -> "a candle that sets";
            case HAND_TEST -> "the hand test";
            case TRIM -> "trimming the wick";
            case LID -> "closing the lid";
            case LABEL -> "a label on the vessel";
            case WRAP -> "a parcel";
            case FLAME -> "a candle alight";
            case PAUSE -> "a cup";
            case NAME -> "a name tag";
            case SHORT_CRAFT -> "a match jar";
            case LONG_CRAFT -> "a pressed-flower card";
            case BROWSE -> "the display";
            case TIDY -> "a broom";
            case SHELF -> "candles on the shelf";
            case TABLE -> "the table from above";
        };
    }
}

package benchpace.plan.colour;

import java.util.List;

/**
 * The light a screen is looked at in: its grounds, and the colours that tell of trouble there. The same stand in the
 * sheet of colours of the pages, and a test holds both together.
 */
public enum Light {
    DAY("#f7f0e4", "#fffaf0", "#dcead9", "#2a1f18", "#1f4d43", "#ffffff", "#8c2614", "#7a4400", "#b0501c"),
    NIGHT("#1b1512", "#261e18", "#22352c", "#f7ecdb", "#8fd3bf", "#0d241d", "#ffab8f", "#ffd08a", "#ff9a5c");

    private final Srgb paper;
    private final Srgb card;
    private final Srgb donePaper;
    private final Srgb ink;
    private final Lead usual;
    private final Srgb behind;
    private final Srgb slip;
    private final Srgb slipEdge;

    Light(String paper, String card, String donePaper, String ink, String lead, String onLead, String behind,
            String slip, String slipEdge) {
        this.paper = Srgb.of(paper);
        this.card = Srgb.of(card);
        this.donePaper = Srgb.of(donePaper);
        this.ink = Srgb.of(ink);
        this.usual = new Lead(Srgb.of(lead), Srgb.of(onLead));
        this.behind = Srgb.of(behind);
        this.slip = Srgb.of(slip);
        this.slipEdge = Srgb.of(slipEdge);
    }

    public Srgb paper() {
        return paper;
    }

    public Srgb card() {
        return card;
    }

    public Srgb donePaper() {
        return donePaper;
    }

    public Srgb ink() {
        return ink;
    }

    /** What leads on where no studio chose a colour. */
    public Lead usual() {
        return usual;
    }

    /** What says that a seat is behind. */
    public Srgb behind() {
        return behind;
    }

    /** What says that a seat slips, its words and its edge. */
    public List<Srgb> slipping() {
        return List.of(slip, slipEdge);
    }

    /** What words in the studio's colour stand on. */
    public List<Srgb> grounds() {
        return List.of(paper, card, donePaper);
    }
}

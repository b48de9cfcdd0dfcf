package benchpace.report.whatif;

/** What a change would have done. */
public record Answer(Change change, Saving saving) { }

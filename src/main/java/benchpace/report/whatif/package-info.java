/**
 * Floor 2: a class that has happened, gone through once more with one thing changed. {@link
 * benchpace.report.whatif.Reenactment} takes from the record what each seat really did and how steps were opened, and
 * gives back the recorded times when nothing is changed; {@link benchpace.report.whatif.WhatIf} goes through it many
 * times, with and without each {@link benchpace.report.whatif.Change}, over the same lots. The pieces are those of the
 * pace: what ticks tell, who is waited for, turns at stations, stalls. Pure: the same record and seed give the same
 * answers. Not here: what held the class ({@code report}), classes to come ({@code prep.evening}), words.
 */
package benchpace.report.whatif;

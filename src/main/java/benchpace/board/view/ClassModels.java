package benchpace.board.view;

import benchpace.board.attempt.Attempts;
import benchpace.board.waiting.WaitChain;

/** What is kept beside a class so that its views cost little and outlive what fails in one of them. */
public record ClassModels(WaitChain waits, Attempts attempts) { }

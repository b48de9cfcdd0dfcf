package benchpace.board;

/** What is kept beside a class so that its views cost little and outlive what fails in one of them. */
record ClassModels(WaitChain waits, Attempts attempts) { }

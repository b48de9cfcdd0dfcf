package benchpace.web.screen.style;

import benchpace.board.view.ClassView;

/** A class at an instant. @param name what is to be seen in it */
public record Situation(String name, ClassView view) { }

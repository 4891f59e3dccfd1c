package rungwise.ladder;

/** A permitted method that is not worth trying, by which step, with its figures. */
record Passed(Choice choice, String step, String why) {
}

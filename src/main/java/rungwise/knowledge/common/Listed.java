package rungwise.knowledge.common;

import java.util.List;

/** A word of a closed list: what a question may say in one of its fields, and nothing else. */
public interface Listed {
    String id();

    /** What a person calls it. */
    String name();

    /** What it means, in a sentence. */
    String meaning();

    /** Other ways to say the same; a question may use any of them. */
    List<String> alsoCalled();
}

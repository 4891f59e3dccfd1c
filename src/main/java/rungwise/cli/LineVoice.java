package rungwise.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.Optional;
import rungwise.ask.Voice;
import rungwise.text.Texts;

/**
 * A person at a terminal, or lines from a pipe.
 *
 * @param prompts whether somebody types, so that a line is asked for
 */
record LineVoice(Reader in, PrintWriter out, Page page, boolean prompts) implements Voice {
    /** Nobody says more in a line; what is left of it is not heard. */
    private static final int LONGEST = 400;
    private static final int HANGING = 3;

    @Override
    public void say(String line) {
        if (line.isEmpty()) {
            out.println();
            return;
        }
        print(line, 0);
    }

    @Override
    public void offer(String letter, String says) {
        print(Texts.said("ask.choice", "letter", letter, "says", says), HANGING);
    }

    private void print(String text, int hanging) {
        page.lines().clear();
        page.add(text, hanging);
        page.lines().forEach(out::println);
    }

    @Override
    public Optional<String> hear() {
        if (prompts) {
            out.print("> ");
        }
        out.flush();
        StringBuilder line = new StringBuilder();
        try {
            int c = in.read();
            boolean ended = c < 0;
            for (; c >= 0 && c != '\n'; c = in.read()) {
                if (line.length() < LONGEST) {
                    line.append((char) c);
                }
            }
            return ended ? Optional.empty() : Optional.of(line.toString().strip());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.names.Finder;
import rungwise.names.Found;
import rungwise.names.Found.How;
import rungwise.names.Found.One;
import rungwise.names.Sort;
import rungwise.question.PlainText;
import rungwise.text.Texts;

/** Looks up what something is called here. */
@Command(name = "find", mixinStandardHelpOptions = true)
final class FindCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "WORD", arity = "1..*", descriptionKey = "WORD")
    private List<String> words;

    @Mixin
    private Output output;

    @Override
    public Integer call() {
        Found found = new Finder(main.ready().knowledge()).find(String.join(" ", words));
        return output.print(found, out -> print(found, out));
    }

    private static void print(Found found, PrintWriter out) {
        if (found.found().isEmpty()) {
            out.println(Texts.said("find.none", "asked", PlainText.shown(found.asked())));
        } else if (found.found().get(0).how().equals(How.NEAR.id())) {
            out.println(Texts.said("find.near", "asked", PlainText.shown(found.asked())));
        }
        found.found().stream().collect(Collectors.groupingBy(One::sort, java.util.LinkedHashMap::new, Collectors.toList()))
                .forEach((sort, things) -> {
                    boolean wide = things.stream().anyMatch(t -> t.how().equals(How.MAY_BE.id()));
                    out.println(Texts.said("find.sort." + sort) + (wide ? Texts.said("find.wide") : ""));
                    things.forEach(t -> out.println("  " + t.id() + "  " + t.name()
                            + (isTold(t) ? ": " + t.tell() : "")));
                });
    }

    /** Whoever calls a thing by its own name knows it; what a surface may be takes a look at the vehicle. */
    private static boolean isTold(One thing) {
        return !thing.tell().isEmpty() && (thing.how().equals(How.MAY_BE.id())
                || thing.sort().equals(Sort.SURFACES.id()) && !thing.how().equals(How.CALLED.id()));
    }
}

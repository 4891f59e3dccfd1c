package rungwise.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.Mappers;
import rungwise.names.Called;
import rungwise.names.Sort;
import rungwise.names.Vocabulary;

/** Lists what a question may name. */
@Command(name = "list", mixinStandardHelpOptions = true, description = "List all that a question may name of a sort, with its id.")
final class ListCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "SORT", description = "deposits, surfaces, methods or signs")
    private Sort sort;

    @Option(names = "--json", description = "print it as JSON")
    private boolean json;

    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    /** As the service lists them. */
    private record Listed(String revision, List<Item> items) {
    }

    private record Item(String id, String name) {
    }

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        KnowledgeBase base = main.ready().knowledge();
        List<Item> items = new Vocabulary(base).of(sort).all().stream().map(ListCommand::item).toList();
        if (json) {
            out.println(Mappers.json().writeValueAsString(new Listed(base.revision(), items)));
        } else {
            items.forEach(i -> out.println(i.id() + "  " + i.name()));
        }
        out.flush();
        return 0;
    }

    private static Item item(Called thing) {
        return new Item(thing.id(), thing.name());
    }
}

package rungwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import rungwise.knowledge.KnowledgeBase;
import rungwise.names.Called;
import rungwise.names.Sort;
import rungwise.names.Vocabulary;

/** Lists what a question may name. */
@Command(name = "list", mixinStandardHelpOptions = true)
final class ListCommand implements Callable<Integer> {
    @ParentCommand
    private Main main;

    @Parameters(paramLabel = "SORT", descriptionKey = "SORT")
    private Sort sort;

    @Mixin
    private Output output;

    /** As the service lists them. */
    private record Listed(String revision, List<Item> items) {
    }

    private record Item(String id, String name) {
    }

    @Override
    public Integer call() {
        KnowledgeBase base = main.ready().knowledge();
        List<Item> items = new Vocabulary(base).of(sort).all().stream().map(ListCommand::item).toList();
        return output.print(new Listed(base.revision(), items), out -> items.forEach(i -> out.println(i.id() + "  " + i.name())));
    }

    private static Item item(Called thing) {
        return new Item(thing.id(), thing.name());
    }
}

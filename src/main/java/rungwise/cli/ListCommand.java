package rungwise.cli;

import java.util.Collection;
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
        Collection<Called> all = new Vocabulary(base).of(sort).all();
        return output.print(new Listed(base.revision(), all.stream().map(ListCommand::item).toList()), out -> all.forEach(c ->
                out.println(c.id() + "  " + c.name() + (sort == Sort.SURFACES ? ": " + c.tell() : ""))));
    }

    private static Item item(Called thing) {
        return new Item(thing.id(), thing.name());
    }
}

package rungwise.knowledge.product;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwise.knowledge.common.Listed;

/**
 * What labels and sheets of products may say, each keyed by id.
 *
 * @param telling what outweighs a label; the harshest that applies counts
 */
public record ProductWords(Map<String, ProductFunction> functions, Map<String, SheetPart> parts, Map<String, TellingPart> telling) {
    public Optional<ProductFunction> function(String said) {
        return called(said, functions.values());
    }

    public Optional<SheetPart> part(String said) {
        return called(said, parts.values());
    }

    /** Case, hyphens and low lines make no difference. */
    private static <T extends Listed> Optional<T> called(String said, Collection<T> words) {
        return words.stream().filter(w -> Stream.concat(Stream.of(w.id(), w.name()), w.alsoCalled().stream())
                .anyMatch(name -> plain(name).equals(plain(said)))).findFirst();
    }

    private static String plain(String said) {
        return said.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ').strip();
    }
}

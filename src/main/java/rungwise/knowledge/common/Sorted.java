package rungwise.knowledge.common;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Unmodifiable copies in a fixed order. The platform's own immutable sets and maps change their order from process to
 * process, and with them the bytes of an answer.
 */
public final class Sorted {
    private Sorted() {
    }

    public static <T extends Comparable<T>> Set<T> set(Set<T> any) {
        return any == null ? Set.of() : Collections.unmodifiableSet(new LinkedHashSet<>(new TreeSet<>(any)));
    }

    public static <K extends Comparable<K>, V> Map<K, V> map(Map<K, V> any) {
        return any == null ? Map.of() : Collections.unmodifiableMap(new LinkedHashMap<>(new TreeMap<>(any)));
    }
}

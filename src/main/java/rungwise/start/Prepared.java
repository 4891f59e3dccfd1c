package rungwise.start;

import com.esotericsoftware.kryo.Kryo;
import com.esotericsoftware.kryo.Serializer;
import com.esotericsoftware.kryo.io.Input;
import com.esotericsoftware.kryo.io.Output;
import com.esotericsoftware.kryo.util.MapReferenceResolver;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwise.answer.Advisor;
import rungwise.knowledge.KnowledgeBase;
import rungwise.knowledge.load.KnowledgeFiles;
import rungwise.knowledge.surface.Surface;
import rungwise.ladder.Revision;
import rungwise.ladder.Sequence;
import rungwise.ladder.Standing;
import rungwise.ladder.Verdict;
import rungwise.rules.RuleBook;
import rungwise.rules.RuleBooks;
import rungwise.text.Texts;
import rungwise.workup.ComputedChances;

/**
 * What follows from knowledge and rules alone, worked out when the program is built and carried in its jar, so that a
 * single question is not kept waiting for it: the checked knowledge, computed chances, the order of methods, and what
 * the rules say of every method on every surface. It is only ever read from the program's own jar, which cannot change
 * beneath it; a test holds that it equals what a fresh start works out.
 */
public final class Prepared {
    private static final String FOLDER = "META-INF/rungwise/prepared/";
    private static final String WHOLE = "whole";
    private static final String STANDING = "standing-";

    private Prepared() {
    }

    /** All but the standing verdicts, which are read one surface at a time. */
    record Whole(KnowledgeBase given, ComputedChances computed, Sequence sequence) {
    }

    /**
     * Works it out and writes it, as the build does.
     *
     * @param args the folder of compiled classes
     */
    public static void main(String[] args) throws IOException {
        Advisor advisor = Opened.from(Optional.empty(), Optional.empty()).orElseThrow();
        Path folder = Files.createDirectories(Path.of(args[0], FOLDER));
        Revision revision = advisor.revision();
        write(folder.resolve(WHOLE), new Whole(revision.given(), revision.computed(), revision.sequence()));
        for (Surface surface : revision.given().surfaces().values()) {
            Map<String, Map<String, Verdict>> verdicts = new LinkedHashMap<>();
            revision.wherever(surface).forEach(seen -> verdicts.put(seen.id(), revision.standingOn(seen)));
            write(folder.resolve(STANDING + surface.id()), verdicts);
        }
    }

    /**
     * The advisor of what the program carries; empty where it runs from a folder of classes, which may be stale, or speaks
     * another language than the build did, as sentences on computed chances are part of what was prepared.
     */
    static Optional<Advisor> advisor() {
        return Files.isRegularFile(KnowledgeFiles.program()) && Texts.chosen().isEnglish() ? Optional.of(fromBuild()) : Optional.empty();
    }

    static Advisor fromBuild() {
        RuleBook book = RuleBooks.builtIn().openSoon();
        Whole whole = read(WHOLE, Whole.class);
        return new Advisor(new Revision(whole.given(), whole.computed(), book, new Standing(whole.given(), book, Prepared::standing),
                whole.sequence()));
    }

    /**
     * What the rules say of every method on a surface of the program's own knowledge, as it is and as an unknown fact
     * might make it.
     *
     * @param surface an id; a surface seen as delicate as another is named by both
     */
    @SuppressWarnings("unchecked")
    static Optional<Map<String, Verdict>> standing(String surface) {
        return Optional.ofNullable(((Map<String, Map<String, Verdict>>) read(STANDING + surface.split("\\+")[0], Map.class))
                .get(surface));
    }

    private static void write(Path file, Object what) throws IOException {
        try (Output out = new Output(Files.newOutputStream(file))) {
            kryo().writeObject(out, what);
        }
    }

    private static <T> T read(String name, Class<T> type) {
        try (InputStream in = Prepared.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its prepared " + name + "; build it with its own build file");
            }
            return kryo().readObject(new Input(in.readAllBytes()), type);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes what is equal once: reasons and records of one rule come up under hundreds of methods. */
    private static final class EqualOnce extends MapReferenceResolver {
        private final Map<Object, Integer> written = new HashMap<>();

        @Override
        public int addWrittenObject(Object object) {
            int id = super.addWrittenObject(object);
            if (isValue(object)) {
                written.put(object, id);
            }
            return id;
        }

        @Override
        public int getWrittenId(Object object) {
            return isValue(object) ? written.getOrDefault(object, -1) : super.getWrittenId(object);
        }

        private static boolean isValue(Object object) {
            return object instanceof Record || object instanceof String;
        }
    }

    /** Collections are written by content, whatever keeps them, and are read back unmodifiable and in the same order. */
    private static Kryo kryo() {
        Kryo kryo = new Kryo(new EqualOnce());
        kryo.setRegistrationRequired(false);
        kryo.setReferences(true);
        kryo.addDefaultSerializer(Map.class, new Serializer<Map<?, ?>>(false, true) {
            @Override
            public void write(Kryo kryo, Output out, Map<?, ?> map) {
                out.writeInt(map.size(), true);
                map.forEach((key, value) -> {
                    kryo.writeClassAndObject(out, key);
                    kryo.writeClassAndObject(out, value);
                });
            }

            @Override
            public Map<?, ?> read(Kryo kryo, Input in, Class<? extends Map<?, ?>> type) {
                Map<Object, Object> map = new LinkedHashMap<>();
                for (int left = in.readInt(true); left > 0; left--) {
                    map.put(kryo.readClassAndObject(in), kryo.readClassAndObject(in));
                }
                return Collections.unmodifiableMap(map);
            }
        });
        kryo.addDefaultSerializer(Collection.class, new Serializer<Collection<?>>(false, true) {
            @Override
            public void write(Kryo kryo, Output out, Collection<?> all) {
                out.writeInt(all.size(), true);
                all.forEach(one -> kryo.writeClassAndObject(out, one));
            }

            @Override
            public Collection<?> read(Kryo kryo, Input in, Class<? extends Collection<?>> type) {
                List<Object> all = new ArrayList<>();
                for (int left = in.readInt(true); left > 0; left--) {
                    all.add(kryo.readClassAndObject(in));
                }
                return Set.class.isAssignableFrom(type) ? Collections.unmodifiableSet(new LinkedHashSet<>(all))
                        : Collections.unmodifiableList(all);
            }
        });
        return kryo;
    }
}

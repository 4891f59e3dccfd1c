package rungwise.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.conf.KieBaseOption;
import rungwise.text.Texts;

/** Opens a rule book: the one compiled with the program, or one read from a folder. */
public final class RuleBooks {
    private static final String MODEL = "META-INF/kie/rungwise/rungwise/drools-model";

    private static final Pattern PACKAGE = Pattern.compile("^package\\s+([\\w.]+)", Pattern.MULTILINE);

    private RuleBooks() {
    }

    /** The rules that were compiled when the program was built; those of a phase are in a package of its name. */
    public static RuleBook builtIn() {
        List<String> models = models();
        return RuleBook.byPhase(phase -> open(models.stream()
                .filter(name -> name.startsWith(RuleBooks.class.getPackageName() + "." + phase.group() + ".")).toList()));
    }

    private static List<String> models() {
        try (InputStream in = RuleBooks.class.getClassLoader().getResourceAsStream(MODEL)) {
            if (in == null) {
                throw new BadRules(List.of(Texts.said("rule.not-built")));
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)).lines()
                    .filter(line -> !line.isBlank() && !line.contains(":")).map(String::strip).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static KieBase open(List<String> names) {
        try {
            List<Model> models = new ArrayList<>();
            for (String name : names) {
                models.add((Model) Class.forName(name).getDeclaredConstructor().newInstance());
            }
            return KieBaseBuilder.createKieBaseFromModel(models, new KieBaseOption[0]);
        } catch (ReflectiveOperationException e) {
            throw new BadRules(List.of(Texts.said("rule.not-opened", "said", e)));
        }
    }

    /** Compiles every .drl file of a folder now. */
    public static RuleBook fromFolder(Path folder) {
        return fromTexts(texts(folder));
    }

    /** Compiles rule texts, by file name. */
    public static RuleBook fromTexts(Map<String, String> texts) {
        KieServices services = KieServices.Factory.get();
        KieFileSystem files = services.newKieFileSystem();
        ReleaseId release = services.newReleaseId("rungwise", "rules", Integer.toString(texts.hashCode() & 0x7fffffff));
        files.generateAndWritePomXML(release);
        texts.forEach((name, text) -> files.write("src/main/resources/" + folder(text)
                + name.substring(name.lastIndexOf('/') + 1), text));
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        if (builder.getResults().hasMessages(Message.Level.ERROR)) {
            throw new BadRules(builder.getResults().getMessages(Message.Level.ERROR).stream()
                    .map(m -> Texts.said("rule.uncompiled", "path", m.getPath(), "line", m.getLine(), "text", m.getText())).toList());
        }
        try {
            return RuleBook.whole(services.newKieContainer(release).getKieBase());
        } finally {
            services.getRepository().removeKieModule(release);
        }
    }

    /** The compiler wants a file in the folder of its package. */
    private static String folder(String text) {
        Matcher named = PACKAGE.matcher(text);
        return named.find() ? named.group(1).replace('.', '/') + "/" : "";
    }

    /** The text of every .drl file of a folder and the folders in it, in name order. */
    public static Map<String, String> texts(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
                texts.put(folder.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException(Texts.said("rule.folder-unreadable", "folder", folder), e);
        }
    }
}

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
import java.util.stream.Stream;
import org.drools.model.Model;
import org.drools.model.codegen.ExecutableModelProject;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;
import org.kie.api.conf.KieBaseOption;

/** Opens a rule book: the one compiled with the program, or one read from a folder. */
public final class RuleBooks {
    private static final String MODEL = "META-INF/kie/rungwise/rungwise/drools-model";

    private RuleBooks() {
    }

    /** The rules that were compiled when the program was built. */
    public static RuleBook builtIn() {
        try (InputStream in = RuleBooks.class.getClassLoader().getResourceAsStream(MODEL)) {
            if (in == null) {
                throw new BadRules(List.of("the program holds no compiled rules; build it with its own build file"));
            }
            List<Model> models = new ArrayList<>();
            BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !line.contains(":")) {
                    models.add((Model) Class.forName(line.trim()).getDeclaredConstructor().newInstance());
                }
            }
            return new RuleBook(KieBaseBuilder.createKieBaseFromModel(models, new KieBaseOption[0]));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ReflectiveOperationException e) {
            throw new BadRules(List.of("compiled rules could not be opened: " + e));
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
        texts.forEach((name, text) -> files.write("src/main/resources/rungwise/rules/" + name, text));
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        if (builder.getResults().hasMessages(Message.Level.ERROR)) {
            throw new BadRules(builder.getResults().getMessages(Message.Level.ERROR).stream()
                    .map(m -> m.getPath() + " line " + m.getLine() + ": " + m.getText()
                            + "; mend the rule, then start again").toList());
        }
        try {
            return new RuleBook(services.newKieContainer(release).getKieBase());
        } finally {
            services.getRepository().removeKieModule(release);
        }
    }

    /** The text of every .drl file of a folder, in name order. */
    public static Map<String, String> texts(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            Map<String, String> texts = new TreeMap<>();
            for (Path file : files.filter(f -> f.toString().endsWith(".drl")).toList()) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
            return texts;
        } catch (IOException e) {
            throw new UncheckedIOException("the rules folder " + folder + " cannot be read", e);
        }
    }
}

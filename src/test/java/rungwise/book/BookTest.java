package rungwise.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwise.Base;
import rungwise.cli.Main;
import rungwise.knowledge.KnowledgeBase;
import rungwise.lint.CheckPage;
import rungwise.start.Opened;

class BookTest {
    private static final Pattern HREF = Pattern.compile("href=\"([^\"]*)\"");
    private static final Pattern ID = Pattern.compile(" id=\"([^\"]*)\"");
    private static final Map<String, String> TEXTS = new Book(Base.advisor(), Optional.empty()).texts();

    private static Map<String, String> pages() {
        return TEXTS.entrySet().stream().filter(e -> e.getKey().endsWith(".html"))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    @Test
    void every_link_leads_somewhere() {
        Map<String, Set<String>> anchors = new HashMap<>();
        pages().forEach((path, text) -> anchors.put(path, ID.matcher(text).results().map(m -> m.group(1))
                .collect(Collectors.toSet())));
        List<String> broken = new ArrayList<>();
        int inside = 0;
        for (Map.Entry<String, String> page : pages().entrySet()) {
            Matcher hrefs = HREF.matcher(page.getValue());
            while (hrefs.find()) {
                String href = hrefs.group(1).replace("&amp;", "&");
                if (href.startsWith("http")) {
                    continue;
                }
                inside++;
                URI to = URI.create(page.getKey()).resolve(href);
                boolean there = TEXTS.containsKey(to.getPath()) && (to.getFragment() == null
                        || anchors.get(to.getPath()).contains(to.getFragment()));
                if (!there) {
                    broken.add(page.getKey() + " -> " + href);
                }
            }
        }
        assertThat(broken).isEmpty();
        assertThat(inside).isGreaterThan(pages().size() * 3);
    }

    @Test
    void every_page_shows_the_revision_and_runs_no_script() {
        pages().forEach((path, text) -> assertThat(text).as(path).contains(Base.advisor().knowledge().revision())
                .doesNotContain("<script").contains("<meta charset=\"utf-8\">"));
    }

    @Test
    void the_same_revision_writes_the_same_bytes() {
        assertThat(new Book(Opened.from(Optional.empty(), Optional.empty()).orElseThrow(), Optional.empty()).texts())
                .isEqualTo(TEXTS);
    }

    @Test
    void every_entry_and_rule_has_a_page_that_the_index_names() {
        KnowledgeBase base = Base.advisor().knowledge();
        Set<String> wanted = new TreeSet<>(Set.of("index.html", "gates.html", "tools.html", "sources.html"));
        base.contaminants().keySet().forEach(id -> wanted.add("contaminants/" + id + ".html"));
        base.surfaces().keySet().forEach(id -> wanted.add("surfaces/" + id + ".html"));
        base.methods().keySet().forEach(id -> wanted.add("methods/" + id + ".html"));
        base.agents().keySet().forEach(id -> wanted.add("agents/" + id + ".html"));
        Base.advisor().rules().rules().keySet().forEach(id -> wanted.add("rules/" + id + ".html"));
        base.mechanisms().keySet().forEach(id -> wanted.add("mechanisms/" + id + ".html"));
        base.decisions().byId().keySet().forEach(id -> wanted.add("decisions/" + id + ".html"));
        base.assumptions().byId().keySet().forEach(id -> wanted.add("assumptions/" + id + ".html"));
        CheckPage.all().keySet().forEach(id -> wanted.add("checks/" + id + ".html"));
        assertThat(pages().keySet()).containsExactlyInAnyOrderElementsOf(wanted);
        Set<String> named = HREF.matcher(TEXTS.get("index.html")).results().map(m -> m.group(1))
                .collect(Collectors.toSet());
        assertThat(named).containsAll(wanted);
        base.sources().keySet().forEach(id -> assertThat(TEXTS.get("sources.html")).contains(" id=\"" + id + "\""));
        base.gates().keySet().forEach(id -> assertThat(TEXTS.get("gates.html")).contains(" id=\"" + id + "\""));
    }

    @Test
    void a_deposit_shows_its_ladder_where_it_is_met() {
        assertThat(TEXTS.get("contaminants/tar_spot.html")).contains("Steps", "../surfaces/clear_2k_sound.html",
                "../methods/aliph_tar.html", "../contaminants/insect_splatter.html");
        assertThat(TEXTS.get("contaminants/blood.html")).contains("Steps", "../surfaces/int_fabric_woven.html");
    }

    @Test
    void a_method_says_the_protection_that_its_agent_asks_for_item_by_item() {
        KnowledgeBase base = Base.advisor().knowledge();
        assertThat(TEXTS.get("methods/alc_gel.html")).contains(base.ppe().get("splash_goggles").meaning())
                .doesNotContain("splash_goggles");
    }

    @Test
    void a_source_names_those_that_cite_it_deep_inside_an_entry() {
        String page = TEXTS.get("sources.html");
        int start = page.indexOf(" id=\"road-stripe-paint-procedure\"");
        assertThat(page.substring(start, page.indexOf("<h2", start)))
                .as("cited by a solvent limit of this surface").contains("surfaces/clear_2k_sound.html");
    }

    @Test
    void a_rule_names_the_cases_that_fire_it(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("one.yaml"), """
                - name: Tar & resin are <asked> about
                  question: {contaminant: tar_spot, age: P12D, surface: clear_2k_sound}
                - name: Nobody knows this surface
                  question: {contaminant: tar_spot, surface: moon_rock}
                """);
        Map<String, String> texts = new Book(Base.advisor(), Optional.of(RuleCases.of(folder, Base.advisor()))).texts();
        List<String> rules = texts.entrySet().stream().filter(e -> e.getKey().startsWith("rules/"))
                .map(Map.Entry::getValue).toList();
        assertThat(rules.stream().filter(t -> t.contains("Tar &amp; resin are &lt;asked&gt; about"))).isNotEmpty();
        assertThat(rules.stream().filter(t -> t.contains("no case fires it"))).isNotEmpty();
        assertThat(rules).noneMatch(t -> t.contains("Nobody knows this surface"));
        assertThat(texts.get("rules/fluoride-never.html")).as("fluoride is barred on every surface").contains("Tar &amp; resin");
    }

    @Test
    void a_figure_says_how_much_it_is_why_and_where_it_counts() {
        assertThat(TEXTS.get("decisions/rare-outcome.html")).contains("0.005 chance", "weighs too little",
                "what to look at next", "judgement");
        assertThat(TEXTS.get("decisions/kept-wet.html")).as("a step has nothing to compare").doesNotContain("<dt>Value</dt>");
        assertThat(TEXTS.get("assumptions/panel-colour.html")).contains("<dd>dark</dd>");
        assertThat(TEXTS.get("assumptions/closed-bay-volume.html")).contains("<dd>60 m³</dd>", "what is breathed in a bay");
    }

    @Test
    void a_way_of_working_says_what_it_does_and_who_works_by_it() {
        assertThat(TEXTS.get("mechanisms/dissolve.html")).contains("The agent dissolves the deposit", "../methods/alc_gel.html");
        assertThat(TEXTS.get("methods/alc_gel.html")).contains("../mechanisms/dissolve.html");
        assertThat(pages().values()).noneMatch(t -> t.contains("{agent}") || t.contains("{deposit}") || t.contains("{tool}"));
    }

    @Test
    void a_reason_links_to_the_page_of_its_kind() {
        assertThat(pages().values().stream().filter(t -> t.contains("../decisions/"))).isNotEmpty();
        assertThat(pages().values().stream().filter(t -> t.contains("../rules/"))).isNotEmpty();
    }

    /** What editors tell one another stands in the files alone. */
    @Test
    void no_page_shows_an_editors_note() {
        KnowledgeBase base = Base.advisor().knowledge();
        List<String> notes = java.util.stream.Stream.of(base.methods().values().stream().map(m -> m.note()),
                base.exposures().values().stream().map(e -> e.note()), base.substances().values().stream().map(s -> s.note()),
                base.solutes().values().stream().map(s -> s.note())).flatMap(s -> s).filter(n -> n.length() > 20).toList();
        assertThat(notes).hasSizeGreaterThan(50);
        String all = String.join("\n", pages().values());
        assertThat(notes).allSatisfy(note -> assertThat(all).doesNotContain(j2html.utils.EscapeUtil.escape(note)));
    }

    @Test
    void a_check_shows_both_samples_and_what_stands() {
        assertThat(TEXTS.get("checks/unused-method.html")).contains("citrus_degreaser", "Wrong", "Right",
                "../methods/ozone.html", Base.advisor().knowledge().waivers().stream()
                        .filter(w -> w.entry().equals("ozone")).findFirst().orElseThrow().reason());
    }

    @Test
    void a_folder_with_something_else_is_refused(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("mine.txt"), "mine");
        assertThat(Main.run("book", folder.toString())).isEqualTo(2);
        assertThat(folder.toFile().list()).containsExactly("mine.txt");
        assertThatThrownBy(() -> new BookFolder(folder.resolve("mine.txt")).check()).isInstanceOf(FolderTaken.class)
                .hasMessageContaining("is a file");
    }

    @Test
    void a_later_book_replaces_an_earlier_one(@TempDir Path folder) throws IOException {
        Path target = folder.resolve("new/book");
        new BookFolder(target).write(Map.of("index.html", "old", "rules/gone.html", "old", "style.css", ""));
        assertThat(Main.run("book", target.toString())).isZero();
        assertThat(target.resolve("rules/gone.html")).doesNotExist();
        for (Map.Entry<String, String> one : TEXTS.entrySet()) {
            assertThat(Files.readAllBytes(target.resolve(one.getKey())))
                    .isEqualTo(one.getValue().getBytes(StandardCharsets.UTF_8));
        }
    }
}

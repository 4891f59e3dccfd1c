package rungwise.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import rungwise.knowledge.load.Mappers;
import tools.jackson.databind.JsonNode;

/** Whole talks through the command line; its answer is the one that {@code ladder} gives to the question it keeps. */
class AskTest {
    private static final String[] NOTHING_MORE = Stream.generate(() -> "").limit(9).toArray(String[]::new);

    @TempDir
    private Path folder;

    private record Ran(int code, String out, String err) {
    }

    private record Talked(String out, JsonNode kept, String card) {
        /** The questions in their order, one that was put again after "back" twice. */
        List<String> questions() {
            return out.lines().filter(l -> l.matches("\\d\\. .*")).map(l -> l.substring(3)).toList();
        }

        /** What was said of the answer to the last question and after it. */
        String afterTheTalk() {
            return out.substring(0, out.length() - card.length());
        }
    }

    private static synchronized Ran run(String heard, String... args) {
        InputStream in = System.in;
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        try {
            System.setIn(new ByteArrayInputStream(heard.getBytes(StandardCharsets.UTF_8)));
            CommandLine line = Main.commandLine().setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
            return new Ran(line.execute(args), out.toString(), err.toString());
        } finally {
            System.setIn(in);
        }
    }

    private int talks;

    private Talked talk(String... lines) throws IOException {
        String file = folder.resolve("spot" + talks++ + ".json").toString();
        Ran ran = run(String.join("\n", lines) + (lines.length == 0 ? "" : "\n"), "ask", "--save", file);
        assertThat(ran.code()).as(ran.err()).isZero();
        String card = run("", "ladder", file).out();
        assertThat(ran.out()).endsWith("\n\n" + card);
        Talked talked = new Talked(ran.out(), Mappers.json().readTree(Files.readString(Path.of(file))), card);
        assertThat(talked.questions()).hasSizeLessThanOrEqualTo(8 + (int) Arrays.stream(lines).filter("back"::equals).count());
        return talked;
    }

    private static String[] then(String[] first, String... more) {
        List<String> all = new ArrayList<>(List.of(first));
        all.addAll(List.of(more));
        return all.toArray(String[]::new);
    }

    private static String[] lines(String... lines) {
        return lines;
    }

    @Test
    void a_known_deposit_is_asked_its_age_danger_and_what_could_change_the_step() throws IOException {
        Talked talked = talk(then(lines("clear coat", "road tar", "12 days", "no"), NOTHING_MORE));
        assertThat(talked.questions()).startsWith("What is it on?", "What is it?", "How long has it been there?").hasSizeGreaterThan(4);
        assertThat(talked.questions().get(3)).startsWith("Is any of this there");
        assertThat(talked.kept()).isEqualTo(Mappers.json().readTree(
                "{\"surface\":\"clear_2k_sound\",\"contaminant\":\"tar_spot\",\"age\":\"12 days\"}"));
        assertThat(talked.card()).startsWith("PREPARE");
        assertThat(talked.card().replaceAll("\\s+", " ")).contains("rungwise ladder ");
    }

    @Test
    void answers_fill_the_question_and_what_they_settle_is_not_asked() throws IOException {
        Talked talked = talk(then(lines("tail light", "bug splat", "yesterday", "none of it", "a", "a", "a", "a"), NOTHING_MORE));
        assertThat(talked.questions()).doesNotHaveDuplicates().noneMatch(q -> q.contains("painted") || q.contains("gauge"));
        assertThat(talked.kept().path("surface").asString()).isEqualTo("pmma_lens");
        assertThat(talked.kept().size()).as("%s", talked.kept()).isGreaterThan(3);
    }

    @Test
    void an_unknown_deposit_is_told_by_its_signs() throws IOException {
        Talked talked = talk(then(lines("stainless steel", "don't know", "dots", "black"), NOTHING_MORE));
        assertThat(talked.questions().get(2)).isEqualTo("What shape does it have?");
        assertThat(talked.questions().stream().filter(q -> q.matches("What colour is it.*|What shape.*|How does it feel.*|Where did the vehicle.*"))).hasSize(3);
        assertThat(talked.out()).contains("Until more is known: ");
        assertThat(talked.kept().path("observations")).hasSize(2);
        assertThat(talked.card()).startsWith("What it is was not said; by its signs it may be:").contains("tar_spot");
    }

    @Test
    void danger_is_heard_within_a_sentence_and_not_where_it_is_denied() throws IOException {
        assertThat(talk("clear coat", "road tar", "12 days", "there is a strange gas smell here").card()).startsWith("HOLD     Smell of gas.");
        assertThat(talk("clear coat", "the battery is smoking under the bonnet").card()).startsWith("HOLD").contains("Battery smoking");
        assertThat(talk(then(lines("clear coat", "road tar", "12 days", "there is no gas smell", "no"), NOTHING_MORE)).card())
                .startsWith("PREPARE");
    }

    @Test
    void a_danger_that_was_named_and_not_understood_is_asked_for_again() throws IOException {
        Talked talked = talk(then(lines("clear coat", "road tar", "12 days", "weird purple mist", "weird purple mist", "weird purple mist",
                "weird purple mist", "weird purple mist", "a smell of gas")));
        assertThat(talked.card()).startsWith("HOLD     Smell of gas.");
    }

    @Test
    void danger_said_at_any_question_ends_the_talk_with_a_hold_and_nothing_else() throws IOException {
        Talked talked = talk("clear coat", "tar", "gas smell", "12 days");
        assertThat(talked.questions()).hasSize(3);
        assertThat(talked.card()).startsWith("HOLD     Smell of gas.").doesNotContain("THEN", "NEVER", "TELL ME");
        assertThat(talked.afterTheTalk()).endsWith("some hours\nb) some days\nc) some weeks\nd) some months\ne) a year or more\n\n");
        assertThat(talk("syringe").card()).startsWith("HOLD").contains("sharps");
    }

    @Test
    void a_deposit_that_nobody_may_work_on_is_held_at_once() throws IOException {
        Talked talked = talk("seat fabric", "white powder", "c", "a");
        assertThat(talked.questions()).containsExactly("What is it on?", "What is it?");
        assertThat(talked.kept().path("contaminant").asString()).isEqualTo("sharps_drugs");
        assertThat(talked.card()).startsWith("HOLD");
    }

    @Test
    void whoever_knows_nothing_gets_an_end_and_a_hold() throws IOException {
        Talked talked = talk(NOTHING_MORE);
        assertThat(talked.kept()).isEmpty();
        assertThat(talked.questions()).hasSizeGreaterThan(4);
        assertThat(talked.card()).startsWith("HOLD     Unknown chemical deposit.");
        assertThat(talked.out()).contains("Nothing else that could be asked here would change the next step.");
    }

    @Test
    void where_nobody_says_more_the_card_is_for_what_is_known() throws IOException {
        assertThat(talk("windscreen", "bird poop").kept().size()).isEqualTo(2);
        assertThat(talk("windscreen").card()).startsWith("HOLD");
        assertThat(talk().kept()).isEmpty();
    }

    @Test
    void a_word_too_wide_is_asked_back_with_how_to_tell() throws IOException {
        Talked talked = talk("on the shiny thing", "c", "tree sap", "a");
        assertThat(talked.out()).contains("\"on the shiny thing\" may be several things. Which is it?", "a) Chrome plate on metal: Cold, heavy",
                "Taken as: Stainless steel.", "a) Conifer resin: Clear amber bead");
        assertThat(talked.kept().path("surface").asString()).isEqualTo("stainless");
        assertThat(talked.kept().path("contaminant").asString()).isEqualTo("sap_conifer");
    }

    @Test
    void a_surface_that_stays_one_of_several_counts_as_all_of_them() throws IOException {
        Talked talked = talk("wheel", "?", "brake dust");
        assertThat(talked.kept().path("surface").valueStream().map(JsonNode::asString)).containsExactly("wheel_painted_clear", "wheel_powder",
                "wheel_diamond_cut", "wheel_satin_matte");
        assertThat(talked.out()).contains("Taken to be as delicate as all of these together.");
    }

    @Test
    void a_word_that_nobody_knows_is_asked_again_and_left_open_in_the_end() throws IOException {
        Talked once = talk("qqqqqqq", "wind screan", "a", "b\u001b[2Jzzz", "tar", "soonish or so", "3 weeks");
        assertThat(once.out()).contains("Nothing is called \"qqqqqqq\", and nothing is near.", "Nothing is called \"wind screan\". Do you mean this?",
                "\\u001b[2J", "\"soonish or so\" says no age").doesNotContain("\u001b");
        assertThat(once.out().replaceAll("\\s+", " ")).contains("Where on the vehicle is it: a body panel, glass,");
        assertThat(once.kept().path("surface").asString()).isEqualTo("glass_laminated_screen");
        assertThat(once.kept().path("age").asString()).isEqualTo("3 weeks");
        Talked never = talk("qqqq", "qqqq", "qqqq", "qqqq", "tar");
        assertThat(never.out()).contains("It is left open.");
        assertThat(never.kept()).isEqualTo(Mappers.json().readTree("{\"contaminant\":\"tar_spot\"}"));
    }

    @Test
    void back_puts_the_last_question_again() throws IOException {
        Talked talked = talk("back", "windscreen", "back", "side window", "tar", "back", "bird poop");
        assertThat(talked.out()).contains("Nothing was answered before this.");
        assertThat(talked.kept()).isEqualTo(Mappers.json().readTree("{\"surface\":\"glass_tempered_side\",\"contaminant\":\"bird_dropping\"}"));
        assertThat(talked.questions()).startsWith("What is it on?", "What is it on?", "What is it?", "What is it on?", "What is it?");
    }

    @Test
    void the_question_is_printed_last_where_no_file_is_named() {
        Ran ran = run("coated leather\ncoffee\n", "ask", "--save", "-");
        assertThat(ran.code()).isZero();
        assertThat(ran.out().replaceAll("\\s+", " ")).contains("rungwise ladder FILE");
        assertThat(Mappers.json().readTree(ran.out().substring(ran.out().lastIndexOf('{'))).path("surface").asString()).isEqualTo("leather_coated");
    }

    @Test
    void all_that_a_first_line_tells_is_heard_at_once() throws IOException {
        Talked talked = talk("brake fluid, ten minutes ago, on the door", "?");
        assertThat(talked.kept().path("contaminant").asString()).isEqualTo("brake_fluid");
        assertThat(talked.kept().path("age").asString()).isEqualTo("ten minutes ago");
        assertThat(talked.kept().path("facts").path("place").asString()).isEqualTo("door");
        assertThat(talked.kept().path("surface").valueStream().map(JsonNode::asString)).contains("clear_2k_sound", "single_stage_enamel");
        assertThat(talked.questions()).containsExactly("What is it on?");
        assertThat(talked.card()).startsWith("AT ONCE");
        Talked named = talk("carpet, dog pee, 3 days");
        assertThat(named.kept()).isEqualTo(Mappers.json().readTree("{\"age\":\"3 days\",\"surface\":\"carpet\",\"contaminant\":\"urine\"}"));
        assertThat(named.questions()).containsExactly("What is it on?", "Is any of this there: a smell, smoke, something sharp, an animal's nest, a");
    }

    @Test
    void overnight_is_an_age_in_the_first_line_and_not_where_something_else_was_asked() throws IOException {
        assertThat(talk("bird lime overnight on the metallic paint").kept().path("age").asString()).isEqualTo("overnight");
        assertThat(talk("bird lime on the metallic paint, since last winter").kept().path("age").asString()).isEqualTo("since last winter");
        Talked stays = talk("bird lime on the metallic paint, it can stay overnight");
        assertThat(stays.kept().has("age")).isFalse();
        assertThat(stays.kept().path("canWaitMinutes").asInt()).isEqualTo(720);
        Talked late = talk("metallic paint, tar", "", "none of it, and it stands outside overnight");
        assertThat(late.questions()).hasSizeGreaterThan(3);
        assertThat(late.kept().has("age")).isFalse();
        assertThat(talk("metallic paint, tar", "overnight").kept().path("age").asString()).isEqualTo("overnight");
    }

    @Test
    void a_try_told_in_the_first_line_is_heard_with_what_it_did() throws IOException {
        Talked partly = talk("bug splatter on the metallic paint of the bonnet, tried shampoo, came off partly");
        assertThat(partly.kept().path("tried")).isEqualTo(Mappers.json().readTree("[{\"text\":\"shampoo\",\"outcome\":\"partly\"}]"));
        assertThat(partly.out()).contains("tried: shampoo (partly)");
        Talked nothing = talk("tar on the clear coat, tried petrol, nothing");
        assertThat(nothing.kept()).isEqualTo(Mappers.json().readTree(
                "{\"surface\":\"clear_2k_sound\",\"contaminant\":\"tar_spot\",\"tried\":[{\"text\":\"petrol\",\"outcome\":\"no-change\"}]}"));
        assertThat(nothing.questions()).noneMatch(q -> q.startsWith("What was put on") || q.startsWith("What did it do"));
    }

    @Test
    void what_a_try_did_is_asked_where_it_was_not_said_and_would_change_the_step() throws IOException {
        Talked talked = talk("tar on the clear coat, tried petrol", "it made it worse");
        assertThat(talked.questions()).contains("What did it do (petrol)?");
        assertThat(talked.kept().path("tried").path(0).path("outcome").asString()).isEqualTo("harm");
    }

    @Test
    void an_age_said_late_is_heard_where_something_else_was_asked() throws IOException {
        Talked talked = talk("sound clear", "tar", "", "3 days");
        assertThat(talked.out()).doesNotContain("is none of these");
        assertThat(talk("engine bay", "coolant", "3 days").kept().path("age").asString()).isEqualTo("3 days");
    }

    @Test
    void yes_takes_the_only_match_and_no_asks_for_another_word() throws IOException {
        Talked taken = talk("wind screan", "yes", "chewwing gumm", "yes");
        assertThat(taken.out()).contains("Do you mean this?", "Taken as: Chewing gum.");
        Talked refused = talk("headlite", "no", "tail light", "tar");
        assertThat(refused.out()).contains("Say it in another word then");
        assertThat(refused.kept().path("surface").asString()).isEqualTo("pmma_lens");
        assertThat(talk("wheel", "yes", "a").out()).contains("Which of them?", "Taken as: ");
    }

    @Test
    void a_wide_word_means_what_lies_on_such_a_surface() throws IOException {
        assertThat(talk("engine bay", "oil").kept().path("contaminant").asString()).isEqualTo("oil_grease");
        assertThat(talk("carpet", "salt").kept().path("contaminant").asString()).isEqualTo("salt_ring");
        Talked vague = talk("fabric seat", "something sticky");
        assertThat(vague.out()).contains("may be several things");
        assertThat(vague.kept().has("contaminant")).isFalse();
    }

    @Test
    void nobody_is_asked_about_trees_for_a_spot_in_the_cabin() throws IOException {
        Talked inside = talk(then(lines("seat cloth", "no idea"), NOTHING_MORE));
        assertThat(inside.questions()).isNotEmpty();
        assertThat(inside.out()).doesNotContain("conifers", "concrete deck", "freshly laid road");
        Talked outside = talk(then(lines("clear coat", "no idea"), NOTHING_MORE));
        assertThat(outside.out()).contains("conifers").doesNotContain("somebody smoked in it");
    }

    @Test
    void a_talk_that_breaks_off_keeps_what_was_said_in_it() throws IOException {
        assertThat(talk("bird poo on my bonnet").kept().path("surface").size()).isGreaterThan(3);
        assertThat(talk("bird poo on my bonnet").card()).doesNotStartWith("HOLD");
    }

    @Test
    void a_file_that_cannot_be_written_or_a_log_that_is_not_there_is_told_before_anything_is_asked() {
        for (String[] args : List.of(lines("--save", folder.toString()), lines("--save", folder.resolve("no/spot.json").toString()), lines("--save", " "), lines("--save", ""),
                lines("--data", folder.resolve("nolog").toString()))) {
            Ran ran = run("clear coat\n", Stream.concat(Stream.of("ask"), Stream.of(args)).toArray(String[]::new));
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.out()).isEmpty();
            assertThat(ran.err()).contains(args[0].equals("--save") ? "cannot be written" : "there is no log in");
        }
    }

    @Test
    void a_panel_that_a_question_names_by_its_place_is_answered_for_the_most_delicate_paint_and_says_so() throws IOException {
        Path file = Files.writeString(folder.resolve("door.yaml"), "{contaminant: bird_dropping, surface: door, age: yesterday}");
        Ran ran = run("", "ladder", file.toString());
        assertThat(ran.code()).as(ran.err()).isZero();
        assertThat(ran.out()).startsWith("\"door\" is taken as glossy paint").contains("Nitrocellulose or acrylic lacquer", "PREPARE");
    }
}

package rungwise.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import rungwise.answer.Advisor;
import rungwise.answer.Answer;
import rungwise.knowledge.load.Mappers;
import rungwise.question.Question;
import rungwise.question.QuestionReader;
import rungwise.start.Opened;

/** One ladder with its whole because, warm, one thread, in process; the median is the figure to read. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class LadderBenchmark {
    @Param({"tar-on-sound-clear", "tar-on-lacquer", "iron-on-matte", "gas-smell"})
    public String spot;

    private Advisor advisor;
    private Question question;

    @Setup
    public void open() throws Exception {
        advisor = Opened.from(Optional.empty(), Optional.empty()).orElseThrow();
        question = QuestionReader.read(Mappers.question().readTree(
                Files.readString(Path.of("demo-data/spots", spot + ".yaml"))), advisor.knowledge());
    }

    @Benchmark
    public Answer answer() {
        return advisor.answer(question);
    }
}

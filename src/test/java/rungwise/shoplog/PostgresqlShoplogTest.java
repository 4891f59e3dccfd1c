package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.DriverManager;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** The log on a server. */
class PostgresqlShoplogTest extends ShoplogTest {
    @Override
    String place() {
        return Server.database();
    }

    @Test
    void a_server_that_is_not_there_is_told_in_words_and_without_the_password() {
        assertThatThrownBy(() -> Shoplog.open("jdbc:postgresql://127.0.0.1:1/none?user=a&password=secret"))
                .isInstanceOf(LogFailure.class).hasMessageContaining("cannot be opened")
                .hasMessageNotContaining("secret");
    }

    @Test
    void a_commit_waits_for_the_disk_however_the_server_is_set() throws Exception {
        String data = place() + "&options=-c%20synchronous_commit=off";
        try (var source = Place.of(data).connect(); var connection = source.getConnection();
             var statement = connection.createStatement();
             var row = statement.executeQuery("SHOW synchronous_commit")) {
            row.next();
            assertThat(row.getString(1)).isEqualTo("on");
        }
    }

    @Test
    void a_writer_that_holds_the_others_up_is_not_waited_for_for_good() throws Exception {
        String data = place();
        Attempt one = Made.tar("aliph_tar", "cleared", "");
        try (Shoplog log = Shoplog.open(data); var other = DriverManager.getConnection(data);
             var statement = other.createStatement()) {
            statement.execute("SELECT pg_advisory_lock(" + Shoplog.WRITERS + ")");
            assertThatThrownBy(() -> log.add(one, Optional.empty())).isInstanceOfSatisfying(LogFailure.class,
                    e -> assertThat(e.why()).isEqualTo(LogFailure.Cause.BUSY)).hasMessageContaining("Nothing of it was kept");
            other.close();
            log.add(one, Optional.empty());
            assertThat(log.size()).isEqualTo(1);
        }
    }
}

package rungwise.shoplog;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
}

package eddyreach.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class PlainPageTest {

    private static String text(boolean colour) {
        TextPage out = new TextPage(colour);
        PlainPage.write(
                page -> {
                    page.answer("Yes.");
                    page.figure("a", "a picture", "not for the terminal");
                    page.table(
                            List.of("a heading of words", "the value of something, mm", "another long heading, mm"),
                            Set.of(1, 2),
                            List.of(
                                    Page.Row.of(
                                            "so long a name that it cannot stand in one line of its column",
                                            "1.00",
                                            "2"),
                                    new Page.Row(List.of("short", "10.00 ± 0.01", "-"), true)));
                    page.items(List.of("one", "two ".repeat(30)));
                },
                out);
        return out.text();
    }

    @Test
    void wordsAreWrappedAndNumbersStayWhole() {
        String text = text(false);
        assertThat(text).startsWith("Yes.\n\n").doesNotContain("picture");
        assertThat(text.lines()).allMatch(l -> l.length() <= TextPage.WIDTH);
        assertThat(text).contains("10.00 ± 0.01", "- one\n- two two", "\n  two");
        assertThat(text.lines().filter(l -> l.contains("some") && !l.contains("something")))
                .as("broken words")
                .isEmpty();
    }

    @Test
    void whatMustBeNoticedIsRed() {
        assertThat(text(true)).contains(TextPage.RED + "short").contains(TextPage.BOLD + "Yes.");
    }
}

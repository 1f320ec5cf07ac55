package eddyreach.model.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Strict UTF-8: a byte order mark is skipped, anything that is not text is refused with its place. */
final class TextDecoder {

    private TextDecoder() {}

    static String decode(String file, byte[] bytes) {
        if (starts(bytes, 0xFE, 0xFF) || starts(bytes, 0xFF, 0xFE)) {
            throw error(file, "", "the file is in UTF-16, save it as UTF-8");
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder();
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String text = out.flip().toString();
        if (text.startsWith("\ufeff")) {
            text = text.substring(1);
        }
        checkCharacters(file, text);
        if (result.isError()) {
            throw error(file, text, "the file is not in UTF-8 from here on, save it as UTF-8");
        }
        if (text.isBlank()) {
            boolean separators = text.indexOf('\u2028') >= 0 || text.indexOf('\u2029') >= 0;
            throw error(file, "", separators ? "no content; line breaks are U+2028" : "the file is empty");
        }
        return text;
    }

    private static boolean starts(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private static void checkCharacters(String file, String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == 0) {
                throw error(file, text.substring(0, i), "a zero byte: this is no text in UTF-8");
            }
            boolean control = c < ' ' && c != '\n' && c != '\r' && c != '\t' || c >= 0x7f && c < 0xa0 && c != 0x85;
            if (control || c == '\ufeff' || c == '\ufffe' || c == '\uffff') {
                throw error(
                        file,
                        text.substring(0, i),
                        String.format("the character U+%04X is not allowed in a text file", (int) c));
            }
        }
    }

    private static InputException error(String file, String before, String message) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < before.length(); i++) {
            char c = before.charAt(i);
            boolean half = c == '\r' && i + 1 < before.length() && before.charAt(i + 1) == '\n';
            if ((c == '\n' || c == '\r') && !half) {
                line++;
                start = i + 1;
            }
        }
        int column = before.codePointCount(start, before.length()) + 1;
        return new InputException(List.of(new Problem(file, line, column, "", message)));
    }
}

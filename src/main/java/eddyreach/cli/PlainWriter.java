package eddyreach.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetEncoder;

/** Replaces the signs that a terminal's charset lacks by letters, one for one so that columns stay in line. */
final class PlainWriter extends FilterWriter {

    private static final String SIGNS = "±µμ·–—−…→²×Δ";
    private static final String LETTERS = "~uu----.>2xd";

    private final CharsetEncoder encoder;

    PlainWriter(Writer out, Charset charset) {
        super(out);
        encoder = charset.newEncoder();
    }

    @Override
    public void write(int c) throws IOException {
        out.write(plain((char) c));
    }

    @Override
    public void write(char[] text, int offset, int length) throws IOException {
        write(new String(text, offset, length), 0, length);
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        StringBuilder line = new StringBuilder(text.substring(offset, offset + length));
        for (int i = 0; i < line.length(); i++) {
            line.setCharAt(i, plain(line.charAt(i)));
        }
        out.write(line.toString());
    }

    private char plain(char c) {
        int i = c < 128 || encoder.canEncode(c) ? -1 : SIGNS.indexOf(c);
        return i < 0 ? c : LETTERS.charAt(i);
    }
}

package eddyreach.report.draw;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes a PNG (ISO/IEC 15948) of 8 bit red, green and blue. Charts are mostly flat, so one filter (the line above) and a
 * fast compression level do; the platform's writer takes twice as long on a cold machine for files one twentieth smaller.
 */
final class Png {

    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte FILTER_UP = 2;
    private static final int LEVEL = 3;

    /** Lines compressed at a time. */
    private static final int LINES = 16;

    private Png() {}

    /**
     * The bytes of the file.
     *
     * @param rgb pixels as 0xRRGGBB, line by line
     */
    static byte[] encode(int[] rgb, int width, int height) {
        ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
        out.writeBytes(SIGNATURE);
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put((byte) 8)
                .put((byte) 2)
                .array();
        chunk(out, "IHDR", header);
        chunk(out, "IDAT", deflate(rgb, width, height));
        chunk(out, "IEND", new byte[0]);
        return out.toByteArray();
    }

    private static byte[] deflate(int[] rgb, int width, int height) {
        Deflater deflater = new Deflater(LEVEL);
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 17);
            byte[] buffer = new byte[1 << 16];
            byte[] lines = new byte[LINES * (1 + 3 * width)];
            for (int y = 0; y < height; y += LINES) {
                int end = Math.min(height, y + LINES);
                deflater.setInput(lines, 0, filter(rgb, width, y, end, lines));
                if (end == height) {
                    deflater.finish();
                }
                while (!deflater.needsInput() || end == height && !deflater.finished()) {
                    out.write(buffer, 0, deflater.deflate(buffer));
                }
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    /** Differences to the line above, for some lines; returns the number of bytes. */
    private static int filter(int[] rgb, int width, int start, int end, byte[] lines) {
        int p = 0;
        for (int y = start; y < end; y++) {
            lines[p++] = FILTER_UP;
            int row = y * width;
            for (int x = 0; x < width; x++) {
                int v = rgb[row + x];
                int above = y > 0 ? rgb[row - width + x] : 0;
                lines[p++] = (byte) ((v >> 16) - (above >> 16));
                lines[p++] = (byte) ((v >> 8) - (above >> 8));
                lines[p++] = (byte) (v - above);
            }
        }
        return p;
    }

    private static void chunk(ByteArrayOutputStream out, String type, byte[] data) {
        byte[] typed = ByteBuffer.allocate(4 + data.length)
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .put(data)
                .array();
        CRC32 crc = new CRC32();
        crc.update(typed);
        out.writeBytes(ByteBuffer.allocate(4).putInt(data.length).array());
        out.writeBytes(typed);
        out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
    }
}

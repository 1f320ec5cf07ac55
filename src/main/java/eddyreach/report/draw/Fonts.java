package eddyreach.report.draw;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.File;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The typeface of every picture, carried along so that pictures do not depend on the machine's fonts.
 *
 * <p>A machine without any font makes AWT fail before it even looks at a font file. Naming a font configuration of our
 * own before AWT loads avoids that, and also saves AWT the search through the system's fonts.
 *
 * @param regular for text, size 1
 * @param medium for headings and values, size 1
 */
public record Fonts(Font regular, Font medium) {

    private static final String FOLDER = "/com/formdev/flatlaf/fonts/roboto/";
    private static final String CONFIGURATION = "sun.awt.fontconfig";

    private static final class Holder {
        static final Fonts FONTS = load();
    }

    /** The fonts, unpacked on first use. */
    public static Fonts get() {
        return Holder.FONTS;
    }

    private static Fonts load() {
        try {
            Path folder = Files.createTempDirectory("eddyreach-fonts");
            folder.toFile().deleteOnExit();
            File regular = unpack("Roboto-Regular.ttf", folder);
            File medium = unpack("Roboto-Medium.ttf", folder);
            if (System.getProperty(CONFIGURATION) == null) {
                Path configuration = folder.resolve("fontconfig.properties");
                Files.writeString(configuration, configuration(regular));
                configuration.toFile().deleteOnExit();
                System.setProperty(CONFIGURATION, configuration.toString());
            }
            return new Fonts(Font.createFont(Font.TRUETYPE_FONT, regular), Font.createFont(Font.TRUETYPE_FONT, medium));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot unpack the fonts of the pictures", e);
        } catch (FontFormatException e) {
            throw new IllegalStateException("the fonts of the pictures are damaged", e);
        }
    }

    private static File unpack(String name, Path folder) throws IOException {
        Path file = folder.resolve(name);
        try (InputStream in = Fonts.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new FileNotFoundException(FOLDER + name + " is missing from the program");
            }
            Files.copy(in, file);
        }
        file.toFile().deleteOnExit();
        return file.toFile();
    }

    /** All logical fonts mapped to one file; backslashes are escape characters in a properties file. */
    private static String configuration(File font) {
        StringBuilder s = new StringBuilder("version=1\nsequence.allfonts=latin-1\n");
        for (String family : new String[] {"serif", "sansserif", "monospaced", "dialog", "dialoginput"}) {
            for (String style : new String[] {"plain", "bold", "italic", "bolditalic"}) {
                s.append(family + "." + style + ".latin-1=Roboto\n");
            }
        }
        return s.append("filename.Roboto=")
                .append(font.getPath().replace("\\", "\\\\"))
                .append('\n')
                .toString();
    }
}

package eddyreach.studies;

import eddyreach.model.read.Library;
import eddyreach.report.draw.Fonts;
import eddyreach.report.draw.Picture;
import eddyreach.study.StudyResult;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * Draws the gallery in {@code plots} from the shipped studies, at half the size of a result's pictures and compressed as far as it
 * goes, since these files are kept with the sources.
 *
 * <p>The command is in DEVELOPERS.md.
 */
public final class Gallery {

    private static final Path FOLDER = Path.of("plots");

    private Gallery() {}

    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Map<String, List<String>> shown = new LinkedHashMap<>();
        shown.put(
                "m18-derating",
                List.of("factors", "amplitude", "impedance", "plane", "losses", "field-fe360", "field-copper"));
        shown.put("m18-foil-and-sheet", List.of("factors", "current-foil-10um"));
        shown.put("m18-foil-thickness", List.of("thickness-on"));
        shown.put("m18-conductivity-map", List.of("map"));
        shown.put("m18-plating", List.of("layers-on"));
        shown.put("m18-zone", List.of("zone"));
        shown.put("m18-pass", List.of("pass"));
        shown.put("m18-mount-steel", List.of("field-sunk-4"));
        shown.put("m18-recess", List.of("recess"));
        shown.put("m18-neighbours", List.of("beats"));
        Files.createDirectories(FOLDER);
        Library library = new Library(Path.of(""));
        for (Map.Entry<String, List<String>> entry : shown.entrySet()) {
            String id = entry.getKey();
            StudyResult result =
                    StudyReader.read(library.studyFile(id), library).run();
            Map<String, Picture> pictures = new LinkedHashMap<>();
            result.presentation().pictures().forEach(p -> pictures.put(p.name(), p));
            for (String name : entry.getValue()) {
                if (!pictures.containsKey(name)) {
                    throw new IllegalStateException(id + " draws no " + name + ", only " + pictures.keySet());
                }
                write(pictures.get(name), FOLDER.resolve(id + "-" + name + ".png"));
            }
        }
    }

    private static void write(Picture picture, Path file) throws IOException {
        Fonts.get();
        BufferedImage image = new BufferedImage(Picture.WIDTH, Picture.HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        picture.draw(g);
        g.dispose();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
        ImageWriteParam param = writer.getDefaultWriteParam();
        param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        param.setCompressionQuality(0);
        Files.deleteIfExists(file);
        try (ImageOutputStream out = ImageIO.createImageOutputStream(file.toFile())) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } finally {
            writer.dispose();
        }
    }
}

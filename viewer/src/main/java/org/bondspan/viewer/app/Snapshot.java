package org.bondspan.viewer.app;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.animation.AnimationTimer;
import javafx.scene.Scene;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javax.imageio.ImageIO;

/** Takes a picture of the window as soon as it has settled. On the JavaFX thread. */
final class Snapshot {
    private static final int FRAMES_OF_REST = 3;

    private Snapshot() {}

    /** @param done hears, once, that the picture is written, or why it could not be */
    static void of(Scene scene, Path file, BooleanSupplier settled, Consumer<Optional<String>> done) {
        new AnimationTimer() {
            private int rest;

            @Override
            public void handle(long now) {
                rest = settled.getAsBoolean() ? rest + 1 : 0;
                if (rest >= FRAMES_OF_REST) {
                    stop();
                    done.accept(write(scene.snapshot(null), file));
                }
            }
        }.start();
    }

    private static Optional<String> write(WritableImage picture, Path file) {
        int width = (int) picture.getWidth();
        int height = (int) picture.getHeight();
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        PixelReader pixels = picture.getPixelReader();
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                image.setRGB(x, y, pixels.getArgb(x, y));
            }
        }
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(image, "png", bytes);
            Files.write(file, bytes.toByteArray(), StandardOpenOption.CREATE_NEW);
            return Optional.empty();
        } catch (IOException e) {
            return Optional.of(file + " cannot be written. Name a file in a directory that you may write to.");
        }
    }
}

package org.stillroom.workbench.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;

/** The display of the test machine shows what a window paints: without it no window test counts. */
class WindowTest {

    private static final RGB GREEN = new RGB(0, 128, 0);

    @Test
    void whatAWindowPaintsIsOnTheScreen() throws IOException {
        Display display = Display.getDefault();
        Shell shell = new Shell(display, SWT.NO_TRIM | SWT.ON_TOP);
        try {
            shell.addPaintListener(
                    event -> {
                        event.gc.setBackground(display.getSystemColor(SWT.COLOR_DARK_GREEN));
                        event.gc.fillRectangle(shell.getClientArea());
                    });
            shell.setBounds(20, 20, 240, 160);
            shell.open();
            ImageData shot = settledPicture(display, shell);
            Path file = Path.of("target", "screenshots", "window.png");
            Files.createDirectories(file.getParent());
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {shot};
            loader.save(file.toString(), SWT.IMAGE_PNG);
            assertTrue(Files.size(file) > 0);
            assertEquals(GREEN, middleOf(shot));
        } finally {
            shell.dispose();
        }
    }

    private static ImageData settledPicture(Display display, Shell shell) {
        long end = System.nanoTime() + 10_000_000_000L;
        while (true) {
            while (display.readAndDispatch()) {
                // Painting happens here.
            }
            ImageData shot = picture(display, shell);
            if (middleOf(shot).equals(GREEN) || System.nanoTime() > end) {
                return shot;
            }
        }
    }

    private static ImageData picture(Display display, Shell shell) {
        Image image = new Image(display, shell.getBounds().width, shell.getBounds().height);
        GC gc = new GC(display);
        try {
            gc.copyArea(image, shell.getBounds().x, shell.getBounds().y);
            return image.getImageData();
        } finally {
            gc.dispose();
            image.dispose();
        }
    }

    private static RGB middleOf(ImageData shot) {
        return shot.palette.getRGB(shot.getPixel(shot.width / 2, shot.height / 2));
    }
}

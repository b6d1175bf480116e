package org.stillroom.workbench.widgets;

import java.net.URL;
import java.util.Optional;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;
import org.osgi.framework.FrameworkUtil;

/** Our icons, made once for a control and gone with it. */
public final class Icons {
    private final LocalResourceManager images;

    /** Makes a keeper of the icons of a control and of everything inside it. */
    public Icons(Control owner) {
        images = new LocalResourceManager(JFaceResources.getResources(), owner);
    }

    /**
     * Returns the icon of a name.
     *
     * @throws IllegalArgumentException where there is none of this name
     */
    public Image get(String name) {
        URL file =
                Optional.ofNullable(
                                FrameworkUtil.getBundle(Icons.class)
                                        .getEntry("icons/" + name + ".svg"))
                        .orElseThrow(() -> new IllegalArgumentException("No icon " + name));
        return images.create(ImageDescriptor.createFromURL(file));
    }
}

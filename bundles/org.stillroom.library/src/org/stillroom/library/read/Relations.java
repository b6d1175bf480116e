package org.stillroom.library.read;

import java.util.LinkedHashMap;
import java.util.Map;
import javax.xml.stream.XMLStreamReader;

/**
 * The parts of an Office Open XML file that another part names (ISO/IEC 29500-2, relationships), by
 * the last word of their kind.
 */
final class Relations implements SafeXml.Handler {

    private final String folder;
    private final Map<String, String> targets = new LinkedHashMap<>();

    private Relations(String folder) {
        this.folder = folder;
    }

    /** Returns what a part names; the empty name stands for the file itself. */
    static Relations of(Container container, String part) throws Refused {
        int slash = part.lastIndexOf('/');
        String folder = part.substring(0, slash + 1);
        Relations relations = new Relations(folder);
        container.read(folder + "_rels/" + part.substring(slash + 1) + ".rels", relations);
        return relations;
    }

    @Override
    public void start(String name, XMLStreamReader xml) {
        String type = xml.getAttributeValue(null, "Type");
        String target = xml.getAttributeValue(null, "Target");
        if (name.equals("Relationship") && type != null && target != null) {
            String kind = type.substring(type.lastIndexOf('/') + 1);
            targets.putIfAbsent(kind, Hrefs.resolve(folder, target));
        }
    }

    @Override
    public void end(String name, XMLStreamReader xml) {
        // everything stands in attributes
    }

    @Override
    public void words(String characters) {
        // everything stands in attributes
    }

    /** Returns the part of a kind, or another name where none is named. */
    String target(String kind, String otherwise) {
        return targets.getOrDefault(kind, otherwise);
    }
}

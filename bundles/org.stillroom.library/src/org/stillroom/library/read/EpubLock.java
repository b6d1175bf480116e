package org.stillroom.library.read;

import java.util.HashSet;
import java.util.Set;
import javax.xml.stream.XMLStreamReader;

/** Which parts of an EPUB are encrypted (EPUB Open Container Format, encryption.xml). */
final class EpubLock implements SafeXml.Handler {

    private final Set<String> locked = new HashSet<>();
    private boolean obfuscated;

    @Override
    public void start(String name, XMLStreamReader xml) {
        switch (name) {
            case "EncryptedData" -> obfuscated = false;
            // fonts may be made unusable outside the book; that does not concern its words
            case "EncryptionMethod" -> {
                String method = OdtStyles.attribute(xml, "Algorithm");
                obfuscated |=
                        method.contains("idpf.org/2008/embedding") || method.contains("enc#RC");
            }
            case "CipherReference" -> {
                if (!obfuscated) {
                    locked.add(Hrefs.resolve("", OdtStyles.attribute(xml, "URI")));
                }
            }
            default -> {
                // keys are no business of a reader
            }
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

    /** Tells whether a part is encrypted. */
    boolean holds(String part) {
        return locked.contains(part);
    }
}

package org.pumpwright.host.datafile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;

/**
 * Reads one data file: text, values, schema, then what the reader makes of them. All problems of a stage are told
 * together; a stage begins only when the one before found none. Thread-safe.
 */
public final class DataFile {
    /** The largest file that is read, in bytes. */
    public static final int MOST_BYTES = 1 << 20;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private DataFile() {}

    /**
     * Reads a file.
     *
     * @param reader makes the result; it may {@link Node#refuse} values, and an {@link IllegalArgumentException} from it
     *     counts as a problem of the file
     * @throws DataFileException when the file is absent, unreadable, too large, no YAML, or does not keep to its schema
     */
    public static <T> T read(Path file, DataSchema schema, Function<Node, T> reader) throws DataFileException {
        return parse(file.toString(), text(file), schema, reader);
    }

    /**
     * Reads the text of a file that was obtained in some other way.
     *
     * @param name the file's name in messages
     * @throws DataFileException as {@link #read}
     */
    public static <T> T parse(String name, String text, DataSchema schema, Function<Node, T> reader)
            throws DataFileException {
        Document document = new Document(name);
        YamlTree.read(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text, document);
        if (!document.root().isMissingNode()) {
            schema.check(document);
        }
        document.check();
        return made(document, reader);
    }

    private static <T> T made(Document document, Function<Node, T> reader) throws DataFileException {
        try {
            T result = reader.apply(new Node(document, "", document.root()));
            document.check();
            return result;
        } catch (IllegalArgumentException e) {
            document.check();
            throw refused(document.file(), "cannot be used: " + e.getMessage());
        }
    }

    private static String text(Path file) throws DataFileException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw refused(file.toString(), "is larger than " + MOST_BYTES + " bytes, which is the most allowed");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (NoSuchFileException e) {
            throw refused(file.toString(), "is not there: check the name and the folder");
        } catch (CharacterCodingException e) {
            throw refused(file.toString(), "is not UTF-8 text: save it again as UTF-8");
        } catch (IOException e) {
            String why =
                    Files.isDirectory(file) ? "is a folder, a file is needed" : "cannot be read: " + e.getMessage();
            throw refused(file.toString(), why);
        }
    }

    private static DataFileException refused(String file, String says) {
        return new DataFileException(List.of(new Problem(file, 0, 0, "", says)));
    }
}

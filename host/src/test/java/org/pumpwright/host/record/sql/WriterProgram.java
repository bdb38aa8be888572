package org.pumpwright.host.record.sql;

import java.nio.file.Path;
import java.util.Properties;
import org.pumpwright.host.record.ledger.KeyFile;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;

/** A program of its own that puts runs on record and says of each that it is there, until it is killed. */
final class WriterProgram {
    private WriterProgram() {}

    /**
     * Runs.
     *
     * @param args file or address of the store, folder of the key, what ids begin with
     */
    public static void main(String[] args) throws Exception {
        SigningKey key = KeyFile.openOrMake(Path.of(args[1]), "stand-1");
        try (RecordStore store = open(args[0], key)) {
            for (int i = 0; ; i++) {
                String id = args[2] + i;
                store.append(TracedDraft.of(id));
                System.out.print(id + "\n");
                System.out.flush();
            }
        }
    }

    static RecordStore open(String where, SigningKey key) throws Exception {
        if (!where.startsWith("jdbc:")) {
            return RecordStores.inFile(Path.of(where), "stand-1", key);
        }
        Properties login = new Properties();
        login.setProperty("user", OwnPostgresql.USER);
        return RecordStores.onServer(where, login, "stand-1", key);
    }
}

package org.pumpwright.host.record.sql;

import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.RecordStoreContract;

class SqliteRecordStoreTest extends RecordStoreContract {
    @TempDir
    private Path folder;

    @Override
    protected RecordStore open(String chain) throws Exception {
        return RecordStores.inFile(folder.resolve("records.db"), chain, KEY);
    }
}

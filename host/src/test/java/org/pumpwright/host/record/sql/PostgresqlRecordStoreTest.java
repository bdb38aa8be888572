package org.pumpwright.host.record.sql;

import java.util.Properties;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.RecordStoreContract;

class PostgresqlRecordStoreTest extends RecordStoreContract {
    private static OwnPostgresql server;

    private String database;

    @BeforeAll
    static void start() throws Exception {
        server = OwnPostgresql.start();
    }

    @AfterAll
    static void stop() throws Exception {
        server.close();
    }

    @BeforeEach
    @Override
    protected void openStore() throws Exception {
        database = server.newDatabase();
        super.openStore();
    }

    @Override
    protected RecordStore open(String chain) throws Exception {
        Properties login = new Properties();
        login.setProperty("user", OwnPostgresql.USER);
        return RecordStores.onServer(server.address(database), login, chain, KEY);
    }
}

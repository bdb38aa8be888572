package org.pumpwright.host.record.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pumpwright.host.record.ledger.Audit;
import org.pumpwright.host.record.ledger.Heads;
import org.pumpwright.host.record.ledger.Keyring;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;

/** A small disk is filled. */
class FullDiskTest {
    private static final SigningKey KEY = SigningKey.generate();
    private static final Keyring KEYS = Keyring.of(KEY.open());
    private static final int MOST = 2000;

    @TempDir
    private Path folder;

    private Path disk;
    private SmallDisk mounted;

    @BeforeEach
    void mount() throws Exception {
        mounted = SmallDisk.mount(folder.resolve("disk"), 4);
        disk = mounted.folder();
    }

    @AfterEach
    void unmount() throws Exception {
        mounted.close();
    }

    @Test
    void aFullDiskLosesNothingAndIsTold() throws Exception {
        Path spare = Files.write(disk.resolve("spare"), new byte[1 << 20]);
        try (RecordStore store = RecordStores.inFile(disk.resolve("ledger.db"), "stand-1", KEY)) {
            List<String> acknowledged = new ArrayList<>();
            assertThatThrownBy(() -> fill(store, acknowledged))
                    .isInstanceOfSatisfying(
                            StoreException.class,
                            e -> assertThat(e.reason()).isEqualTo(StoreException.Reason.STORE_FAILED))
                    .hasMessageMatching(
                            "could not put run-\\d+ on record: .*full.*\\. Nothing was half done; check that the disk is not full and the database is there\\.");
            assertThat(acknowledged).hasSizeGreaterThan(10);
            assertWhole(store, acknowledged);
            Files.delete(spare);
            store.append(TracedDraft.of("after"));
            acknowledged.add("after");
            assertWhole(store, acknowledged);
        }
    }

    @Test
    void aBackupThatDoesNotFitLeavesNothing() throws Exception {
        try (RecordStore store = RecordStores.inFile(folder.resolve("ledger.db"), "stand-1", KEY)) {
            for (int i = 0; i < 300; i++) {
                store.append(TracedDraft.of("run-" + i));
            }
            Path backup = disk.resolve("backup.db");
            assertThatThrownBy(() -> Backup.write(store, backup, KEYS))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("full");
            assertThat(disk).isEmptyDirectory();
        }
    }

    private static void fill(RecordStore store, List<String> acknowledged) throws StoreException {
        for (int i = 0; i < MOST; i++) {
            store.append(TracedDraft.of("run-" + i));
            acknowledged.add("run-" + i);
        }
    }

    private static void assertWhole(RecordStore store, List<String> ids) throws StoreException {
        for (String id : ids) {
            assertThat(TracedDraft.isWhole(store, store.find(id).orElseThrow())).isTrue();
        }
        Audit.Result audit = Audit.of(store, KEYS, Heads.NONE, Audit.Depth.EVERY_SIGNATURE);
        assertThat(audit.troubles()).isEmpty();
        assertThat(audit.entries()).isEqualTo(ids.size());
    }
}

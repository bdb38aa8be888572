package org.pumpwright.host.record.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Another program checks a signature from the files of a key, the bytes of a header and the signature. */
class OpensslTest {
    @TempDir
    private Path folder;

    @Test
    void opensslVerifiesTheSignatureOfAnEntry() throws Exception {
        Entry entry = entry();
        assertThat(verify(entry.header(), entry.seal().bytes())).contains("Signature Verified Successfully");
    }

    @Test
    void opensslRefusesAChangedByte() throws Exception {
        Entry entry = entry();
        byte[] changed = entry.header();
        changed[changed.length / 2] ^= 1;
        assertThat(verify(changed, entry.seal().bytes()))
                .contains("Signature Verification Failure")
                .doesNotContain("Successfully");
    }

    /** Header and signature one after the other give the digest by which the next entry holds on to this one. */
    @Test
    void opensslComputesTheDigestOfAnEntry() throws Exception {
        Entry entry = entry();
        byte[] both = new byte[entry.header().length + entry.seal().bytes().length];
        System.arraycopy(entry.header(), 0, both, 0, entry.header().length);
        System.arraycopy(
                entry.seal().bytes(),
                0,
                both,
                entry.header().length,
                entry.seal().bytes().length);
        Path file = Files.write(folder.resolve("entry"), both);
        assertThat(run("openssl", "dgst", "-sha256", "-r", file.toString()))
                .startsWith(entry.digest().hex());
    }

    private Entry entry() throws IOException {
        SigningKey key = KeyFile.openOrMake(folder, "stand-1");
        return new Entry(
                        "stand-1",
                        1,
                        EntryKind.RUN,
                        "stand-1/1",
                        OffsetDateTime.parse("2026-04-20T08:00:00-05:00"),
                        Instant.parse("2026-04-20T13:20:00.250Z"),
                        Digest.NOTHING,
                        "{\"flow\":4}",
                        List.of(Digest.of("trace".getBytes(StandardCharsets.UTF_8))),
                        Optional.empty(),
                        Finder.NOTHING,
                        new Entry.Seal(key.open().digest(), ""))
                .sealed(key);
    }

    private String verify(byte[] header, byte[] signature) throws Exception {
        Path in = Files.write(folder.resolve("header"), header);
        Path signed = Files.write(folder.resolve("signature"), signature);
        return run(
                "openssl",
                "pkeyutl",
                "-verify",
                "-pubin",
                "-inkey",
                folder.resolve("stand-1.pub").toString(),
                "-rawin",
                "-in",
                in.toString(),
                "-sigfile",
                signed.toString());
    }

    private static String run(String... words) throws Exception {
        try {
            Process process =
                    new ProcessBuilder(words).redirectErrorStream(true).start();
            String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            process.waitFor();
            return said;
        } catch (IOException e) {
            throw new AssertionError("openssl is missing. Install with: sudo apt-get install -y openssl", e);
        }
    }
}

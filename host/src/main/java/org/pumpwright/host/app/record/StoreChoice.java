package org.pumpwright.host.app.record;

import java.io.IOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.pumpwright.host.record.ledger.CheckingKey;
import org.pumpwright.host.record.ledger.Digest;
import org.pumpwright.host.record.ledger.KeyFile;
import org.pumpwright.host.record.ledger.RecordStore;
import org.pumpwright.host.record.ledger.SigningKey;
import org.pumpwright.host.record.ledger.StoreException;
import org.pumpwright.host.record.ledger.StoreException.Reason;
import org.pumpwright.host.record.sql.RecordStores;

/**
 * Which store the shop keeps its records in, and with which keys it signs. The one place that decides it. Thread-safe.
 *
 * @param server address of a database that several stands share; empty for the file
 * @param file the store where there is no server
 * @param keys folder of the keys
 * @param desk chain of what no stand writes
 */
public record StoreChoice(Optional<String> server, Path file, Path keys, String desk) {
    /** The usual chain of what no stand writes. */
    public static final String DESK = "desk";

    /** Environment variable that names a server. */
    public static final String SERVER_VARIABLE = "PUMPWRIGHT_STORE";

    /** Environment variable that names the folder of keys. */
    public static final String KEYS_VARIABLE = "PUMPWRIGHT_KEYS";

    private static final String FILE = "ledger.db";
    private static final String SERVERS = "jdbc:postgresql:";
    /** A server that is away must not keep a shop waiting at the end of every run. */
    private static final String CONNECT_SECONDS = "5";

    private static final String ANSWER_SECONDS = "60";

    /**
     * The choice.
     *
     * @param asked address that was asked for this time; it goes before the environment's
     * @param environment of the program
     * @param records folder of records, in which the file lies
     * @param home folder of the program, beside whose records the keys are
     * @throws IllegalArgumentException when the address is no address of a server
     */
    public static StoreChoice of(Optional<String> asked, Map<String, String> environment, Path records, Path home) {
        Optional<String> server = asked.or(() -> Optional.ofNullable(environment.get(SERVER_VARIABLE)))
                .map(String::strip)
                .filter(text -> !text.isEmpty());
        server.filter(address -> !address.startsWith(SERVERS)).ifPresent(address -> {
            throw new IllegalArgumentException(
                    "the store '%s' is no address of a server. Give one such as jdbc:postgresql://shop-server/pumpwright?user=stand1, or none for the file %s."
                            .formatted(address, records.resolve(FILE)));
        });
        Path keys = Optional.ofNullable(environment.get(KEYS_VARIABLE))
                .map(Path::of)
                .orElse(home.resolve("keys"));
        return new StoreChoice(server, records.resolve(FILE), keys, DESK);
    }

    /** The same with another chain for what no stand writes. */
    public StoreChoice withDesk(String chain) {
        return new StoreChoice(server, file, keys, chain);
    }

    /** Where it is, for people; without user and password. */
    public String words() {
        return server.map(address -> address.replaceFirst("\\?.*", "")).orElse(file.toString());
    }

    /** Whether there is a store, or can be one that others have made. */
    public boolean mayHold() {
        return server.isPresent() || Files.exists(file);
    }

    /**
     * Opens it for entries of a chain; what is missing is made.
     *
     * @throws StoreException when it can't be opened, or the chain's key can't be had
     */
    public RecordStore open(String chain) throws StoreException {
        return open(chain, key(chain));
    }

    /**
     * Opens it to be read; no key is needed or made.
     *
     * @throws StoreException when it can't be opened, or there is none
     */
    public RecordStore openToRead() throws StoreException {
        if (!mayHold()) {
            throw new StoreException(
                    Reason.NOTHING_TO_FOLLOW,
                    "there are no records in %s yet. Name the folder with --records, or the server with --store."
                            .formatted(words()));
        }
        return open(desk, SigningKey.generate());
    }

    private RecordStore open(String chain, SigningKey key) throws StoreException {
        if (server.isEmpty()) {
            return RecordStores.inFile(file, chain, key);
        }
        return RecordStores.onServer(words(), login(server.get()), chain, key);
    }

    /** User, password and other settings of the address, apart from it: complaints name the address. */
    private static Properties login(String address) {
        Properties login = new Properties();
        login.setProperty("connectTimeout", CONNECT_SECONDS);
        login.setProperty("socketTimeout", ANSWER_SECONDS);
        int settings = address.indexOf('?');
        if (settings >= 0) {
            for (String setting : address.substring(settings + 1).split("&", -1)) {
                String[] halves = setting.split("=", 2);
                if (halves.length == 2) {
                    login.setProperty(halves[0], URLDecoder.decode(halves[1], StandardCharsets.UTF_8));
                }
            }
        }
        return login;
    }

    /**
     * The key of a chain, made on first use.
     *
     * @throws StoreException when it can't be read or made
     */
    public SigningKey key(String chain) throws StoreException {
        try {
            return KeyFile.openOrMake(keys, chain);
        } catch (IOException e) {
            throw noKeys(e);
        }
    }

    /**
     * The open keys that the shop trusts, its own and those of others that it was given, by their digest.
     *
     * @throws StoreException when one can't be read
     */
    public Map<Digest, CheckingKey> trusted() throws StoreException {
        Map<Digest, CheckingKey> trusted = new HashMap<>();
        named().values().forEach(key -> trusted.put(key.digest(), key));
        return trusted;
    }

    /**
     * The same by their names.
     *
     * @throws StoreException when one can't be read
     */
    public Map<String, CheckingKey> named() throws StoreException {
        Map<String, CheckingKey> named = new TreeMap<>();
        if (!Files.isDirectory(keys)) {
            return named;
        }
        try (Stream<Path> files = Files.list(keys)) {
            for (Path file : files.filter(name -> name.toString().endsWith(".pub"))
                    .sorted()
                    .toList()) {
                String name = file.getFileName().toString();
                named.put(name.substring(0, name.length() - ".pub".length()), KeyFile.readOpen(file));
            }
            return named;
        } catch (IOException e) {
            throw noKeys(e);
        }
    }

    private StoreException noKeys(IOException e) {
        return new StoreException(
                Reason.STORE_FAILED,
                "the keys in %s can't be used: %s. Check the folder and its rights, or name another with %s."
                        .formatted(keys, e.getMessage(), KEYS_VARIABLE),
                e);
    }
}

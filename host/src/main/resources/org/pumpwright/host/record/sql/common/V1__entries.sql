-- Entries are never changed: see the triggers of V2. Everything above search_serial is the entry itself, the rest serves
-- searches and is made from finder.
CREATE TABLE entry (
    place ${place},
    chain ${text} NOT NULL,
    number BIGINT NOT NULL,
    kind ${text} NOT NULL,
    id ${text} NOT NULL UNIQUE,
    happened_at ${text} NOT NULL,
    prior_sha256 ${text} NOT NULL,
    content ${text} NOT NULL,
    attachments_sha256 ${text} NOT NULL,
    amends ${text},
    amends_because ${text},
    finder ${text} NOT NULL,
    key_sha256 ${text} NOT NULL,
    signature ${text} NOT NULL,
    search_serial ${text},
    search_customer ${text},
    search_claim ${text},
    search_model ${text},
    search_verdict ${text},
    search_day ${text} NOT NULL,
    search_words ${text} NOT NULL,
    UNIQUE (chain, number)
);

CREATE INDEX entry_by_serial ON entry (search_serial);
CREATE INDEX entry_by_customer ON entry (search_customer);
CREATE INDEX entry_by_claim ON entry (search_claim);
CREATE INDEX entry_by_model ON entry (search_model, search_day);
CREATE INDEX entry_by_verdict ON entry (search_verdict, search_day);
CREATE INDEX entry_by_day ON entry (search_day);
CREATE INDEX entry_by_amended ON entry (amends);

CREATE TABLE attachment (
    sha256 ${text} NOT NULL PRIMARY KEY,
    bytes ${bytes} NOT NULL
);

-- One row for each chain: writers of one chain wait for each other here.
CREATE TABLE chain (
    name ${text} NOT NULL PRIMARY KEY
);

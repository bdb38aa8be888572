-- Entries are never changed: see the triggers of V2. The columns search_... serve searches and are made from the others. What
-- can be long comes last, so that a search does not have to read past it.
CREATE TABLE entry (
    ${place}
    chain ${text} NOT NULL,
    number BIGINT NOT NULL,
    kind ${text} NOT NULL,
    id ${text} NOT NULL UNIQUE,
    search_at ${text} NOT NULL,
    search_serial ${text},
    search_customer ${text},
    search_claim ${text},
    search_model ${text},
    search_verdict ${text},
    search_words ${text} NOT NULL,
    happened_at ${text} NOT NULL,
    entered_at ${text} NOT NULL,
    prior_sha256 ${text} NOT NULL,
    key_sha256 ${text} NOT NULL,
    signature ${text} NOT NULL,
    attachments_sha256 ${text} NOT NULL,
    amends ${text},
    amends_because ${text},
    finder ${text} NOT NULL,
    content ${text} NOT NULL,
    UNIQUE (chain, number)
);

-- Beginnings find many entries, which are then put in order: with the id in the index no row has to be read for that.
CREATE INDEX entry_by_time ON entry (search_at, number);
CREATE INDEX entry_by_kind ON entry (kind, search_at, number);
CREATE INDEX entry_by_serial ON entry (search_serial, search_at, number, id);
CREATE INDEX entry_by_customer ON entry (search_customer, search_at, number, id);
CREATE INDEX entry_by_claim ON entry (search_claim, search_at, number, id);
CREATE INDEX entry_by_model ON entry (search_model, search_at, number);
CREATE INDEX entry_by_verdict ON entry (search_verdict, search_at, number);
CREATE INDEX entry_by_amended ON entry (amends);

CREATE TABLE attachment (
    sha256 ${text} NOT NULL PRIMARY KEY,
    bytes ${bytes} NOT NULL
);

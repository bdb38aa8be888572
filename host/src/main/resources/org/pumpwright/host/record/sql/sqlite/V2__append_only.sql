CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never changed'); END;
CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry BEGIN SELECT RAISE(ABORT, 'entries are never removed'); END;
CREATE TRIGGER attachment_no_update BEFORE UPDATE ON attachment BEGIN SELECT RAISE(ABORT, 'attachments are never changed'); END;
CREATE TRIGGER attachment_no_delete BEFORE DELETE ON attachment BEGIN SELECT RAISE(ABORT, 'attachments are never removed'); END;

CREATE VIRTUAL TABLE entry_words USING fts5 (search_words, content = 'entry', content_rowid = 'place', tokenize = 'trigram');
CREATE TRIGGER entry_into_words AFTER INSERT ON entry BEGIN
    INSERT INTO entry_words (rowid, search_words) VALUES (new.place, new.search_words);
END;

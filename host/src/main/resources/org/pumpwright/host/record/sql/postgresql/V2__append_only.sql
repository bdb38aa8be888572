CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
    RAISE EXCEPTION 'what is on record is never changed or removed';
END $$;
CREATE TRIGGER entry_no_change BEFORE UPDATE OR DELETE ON entry FOR EACH ROW EXECUTE FUNCTION refuse_change();
CREATE TRIGGER attachment_no_change BEFORE UPDATE OR DELETE ON attachment FOR EACH ROW EXECUTE FUNCTION refuse_change();

CREATE EXTENSION IF NOT EXISTS pg_trgm;
CREATE INDEX entry_by_words ON entry USING gin (search_words gin_trgm_ops);

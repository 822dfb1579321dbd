-- SPDX-License-Identifier: GPL-3.0-or-later
-- The ledger several stations share, form 2: the tables of schema_sqlite.sql for PostgreSQL 15, and who may do what. Run once
-- by the owner of the database, who is the keeper. Statements end where an empty line stands; comments stand on lines of
-- their own. Texts are compared byte by byte, as SQLite does.

CREATE SCHEMA quarterstep;

SET search_path = quarterstep;

-- What this database is; `id` tells one ledger from another.
CREATE TABLE form (
    application bigint NOT NULL,
    version integer NOT NULL,
    id bytea NOT NULL CHECK (length(id) = 16)
);

INSERT INTO form VALUES (1364413511, 2, uuid_send(gen_random_uuid()));

-- Who writes: one row for each camp folder, found by the mark of its place. `own` is told from the place here, not kept.
CREATE TABLE station (
    key bigint PRIMARY KEY,
    id bytea NOT NULL UNIQUE CHECK (length(id) = 16),
    own integer NOT NULL CHECK (own IN (0, 1)),
    machine text COLLATE "C" NOT NULL,
    volume text COLLATE "C" NOT NULL,
    folder text COLLATE "C" NOT NULL
);

CREATE UNIQUE INDEX station_place ON station (machine, volume, folder) WHERE folder <> '';

CREATE TABLE entry (
    position bigint PRIMARY KEY,
    id bytea NOT NULL UNIQUE CHECK (length(id) = 16),
    station bigint NOT NULL REFERENCES station (key),
    number bigint NOT NULL CHECK (number >= 1),
    kind text COLLATE "C" NOT NULL,
    at_ms bigint NOT NULL,
    person text COLLATE "C" NOT NULL,
    cancels bytea UNIQUE REFERENCES entry (id),
    payload text COLLATE "C" NOT NULL,
    hash bytea NOT NULL CHECK (length(hash) = 32),
    UNIQUE (station, number)
);

CREATE TABLE balance (
    site text COLLATE "C" NOT NULL,
    line text COLLATE "C" NOT NULL,
    on_hand integer NOT NULL DEFAULT 0 CHECK (on_hand >= 0),
    held integer NOT NULL DEFAULT 0 CHECK (held >= 0),
    quarantined integer NOT NULL DEFAULT 0 CHECK (quarantined >= 0),
    PRIMARY KEY (site, line),
    CHECK (held + quarantined <= on_hand)
) WITH (fillfactor = 50);

CREATE TABLE movement (
    entry bigint NOT NULL REFERENCES entry (position),
    place integer NOT NULL CHECK (place >= 1),
    site text COLLATE "C" NOT NULL,
    line text COLLATE "C" NOT NULL,
    delta integer NOT NULL,
    part text COLLATE "C" NOT NULL,
    held integer NOT NULL DEFAULT 0,
    quarantined integer NOT NULL DEFAULT 0,
    PRIMARY KEY (entry, place),
    FOREIGN KEY (site, line) REFERENCES balance (site, line)
);

CREATE INDEX movement_line ON movement (site, line, entry, delta);

CREATE TABLE remark (
    entry bigint NOT NULL REFERENCES entry (position),
    name text COLLATE "C" NOT NULL,
    salt bytea,
    words text COLLATE "C",
    PRIMARY KEY (entry, name),
    CHECK ((salt IS NULL) = (words IS NULL))
);

CREATE TABLE person (
    code text COLLATE "C" NOT NULL PRIMARY KEY,
    name text COLLATE "C" NOT NULL
);

-- The order of arrival, without gaps: who writes holds the one lock of the ledger until the end of the transaction.
CREATE FUNCTION entry_arrives() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
    IF NEW.position IS NULL THEN
        NEW.position = (SELECT coalesce(max(position), 0) + 1 FROM quarterstep.entry);
    END IF;
    RETURN NEW;
END $$;

CREATE TRIGGER entry_arrives BEFORE INSERT ON entry FOR EACH ROW EXECUTE FUNCTION entry_arrives();

CREATE FUNCTION station_arrives() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
    IF NEW.key IS NULL THEN
        NEW.key = (SELECT coalesce(max(key), 0) + 1 FROM quarterstep.station);
    END IF;
    RETURN NEW;
END $$;

CREATE TRIGGER station_arrives BEFORE INSERT ON station FOR EACH ROW EXECUTE FUNCTION station_arrives();

-- The only way a count changes, with the rights of the owner: a station may not change one itself. A line that has no
-- balance is refused by the foreign key of `movement`.
CREATE FUNCTION movement_moves() RETURNS trigger LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$ BEGIN
    UPDATE quarterstep.balance SET on_hand = on_hand + NEW.delta, held = held + NEW.held,
        quarantined = quarantined + NEW.quarantined WHERE site = NEW.site AND line = NEW.line;
    RETURN NULL;
END $$;

CREATE TRIGGER movement_moves AFTER INSERT ON movement FOR EACH ROW EXECUTE FUNCTION movement_moves();

CREATE FUNCTION stays() RETURNS trigger LANGUAGE plpgsql AS $$ BEGIN
    RAISE EXCEPTION '%', TG_ARGV[0];
END $$;

CREATE TRIGGER entry_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON entry
    FOR EACH STATEMENT EXECUTE FUNCTION stays('entries are append-only');

CREATE TRIGGER movement_stays BEFORE UPDATE OR DELETE OR TRUNCATE ON movement
    FOR EACH STATEMENT EXECUTE FUNCTION stays('movements are append-only');

CREATE TRIGGER balance_remains BEFORE DELETE OR TRUNCATE ON balance
    FOR EACH STATEMENT EXECUTE FUNCTION stays('a line that was counted stays known');

CREATE TRIGGER remark_stays BEFORE UPDATE ON remark FOR EACH ROW WHEN (NEW.entry <> OLD.entry OR NEW.name <> OLD.name
    OR NEW.words IS NOT NULL) EXECUTE FUNCTION stays('words are kept or blanked, never changed');

CREATE TRIGGER remark_remains BEFORE DELETE OR TRUNCATE ON remark
    FOR EACH STATEMENT EXECUTE FUNCTION stays('words are kept or blanked, never removed');

-- Two groups, to which the keeper adds the logins of stations and supervisors. Both are those of the whole server.
DO $$ BEGIN
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'quarterstep_station') THEN CREATE ROLE quarterstep_station; END IF;
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'quarterstep_supervisor') THEN CREATE ROLE quarterstep_supervisor; END IF;
END $$;

GRANT USAGE ON SCHEMA quarterstep TO quarterstep_station, quarterstep_supervisor;

-- A station adds entries with their movements and words, lines at nought, itself, and names; it changes a name, nothing else.
GRANT SELECT ON form, station, entry, movement, balance, remark, person TO quarterstep_station;

GRANT INSERT ON station, entry, movement, remark, person TO quarterstep_station;

GRANT INSERT (site, line) ON balance TO quarterstep_station;

GRANT UPDATE (name) ON person TO quarterstep_station;

-- A supervisor reads everything but the names of persons.
GRANT SELECT ON form, station, entry, movement, balance, remark TO quarterstep_supervisor;

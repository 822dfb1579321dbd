-- SPDX-License-Identifier: GPL-3.0-or-later
-- The ledger of one camp folder, form 3 (migration_N_sqlite.sql leads to form N from the one before). Statements end
-- where an empty line stands; comments stand on lines of their own.

-- Who writes. The own station carries a mark of the place it lives: machine, file system, folder.
CREATE TABLE station (
    key INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    own INTEGER NOT NULL CHECK (own IN (0, 1)),
    machine TEXT NOT NULL,
    volume TEXT NOT NULL,
    folder TEXT NOT NULL
) STRICT;

CREATE UNIQUE INDEX station_own ON station (own) WHERE own = 1;

-- What happened. `position` is the order of arrival in this file, `number` counts from 1 in each station.
-- `hash` is SHA-256 over the hash of the station's entry before it and the payload as stored.
CREATE TABLE entry (
    position INTEGER PRIMARY KEY,
    id BLOB NOT NULL UNIQUE CHECK (length(id) = 16),
    station INTEGER NOT NULL REFERENCES station (key),
    number INTEGER NOT NULL CHECK (number >= 1),
    kind TEXT NOT NULL,
    at_ms INTEGER NOT NULL,
    person TEXT NOT NULL,
    cancels BLOB UNIQUE REFERENCES entry (id),
    payload TEXT NOT NULL,
    hash BLOB NOT NULL CHECK (length(hash) = 32),
    UNIQUE (station, number)
) STRICT;

CREATE INDEX entry_person ON entry (person) WHERE person <> '';

CREATE INDEX entry_seldom ON entry (kind) WHERE kind <> 'handed-over';

CREATE TABLE balance (
    site TEXT NOT NULL,
    line TEXT NOT NULL,
    on_hand INTEGER NOT NULL DEFAULT 0 CHECK (on_hand >= 0),
    held INTEGER NOT NULL DEFAULT 0 CHECK (held >= 0),
    quarantined INTEGER NOT NULL DEFAULT 0 CHECK (quarantined >= 0),
    PRIMARY KEY (site, line),
    CHECK (held + quarantined <= on_hand)
) STRICT, WITHOUT ROWID;

CREATE TABLE movement (
    entry INTEGER NOT NULL REFERENCES entry (position),
    place INTEGER NOT NULL CHECK (place >= 1),
    site TEXT NOT NULL,
    line TEXT NOT NULL,
    delta INTEGER NOT NULL,
    part TEXT NOT NULL,
    held INTEGER NOT NULL DEFAULT 0,
    quarantined INTEGER NOT NULL DEFAULT 0,
    PRIMARY KEY (entry, place),
    FOREIGN KEY (site, line) REFERENCES balance (site, line)
) STRICT, WITHOUT ROWID;

CREATE INDEX movement_line ON movement (site, line, entry, delta);

CREATE INDEX movement_held ON movement (site, line, entry) WHERE held <> 0;

-- What people wrote in their own words. The payload holds SHA-256 over salt and words; both can be blanked.
CREATE TABLE remark (
    entry INTEGER NOT NULL REFERENCES entry (position),
    name TEXT NOT NULL,
    salt BLOB,
    words TEXT,
    PRIMARY KEY (entry, name),
    CHECK ((salt IS NULL) = (words IS NULL))
) STRICT, WITHOUT ROWID;

-- Persons live beside the chain: erasing one leaves every hash as it was.
CREATE TABLE person (
    code TEXT NOT NULL PRIMARY KEY,
    name TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- What the keeper settled for this ledger, such as the PIN of a role. Not part of the chain.
CREATE TABLE setting (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The only way a count changes. A line that has no balance is refused by the foreign key of `movement`.
CREATE TRIGGER movement_moves AFTER INSERT ON movement BEGIN
    UPDATE balance SET on_hand = on_hand + NEW.delta, held = held + NEW.held,
        quarantined = quarantined + NEW.quarantined WHERE site = NEW.site AND line = NEW.line;
END;

CREATE TRIGGER entry_stays BEFORE UPDATE ON entry BEGIN
    SELECT RAISE(ABORT, 'entries are append-only');
END;

CREATE TRIGGER entry_remains BEFORE DELETE ON entry BEGIN
    SELECT RAISE(ABORT, 'entries are append-only');
END;

CREATE TRIGGER movement_stays BEFORE UPDATE ON movement BEGIN
    SELECT RAISE(ABORT, 'movements are append-only');
END;

CREATE TRIGGER movement_remains BEFORE DELETE ON movement BEGIN
    SELECT RAISE(ABORT, 'movements are append-only');
END;

CREATE TRIGGER balance_remains BEFORE DELETE ON balance BEGIN
    SELECT RAISE(ABORT, 'a line that was counted stays known');
END;

CREATE TRIGGER remark_stays BEFORE UPDATE ON remark WHEN NEW.entry <> OLD.entry OR NEW.name <> OLD.name
    OR NEW.words IS NOT NULL BEGIN
    SELECT RAISE(ABORT, 'words are kept or blanked, never changed');
END;

CREATE TRIGGER remark_remains BEFORE DELETE ON remark BEGIN
    SELECT RAISE(ABORT, 'words are kept or blanked, never removed');
END;

-- SPDX-License-Identifier: GPL-3.0-or-later
-- A ledger as form 1 wrote it: opened with seven lines, two hand-overs. Statements end where an empty line stands.

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
    PRIMARY KEY (entry, place),
    FOREIGN KEY (site, line) REFERENCES balance (site, line)
) STRICT, WITHOUT ROWID;

CREATE INDEX movement_line ON movement (site, line, entry, delta);

-- Persons live beside the chain: erasing one leaves every hash as it was.
CREATE TABLE person (
    code TEXT NOT NULL PRIMARY KEY,
    name TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- The only way a count changes. A line that has no balance is refused by the foreign key of `movement`.
CREATE TRIGGER movement_moves AFTER INSERT ON movement BEGIN
    UPDATE balance SET on_hand = on_hand + NEW.delta WHERE site = NEW.site AND line = NEW.line;
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

PRAGMA application_id = 1364413511

PRAGMA user_version = 1

INSERT INTO station VALUES (1, X'B365C7ECE5B84E9A9D338BE91F946045', 1, '', '', '')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'CASE')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'D-100-62')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'F-M')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'L-100')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'L-250')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'N+200-62')

INSERT INTO balance (site, line) VALUES ('Test bench box', 'N+250-60')

INSERT INTO entry VALUES (1, X'01A2132006AA7678BB9285F4C43A89D1', 1, 1, 'opened', 1795617195690, '', NULL,
'{"actor":"","at":1795617195690,"cancels":"","fields":{},"id":"01a21320-06aa-7678-bb92-85f4c43a89d1","kind":"opened","movements":[{"delta":2,"line":"N+200-62","part":""},{"delta":1,"line":"N+250-60","part":""},{"delta":3,"line":"D-100-62","part":""},{"delta":4,"line":"L-100","part":""},{"delta":4,"line":"L-250","part":""},{"delta":2,"line":"F-M","part":""},{"delta":9,"line":"CASE","part":""}],"number":1,"person":"","site":"Test bench box","station":"b365c7ec-e5b8-4e9a-9d33-8be91f946045"}',
X'6BF67A8020647D0BBDAB354F02C51F41B63596FB83CC381668E2AA8C4FA755CF')

INSERT INTO entry VALUES (2, X'01A2132006AD7311ABBB96392DA915A4', 1, 2, 'handed-over', 1795617195693, 'K-1', NULL,
'{"actor":"AB","at":1795617195693,"cancels":"","fields":{"checks":"none","cost_thousandths":"194","final":"R 0.00 L 0.00","prism_h_thousandths":"250","profile":"adult-near","profile_version":"1","purpose":"near","reason":"asked for it","referral":"no","rules_hash":"64d10013ceed582a","verdict":"caution"},"id":"01a21320-06ad-7311-abbb-96392da915a4","kind":"handed-over","movements":[{"delta":-1,"line":"N+250-60","part":"pair"}],"number":2,"person":"K-1","site":"Test bench box","station":"b365c7ec-e5b8-4e9a-9d33-8be91f946045"}',
X'5120F2C2B3A6C0CD0E23B5E152DE9EC64000438009E43DF1E70C433F3C177F2F')

INSERT INTO entry VALUES (3, X'01A2132006DA760A8DC16B7C0924CE2E', 1, 3, 'handed-over', 1795617195738, 'K-2', NULL,
'{"actor":"AB","at":1795617195738,"cancels":"","fields":{"checks":"none","cost_thousandths":"0","final":"R -1.00 L -1.00","prism_h_thousandths":"0","profile":"adult-distance","profile_version":"1","purpose":"distance","reason":"","referral":"no","rules_hash":"64d10013ceed582a","verdict":"fits"},"id":"01a21320-06da-760a-8dc1-6b7c0924ce2e","kind":"handed-over","movements":[{"delta":-1,"line":"D-100-62","part":"pair"}],"number":3,"person":"K-2","site":"Test bench box","station":"b365c7ec-e5b8-4e9a-9d33-8be91f946045"}',
X'C5ACD855E35728C87F76F1C18AA43EA99BDEBA1D29251CA4552A3AE3B2BB487C')

INSERT INTO movement VALUES (1, 1, 'Test bench box', 'N+200-62', 2, '')

INSERT INTO movement VALUES (1, 2, 'Test bench box', 'N+250-60', 1, '')

INSERT INTO movement VALUES (1, 3, 'Test bench box', 'D-100-62', 3, '')

INSERT INTO movement VALUES (1, 4, 'Test bench box', 'L-100', 4, '')

INSERT INTO movement VALUES (1, 5, 'Test bench box', 'L-250', 4, '')

INSERT INTO movement VALUES (1, 6, 'Test bench box', 'F-M', 2, '')

INSERT INTO movement VALUES (1, 7, 'Test bench box', 'CASE', 9, '')

INSERT INTO movement VALUES (2, 1, 'Test bench box', 'N+250-60', -1, 'pair')

INSERT INTO movement VALUES (3, 1, 'Test bench box', 'D-100-62', -1, 'pair')

-- SPDX-License-Identifier: GPL-3.0-or-later
-- A ledger as form 2 wrote it: opened with three lines, received, held, referred, released. Statements end where an empty
-- line stands.

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
    held INTEGER NOT NULL DEFAULT 0,
    quarantined INTEGER NOT NULL DEFAULT 0,
    PRIMARY KEY (entry, place),
    FOREIGN KEY (site, line) REFERENCES balance (site, line)
) STRICT, WITHOUT ROWID;

CREATE INDEX movement_line ON movement (site, line, entry, delta);

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

INSERT INTO station VALUES(1,X'55412ecd06bd4e538c05c2b6e0e70a42',1,'','','');

INSERT INTO entry VALUES(1,X'01a21c607e59778485fa85ee4d5c5bfc',1,1,'opened',1795772415577,'',NULL,'{"actor":"","at":1795772415577,"cancels":"","fields":{},"id":"01a21c60-7e59-7784-85fa-85ee4d5c5bfc","kind":"opened","movements":[{"delta":2,"line":"D-100-62","part":""},{"delta":50,"line":"A","part":""},{"delta":50,"line":"B","part":""}],"number":1,"person":"","site":"Test bench box","station":"55412ecd-06bd-4e53-8c05-c2b6e0e70a42"}',X'319d2cd58c36b6b3d847e499e84cf7c19f6058782da7814023e7e7f72b2717aa');

INSERT INTO entry VALUES(2,X'01a21c607e6d75ea93b69e337b362755',1,2,'received',1795772415597,'',NULL,'{"actor":"","at":1795772415597,"cancels":"","fields":{"from":"depot"},"id":"01a21c60-7e6d-75ea-93b6-9e337b362755","kind":"received","movements":[{"delta":3,"line":"A","part":""}],"number":2,"person":"","site":"Test bench box","station":"55412ecd-06bd-4e53-8c05-c2b6e0e70a42","texts":{"note":"07230d9847d72f387b948245fdd166b4c923bb144494f4f869b6ed57e93fe381"}}',X'b431eb7bcd26b2f04acca19d6a2062b92d3f6fcae6736b53080f386bad3fb0c0');

INSERT INTO entry VALUES(3,X'01a21c61baf97554b0873dd9dd2b1064',1,3,'held',1795772496633,'K-1',NULL,'{"actor":"","at":1795772496633,"cancels":"","fields":{"until":"2026-03-01"},"id":"01a21c61-baf9-7554-b087-3dd9dd2b1064","kind":"held","movements":[{"delta":0,"held":1,"line":"A","part":""}],"number":3,"person":"K-1","site":"Test bench box","station":"55412ecd-06bd-4e53-8c05-c2b6e0e70a42","texts":{"note":"361f744dff119879095a715d65cf6a8f41ca3481b358f64f58ac119dd5696ed3"}}',X'ea075d0f2396ef69a5bad0fed8c53c5db53e4f77cf0aa8d6438b92b80bcc3e68');

INSERT INTO entry VALUES(4,X'01a21c61bb81763d979795e32b7a2308',1,4,'referred',1795772496769,'K-2',NULL,'{"actor":"","at":1795772496769,"cancels":"","fields":{},"id":"01a21c61-bb81-763d-9797-95e32b7a2308","kind":"referred","movements":[],"number":4,"person":"K-2","site":"Test bench box","station":"55412ecd-06bd-4e53-8c05-c2b6e0e70a42","texts":{"reason":"a649be92023bdb9679c8b3e3fb6616a4eef5dc2109f6f8e0ab41591eac6a6f2a"}}',X'3cbe4fb9365b3a74b8f0d5f03c02da2929bdcc4072d912d9abd2dfad74b9aa7a');

INSERT INTO entry VALUES(5,X'01a21c61bbe7764fab04e690f585441a',1,5,'released',1795772496871,'K-1',NULL,'{"actor":"","at":1795772496871,"cancels":"","fields":{},"id":"01a21c61-bbe7-764f-ab04-e690f585441a","kind":"released","movements":[{"delta":0,"held":-1,"line":"A","part":""}],"number":5,"person":"K-1","site":"Test bench box","station":"55412ecd-06bd-4e53-8c05-c2b6e0e70a42"}',X'b30d95cd051e87c00a47d63e76b0da92f71bd12a37228bfed43d98f27233c709');

INSERT INTO balance VALUES('Test bench box','A',0,0,0);

INSERT INTO balance VALUES('Test bench box','B',0,0,0);

INSERT INTO balance VALUES('Test bench box','D-100-62',0,0,0);

INSERT INTO movement VALUES(1,1,'Test bench box','D-100-62',2,'',0,0);

INSERT INTO movement VALUES(1,2,'Test bench box','A',50,'',0,0);

INSERT INTO movement VALUES(1,3,'Test bench box','B',50,'',0,0);

INSERT INTO movement VALUES(2,1,'Test bench box','A',3,'',0,0);

INSERT INTO movement VALUES(3,1,'Test bench box','A',0,'',1,0);

INSERT INTO movement VALUES(5,1,'Test bench box','A',0,'',-1,0);

INSERT INTO remark VALUES(2,'note',X'c68f579e61db9b3e12ff9dba582b8dd483386310f2a1e9ca2bb77ec658fa7773','box two');

INSERT INTO remark VALUES(3,'note',X'eaa21ea804843c67bc66b22cbdfb4f20f697e0af103a9e0871ad18832c2239d3','for the afternoon');

INSERT INTO remark VALUES(4,'reason',X'699e5f1dfac0ff06f6bb8703d16fb3e1958e0a92868fabb10fbf37628a858d8c','sudden loss');

PRAGMA application_id = 1364413511;

PRAGMA user_version = 2;

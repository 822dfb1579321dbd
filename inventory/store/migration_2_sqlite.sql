-- SPDX-License-Identifier: GPL-3.0-or-later
-- From form 1 to form 2: held and quarantined pieces move, words stand beside the chain.

ALTER TABLE movement ADD COLUMN held INTEGER NOT NULL DEFAULT 0;

ALTER TABLE movement ADD COLUMN quarantined INTEGER NOT NULL DEFAULT 0;

DROP TRIGGER movement_moves;

-- The only way a count changes. A line that has no balance is refused by the foreign key of `movement`.
CREATE TRIGGER movement_moves AFTER INSERT ON movement BEGIN
    UPDATE balance SET on_hand = on_hand + NEW.delta, held = held + NEW.held,
        quarantined = quarantined + NEW.quarantined WHERE site = NEW.site AND line = NEW.line;
END;

-- What people wrote in their own words. The payload holds SHA-256 over salt and words; both can be blanked.
CREATE TABLE remark (
    entry INTEGER NOT NULL REFERENCES entry (position),
    name TEXT NOT NULL,
    salt BLOB,
    words TEXT,
    PRIMARY KEY (entry, name),
    CHECK ((salt IS NULL) = (words IS NULL))
) STRICT, WITHOUT ROWID;

CREATE TRIGGER remark_stays BEFORE UPDATE ON remark WHEN NEW.entry <> OLD.entry OR NEW.name <> OLD.name
    OR NEW.words IS NOT NULL BEGIN
    SELECT RAISE(ABORT, 'words are kept or blanked, never changed');
END;

CREATE TRIGGER remark_remains BEFORE DELETE ON remark BEGIN
    SELECT RAISE(ABORT, 'words are kept or blanked, never removed');
END;

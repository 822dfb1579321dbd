-- SPDX-License-Identifier: GPL-3.0-or-later
-- From form 2 to form 3: settings of the ledger, and what keeps a long ledger quick.

-- What the keeper settled for this ledger, such as the PIN of a role. Not part of the chain.
CREATE TABLE setting (
    name TEXT NOT NULL PRIMARY KEY,
    value TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE INDEX entry_person ON entry (person) WHERE person <> '';

CREATE INDEX entry_seldom ON entry (kind) WHERE kind <> 'handed-over';

CREATE INDEX movement_held ON movement (site, line, entry) WHERE held <> 0;

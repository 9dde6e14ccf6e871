-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a person says of a lap: it counts, or it is set aside.  By a moment of the recording that lies in the lap: another
-- timing line cuts the same drive otherwise.  The rows of table lap are as these words have them.

CREATE TABLE judged_by_hand (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    at_s       REAL NOT NULL,
    clean      INTEGER NOT NULL,
    reason     TEXT NOT NULL,
    PRIMARY KEY (session_id, at_s)
) WITHOUT ROWID;

-- SPDX-License-Identifier: GPL-3.0-or-later
-- Small pictures for lists, so that nothing is worked out to show them: the gap over a lap of two laps that were
-- compared, and the way around the track that a session drove.  See core/book/pictures.h; made anew at any time.

CREATE TABLE gap_curve (
    session_a INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    lap_a     INTEGER NOT NULL,
    session_b INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    lap_b     INTEGER NOT NULL,
    gaps_s    BLOB NOT NULL, -- evenly over the lap, positive: A is ahead
    PRIMARY KEY (session_a, lap_a, session_b, lap_b)
) WITHOUT ROWID;
CREATE INDEX gap_curve_by_session_b ON gap_curve (session_b);

CREATE TABLE outline (
    session_id INTEGER PRIMARY KEY REFERENCES session ON DELETE CASCADE,
    places_m   BLOB NOT NULL -- east, north, east, north …
);

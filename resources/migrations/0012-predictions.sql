-- SPDX-License-Identifier: GPL-3.0-or-later
-- Predicted changes of the lap time that a person kept, so that what happens afterwards can be held against them; see
-- core/book/predictions.h.  What was predicted never changes; who drove with it and what was observed may.

CREATE TABLE prediction (
    id                 INTEGER PRIMARY KEY,
    uid                TEXT NOT NULL UNIQUE,  -- the same in every book
    session_id         INTEGER NOT NULL REFERENCES session ON DELETE CASCADE, -- whose car and driver
    there_id           INTEGER NOT NULL REFERENCES session ON DELETE CASCADE, -- on whose track
    source             TEXT NOT NULL,         -- what_if, wing
    program            TEXT NOT NULL,         -- its version
    kept_unix_s        REAL NOT NULL,
    grip_share         REAL NOT NULL,         -- of the change: +0.1 is a tenth more
    downforce_share    REAL NOT NULL,
    drag_share         REAL NOT NULL,
    downforce_area_m2  REAL NOT NULL,
    drag_area_m2       REAL NOT NULL,
    on_a_tonne         INTEGER NOT NULL,      -- the areas
    power_w            REAL NOT NULL,
    mass_kg            REAL NOT NULL,
    expected           TEXT NOT NULL,         -- what the setup sheet will say then, as setup sheets are kept
    lap_s              REAL,                  -- as driven before
    change_s           REAL NOT NULL,         -- of the lap time, negative: quicker; 95 % from low to high
    change_low_s       REAL NOT NULL,
    change_high_s      REAL NOT NULL,
    driven             TEXT NOT NULL,         -- SHA-256 of sessions that a person says were driven with it, with blanks
    observed_s         REAL,
    observed_low_s     REAL,
    observed_high_s    REAL,
    changed_unix_s     REAL NOT NULL
);
CREATE INDEX prediction_by_session ON prediction (session_id);
CREATE INDEX prediction_by_there ON prediction (there_id);

CREATE VIEW predictions AS
SELECT prediction.id AS prediction_id, prediction.session_id, whose.driver, whose.car, there.track,
    source, program AS program_version, kept_unix_s, grip_share, downforce_share, drag_share, downforce_area_m2,
    drag_area_m2, on_a_tonne, power_w, mass_kg, prediction.lap_s AS lap_before_s, change_s, change_low_s, change_high_s,
    observed_s AS observed_change_s, observed_low_s AS observed_change_low_s, observed_high_s AS observed_change_high_s
FROM prediction JOIN sessions AS whose ON whose.session_id = prediction.session_id
    JOIN sessions AS there ON there.session_id = there_id;

-- SPDX-License-Identifier: GPL-3.0-or-later
-- The first book.  Names are the keys by which people know things; uid is the same in every book; text in JSON is what
-- the program's own writers make of a setup sheet, a track record, a recipe.

CREATE TABLE driver (id INTEGER PRIMARY KEY, name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (name <> ''));
CREATE TABLE car    (id INTEGER PRIMARY KEY, name TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (name <> ''));
CREATE TABLE track  (
    id     INTEGER PRIMARY KEY,
    name   TEXT NOT NULL COLLATE NOCASE UNIQUE CHECK (name <> ''),
    record TEXT,                        -- JSON; absent while only the name is known
    line   BLOB                         -- reference line with its frame, see core/book/line_bytes.h
);

CREATE TABLE session (
    id             INTEGER PRIMARY KEY,
    checksum       BLOB NOT NULL UNIQUE CHECK (length(checksum) = 32), -- SHA-256 of the source's bytes
    file_name      TEXT NOT NULL,
    size_bytes     INTEGER NOT NULL,
    driver_id      INTEGER REFERENCES driver,
    car_id         INTEGER REFERENCES car,
    track_id       INTEGER REFERENCES track,
    start_unix_s   REAL,
    conditions     TEXT NOT NULL,
    tyre           TEXT NOT NULL COLLATE NOCASE, -- of the setup, for searching
    setup          TEXT NOT NULL,       -- JSON
    setup_words    TEXT NOT NULL,       -- names and values of its items, for searching
    duration_s     REAL NOT NULL,
    file_driver    TEXT NOT NULL,       -- what the file itself said
    file_car       TEXT NOT NULL,
    file_track     TEXT NOT NULL,
    file_start_s   REAL,
    removed_unix_s REAL                 -- absent while it is listed
);
CREATE INDEX session_by_start ON session (start_unix_s);
CREATE INDEX session_by_track ON session (track_id);
CREATE INDEX session_by_car ON session (car_id);
CREATE INDEX session_by_driver ON session (driver_id);

CREATE TABLE fact (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    place      INTEGER NOT NULL,
    key        TEXT NOT NULL,
    value      TEXT NOT NULL,
    PRIMARY KEY (session_id, place)
) WITHOUT ROWID;

CREATE TABLE warning (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    place      INTEGER NOT NULL,
    code       TEXT NOT NULL,
    message    TEXT NOT NULL,
    line       INTEGER,
    PRIMARY KEY (session_id, place)
) WITHOUT ROWID;

CREATE TABLE lap (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    place      INTEGER NOT NULL,
    number     INTEGER NOT NULL,
    kind       TEXT NOT NULL,
    clean      INTEGER NOT NULL,
    start_s    REAL NOT NULL,
    end_s      REAL NOT NULL,
    time_sd_s  REAL,
    why        TEXT NOT NULL,           -- it is not clean
    PRIMARY KEY (session_id, place)
) WITHOUT ROWID;

-- Numbers of a recording; channels that were sampled together share their stamps' block.
CREATE TABLE block (
    id         INTEGER PRIMARY KEY,
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    place      INTEGER NOT NULL,
    count      INTEGER NOT NULL,        -- of numbers
    crc        INTEGER NOT NULL,        -- CRC-32 of the bytes
    bytes      BLOB NOT NULL,           -- see core/book/packed_values.h
    UNIQUE (session_id, place)
);

CREATE TABLE channel (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    place      INTEGER NOT NULL,
    name       TEXT NOT NULL,
    meaning    TEXT NOT NULL,
    unit       TEXT NOT NULL,
    unit_text  TEXT NOT NULL,
    time_place   INTEGER,               -- of blocks of the same session; absent where the recording has none
    values_place INTEGER NOT NULL,
    lines_place  INTEGER,
    PRIMARY KEY (session_id, place)
) WITHOUT ROWID;

CREATE TABLE split (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    place      INTEGER NOT NULL,
    time_s     REAL NOT NULL,
    PRIMARY KEY (session_id, place)
) WITHOUT ROWID;

CREATE TABLE figure (
    session_id INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    name       TEXT NOT NULL,
    value      REAL NOT NULL,
    low        REAL NOT NULL,
    high       REAL NOT NULL,
    decided_by TEXT NOT NULL,
    PRIMARY KEY (session_id, name)
) WITHOUT ROWID;

CREATE TABLE pairing (
    id             INTEGER PRIMARY KEY,
    session_a      INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    lap_a          INTEGER NOT NULL,
    session_b      INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    lap_b          INTEGER NOT NULL,
    title          TEXT NOT NULL,
    sentence       TEXT NOT NULL,
    changed_unix_s REAL NOT NULL,
    UNIQUE (session_a, lap_a, session_b, lap_b)
);
CREATE INDEX pairing_by_session_b ON pairing (session_b);

CREATE TABLE note (
    id             INTEGER PRIMARY KEY,
    uid            TEXT NOT NULL UNIQUE CHECK (uid <> ''),
    session_id     INTEGER REFERENCES session ON DELETE CASCADE,
    pairing_id     INTEGER REFERENCES pairing ON DELETE CASCADE,
    lap            INTEGER,
    segment        TEXT NOT NULL,
    at_m           REAL,
    text           TEXT NOT NULL,
    changed_unix_s REAL NOT NULL,
    CHECK (session_id IS NOT NULL OR pairing_id IS NOT NULL)
);
CREATE INDEX note_by_session ON note (session_id);
CREATE INDEX note_by_pairing ON note (pairing_id);

CREATE TABLE recipe (
    id    INTEGER PRIMARY KEY,
    shape TEXT NOT NULL UNIQUE,
    title TEXT NOT NULL,
    text  TEXT NOT NULL                 -- JSON
);

-- What a session can be found by.  Written anew from found_by with every edit that touches it.
CREATE VIRTUAL TABLE words USING fts5 (text, tokenize = "unicode61 remove_diacritics 2", prefix = '1 2 3');
CREATE VIEW found_by AS
SELECT s.id AS session_id,
    coalesce((SELECT name FROM driver WHERE id = s.driver_id), '') || ' ' ||
    coalesce((SELECT name FROM car WHERE id = s.car_id), '') || ' ' ||
    coalesce((SELECT name FROM track WHERE id = s.track_id), '') || ' ' ||
    s.tyre || ' ' || s.conditions || ' ' || s.setup_words || ' ' || s.file_name || ' ' ||
    coalesce((SELECT group_concat(key || ' ' || value, ' ') FROM fact WHERE session_id = s.id), '') || ' ' ||
    coalesce((SELECT group_concat(segment || ' ' || text, ' ') FROM note WHERE session_id = s.id), '') || ' ' ||
    coalesce((SELECT group_concat(title || ' ' || sentence, ' ') FROM pairing
              WHERE session_a = s.id OR session_b = s.id), '') || ' ' ||
    coalesce((SELECT group_concat(note.segment || ' ' || note.text, ' ') FROM note JOIN pairing
              ON pairing.id = note.pairing_id WHERE session_a = s.id OR session_b = s.id), '') AS text
FROM session AS s;

CREATE VIEW summary AS
SELECT session.id AS id, checksum, file_name, size_bytes,
    coalesce(driver.name, '') AS driver, coalesce(car.name, '') AS car, coalesce(track.name, '') AS track,
    tyre, conditions, start_unix_s, duration_s,
    (SELECT count(*) FROM lap WHERE session_id = session.id) AS laps,
    (SELECT count(*) FROM lap WHERE session_id = session.id AND clean) AS clean_laps,
    (SELECT min(end_s - start_s) FROM lap WHERE session_id = session.id AND clean) AS best_clean_s,
    (SELECT count(*) FROM note WHERE session_id = session.id) AS notes
FROM session LEFT JOIN driver ON driver.id = driver_id LEFT JOIN car ON car.id = car_id
    LEFT JOIN track ON track.id = track_id
WHERE removed_unix_s IS NULL;

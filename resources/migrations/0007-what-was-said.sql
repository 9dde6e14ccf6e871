-- SPDX-License-Identifier: GPL-3.0-or-later
-- What people said, so that two books can be made one in any order and nothing is lost: every value that a field ever
-- had, with the moment; see core/book/said.h.  The other tables show what is in use.

CREATE TABLE said (
    subject     TEXT NOT NULL,          -- the same in every book: 'session SHA-256', 'track name', 'note uid'
    field       TEXT NOT NULL,
    said_unix_s REAL NOT NULL CHECK (said_unix_s BETWEEN 0 AND 1e11), -- 0: said by the session's file itself
    value       NOT NULL,               -- text or number; '': nothing
    replaced    INTEGER NOT NULL,       -- by one that was said with this one in sight; never undone
    PRIMARY KEY (subject, field, said_unix_s, value)
) WITHOUT ROWID;

-- Notes ('note uid') and pairings ('pairing SHA-256 lap SHA-256 lap') that were removed; a later one lives.
CREATE TABLE gone (
    subject     TEXT PRIMARY KEY,
    gone_unix_s REAL NOT NULL
) WITHOUT ROWID;

-- When a session's parts were made; of two books' the later counts.
ALTER TABLE session ADD COLUMN recording_unix_s REAL NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN laps_unix_s REAL NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN figures_unix_s REAL NOT NULL DEFAULT 0;

-- One text for a setup of which nothing is known.
UPDATE session SET setup = '{}' WHERE trim(setup, char(10)) = '{}';

-- What is in use, field by field.
CREATE VIEW session_field AS
SELECT id, 'driver' AS field, coalesce((SELECT name FROM driver WHERE driver.id = driver_id), '') AS value,
    file_driver AS file_value FROM session UNION ALL
SELECT id, 'car', coalesce((SELECT name FROM car WHERE car.id = car_id), ''), file_car FROM session UNION ALL
SELECT id, 'track', coalesce((SELECT name FROM track WHERE track.id = track_id), ''), file_track FROM session UNION ALL
SELECT id, 'start', coalesce(start_unix_s, ''), coalesce(file_start_s, '') FROM session UNION ALL
SELECT id, 'conditions', conditions, '' FROM session UNION ALL
SELECT id, 'setup', CASE setup WHEN '{}' THEN '' ELSE setup END, '' FROM session UNION ALL
SELECT id, 'removed', coalesce(removed_unix_s, ''), '' FROM session UNION ALL
SELECT session_id, 'judged ' || at_s, clean || ' ' || reason, '' FROM judged_by_hand;

-- Where books differ: a field of which two values are in use, neither said with the other in sight.
CREATE VIEW conflict AS
SELECT subject, field FROM said WHERE NOT replaced
    AND field IN ('driver', 'car', 'track', 'start', 'conditions', 'setup', 'record', 'text')
GROUP BY subject, field
HAVING count(DISTINCT CASE WHEN field IN ('driver', 'car', 'track') THEN lower(value) ELSE value END) > 1;

INSERT OR IGNORE INTO said SELECT 'session ' || lower(hex(checksum)), field, 0, file_value, file_value <> value
FROM session JOIN session_field USING (id) WHERE file_value <> '';
INSERT OR IGNORE INTO said SELECT 'session ' || lower(hex(checksum)), field, 0, value, 0
FROM session JOIN session_field USING (id) WHERE value <> '';
INSERT OR IGNORE INTO said SELECT 'track ' || lower(name), 'record', 0, record, 0 FROM track WHERE record IS NOT NULL;
INSERT OR IGNORE INTO said SELECT 'track ' || lower(name), 'line ' || CASE json_valid(record) WHEN 1 THEN
    coalesce(json_extract(record, '$.gate'), '') ELSE '' END, 0, line, 0 FROM track WHERE line IS NOT NULL;
INSERT OR IGNORE INTO said SELECT 'note ' || uid, 'text', max(0, min(changed_unix_s, 1e11)), text, 0 FROM note;

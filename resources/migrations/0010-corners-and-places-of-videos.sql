-- SPDX-License-Identifier: GPL-3.0-or-later
-- What each flying lap did in each corner, for other tools; and videos travel with their sessions from book to book: when
-- a session's video was last said, and every place where a file of its content was seen, on whichever machine.

ALTER TABLE session ADD COLUMN corners_unix_s REAL NOT NULL DEFAULT 0;
ALTER TABLE session ADD COLUMN video_unix_s REAL NOT NULL DEFAULT 0;

-- Corners of the track as they were when the lap was measured.
CREATE TABLE corner (
    session_id          INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    lap_place           INTEGER NOT NULL, -- of `lap`
    place               INTEGER NOT NULL, -- along the lap
    segment             TEXT NOT NULL,
    start_m             REAL NOT NULL,
    end_m               REAL NOT NULL,
    time_s              REAL NOT NULL,
    entry_speed_mps     REAL NOT NULL,
    entry_speed_sd_mps  REAL,
    min_speed_mps       REAL,
    min_speed_sd_mps    REAL,
    min_speed_at_m      REAL,
    exit_speed_mps      REAL NOT NULL,
    exit_speed_sd_mps   REAL,
    lift_at_m           REAL,
    braking_point_m     REAL,
    braking_point_sd_m  REAL,
    braking_mps2        REAL,
    throttle_opens_m    REAL,
    full_throttle_m     REAL,
    full_throttle_sd_m  REAL,
    peak_lateral_mps2   REAL,
    coasting_s          REAL,
    driven_length_m     REAL,
    PRIMARY KEY (session_id, lap_place, place)
) WITHOUT ROWID;

-- Those whose track still has that corner at that place.
CREATE VIEW corner_figures AS
SELECT sessions.session_id, sessions.driver, sessions.car, sessions.track, sessions.start_unix_s, lap.number AS lap,
    lap.clean, corner.segment, corner.start_m, corner.end_m, time_s, entry_speed_mps, entry_speed_sd_mps, min_speed_mps, min_speed_sd_mps, min_speed_at_m, exit_speed_mps,
    exit_speed_sd_mps, lift_at_m, braking_point_m, braking_point_sd_m, braking_mps2, throttle_opens_m, full_throttle_m,
    full_throttle_sd_m, peak_lateral_mps2, coasting_s, driven_length_m
FROM sessions JOIN corner USING (session_id) JOIN lap ON lap.session_id = sessions.session_id AND lap.place = lap_place
    JOIN segments ON segments.track = sessions.track
    AND segments.segment = corner.segment AND abs(segments.start_m - corner.start_m) < 0.001
    AND abs(segments.end_m - corner.end_m) < 0.001
ORDER BY sessions.session_id, lap_place, corner.place;

CREATE TABLE video_place (
    ends_checksum BLOB NOT NULL,
    size_bytes    INTEGER NOT NULL,
    path          TEXT NOT NULL,
    PRIMARY KEY (ends_checksum, size_bytes, path)
) WITHOUT ROWID;

INSERT OR IGNORE INTO video_place SELECT ends_checksum, size_bytes, path FROM video_file;

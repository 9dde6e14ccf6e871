-- SPDX-License-Identifier: GPL-3.0-or-later
-- Where a session's video lies and how it stands to the recording; never the video itself.

CREATE TABLE video_file (
    session_id    INTEGER NOT NULL REFERENCES session ON DELETE CASCADE,
    part          INTEGER NOT NULL, -- 0, 1, … of one video
    path          TEXT NOT NULL,
    size_bytes    INTEGER NOT NULL,
    ends_checksum BLOB NOT NULL, -- of head and tail
    PRIMARY KEY (session_id, part)
) WITHOUT ROWID;

CREATE TABLE video_step (
    session_id    INTEGER PRIMARY KEY REFERENCES session ON DELETE CASCADE,
    offset_s      REAL NOT NULL,
    offset_low_s  REAL NOT NULL,
    offset_high_s REAL NOT NULL,
    drift         REAL NOT NULL,
    around_s      REAL NOT NULL,
    method        TEXT NOT NULL
);

-- SPDX-License-Identifier: GPL-3.0-or-later
-- What a pairing's page shows, so that it need not be worked out before it is shown.  A copy of nothing but what the
-- program makes of the samples: it goes with its pairing, and a book without it is whole.

CREATE TABLE kept_view (
    pairing_id INTEGER PRIMARY KEY REFERENCES pairing ON DELETE CASCADE,
    made_from  BLOB NOT NULL,           -- SHA-256 of program, samples, names and tracks, see core/analysis/kept_view.h
    crc        INTEGER NOT NULL,        -- CRC-32 of the bytes
    bytes      BLOB NOT NULL            -- see core/analysis/view_archive.h
);

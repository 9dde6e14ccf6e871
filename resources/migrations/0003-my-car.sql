-- SPDX-License-Identifier: GPL-3.0-or-later
-- The person's own car, asked for once: whose driver "try next" speaks to.  Names as sessions have them, not rows of
-- their tables: the car is remembered when its last session is gone.  Never merged from another book.

CREATE TABLE my_car (
    only   INTEGER PRIMARY KEY CHECK (only = 1),
    driver TEXT NOT NULL COLLATE NOCASE,
    car    TEXT NOT NULL COLLATE NOCASE,
    CHECK (driver <> '' OR car <> '')
);

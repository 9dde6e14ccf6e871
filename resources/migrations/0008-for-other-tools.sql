-- SPDX-License-Identifier: GPL-3.0-or-later
-- What other tools read: views that stay as they are, with SI units in the names of their columns.  Sessions that were
-- removed are left out.  More columns may be added at the end, none renamed.

CREATE VIEW sessions AS
SELECT session.id AS session_id, file_name, driver.name AS driver, car.name AS car, track.name AS track, start_unix_s,
    datetime(start_unix_s, 'unixepoch') AS start_utc, duration_s,
    (SELECT count(*) FROM lap WHERE session_id = session.id) AS laps,
    (SELECT count(*) FROM lap WHERE session_id = session.id AND clean) AS clean_laps,
    (SELECT min(end_s - start_s) FROM lap WHERE session_id = session.id AND clean) AS best_clean_lap_s,
    lower(hex(checksum)) AS source_sha256
FROM session LEFT JOIN driver ON driver.id = driver_id LEFT JOIN car ON car.id = car_id
    LEFT JOIN track ON track.id = track_id
WHERE removed_unix_s IS NULL;

CREATE VIEW laps AS
SELECT session_id, driver, car, track, start_unix_s, number AS lap, kind, lap.clean, lap.start_s, end_s - start_s AS time_s,
    time_sd_s, nullif(why, '') AS why_not_clean
FROM sessions JOIN lap USING (session_id) ORDER BY session_id, place;

CREATE VIEW segments AS
SELECT track.name AS track, json_extract(each.value, '$.name') AS segment, json_extract(each.value, '$.kind') AS kind,
    CAST(json_extract(each.value, '$.start_m') AS REAL) AS start_m, CAST(json_extract(each.value, '$.end_m') AS REAL) AS end_m
FROM track JOIN json_each(CASE json_valid(record) WHEN 1 THEN record ELSE '{}' END, '$.segments') AS each;

CREATE VIEW car_figures AS
SELECT session_id, driver, car, track, start_unix_s, figure.name AS figure, value, low, high, decided_by
FROM sessions JOIN figure USING (session_id);

CREATE VIEW setups AS
SELECT session_id, driver, car, track, start_unix_s, nullif(tyre, '') AS tyre,
    CAST(json_extract(sheet, '$.mass_kg') AS REAL) AS mass_kg, CAST(json_extract(sheet, '$.mass_sd_kg') AS REAL) AS mass_sd_kg,
    1000.0 * json_extract(sheet, '$.springs.front_n_per_mm') AS front_spring_n_per_m,
    1000.0 * json_extract(sheet, '$.springs.rear_n_per_mm') AS rear_spring_n_per_m,
    CAST(json_extract(sheet, '$.known.downforce_area_m2') AS REAL) AS known_downforce_area_m2,
    CAST(json_extract(sheet, '$.known.drag_area_m2') AS REAL) AS known_drag_area_m2,
    1000.0 * json_extract(sheet, '$.known.power_kw') AS known_power_w
FROM (SELECT id, tyre, CASE json_valid(setup) WHEN 1 THEN setup ELSE '{}' END AS sheet FROM session)
    JOIN sessions ON session_id = id;

CREATE VIEW setup_items AS
SELECT session_id, driver, car, track, sessions.start_unix_s, json_extract(each.value, '$.name') AS item,
    json_extract(each.value, '$.value') AS value
FROM sessions JOIN session ON session.id = session_id
    JOIN json_each(CASE json_valid(setup) WHEN 1 THEN setup ELSE '{}' END, '$.items') AS each;

CREATE VIEW conditions AS
SELECT session_id, driver, car, track, start_unix_s, nullif(words, '') AS conditions,
    json_extract(air, '$.air_temperature_c') + 273.15 AS air_temperature_k,
    100.0 * json_extract(air, '$.pressure_hpa') AS air_pressure_pa,
    json_extract(air, '$.humidity_percent') / 100.0 AS relative_humidity,
    CAST(json_extract(air, '$.altitude_m') AS REAL) AS altitude_m
FROM (SELECT id, conditions AS words, CASE json_valid(setup) WHEN 1 THEN coalesce(json_extract(setup, '$.conditions'), '{}')
    ELSE '{}' END AS air FROM session) JOIN sessions ON session_id = id;

-- One row for each season a keeper has opened; the one opened last is the current season.
-- Nothing is deleted: an earlier season stays and can be opened again.
-- Stamps are ISO-8601 instants in UTC, written by the application.
CREATE TABLE season (
  id          TEXT PRIMARY KEY,
  owner       TEXT NOT NULL,
  kind        TEXT NOT NULL CHECK (kind IN ('demo', 'path', 'upload')),
  file_name   TEXT NOT NULL,
  folder      TEXT,
  season_text TEXT,
  goal        TEXT CHECK (goal IN ('both', 'brood', 'bloom')),
  opened_at   TEXT NOT NULL,
  created_at  TEXT NOT NULL,
  changed_at  TEXT NOT NULL,
  CHECK ((kind = 'path') = (folder IS NOT NULL)),
  CHECK ((kind = 'upload') = (season_text IS NOT NULL))
);
CREATE INDEX season_by_owner ON season (owner, opened_at);

-- The weather files that came with an uploaded season, by their names without folders.
CREATE TABLE season_file (
  season_id  TEXT NOT NULL REFERENCES season (id),
  file_name  TEXT NOT NULL,
  file_text  TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  PRIMARY KEY (season_id, file_name)
);

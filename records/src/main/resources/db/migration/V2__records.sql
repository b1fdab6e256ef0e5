-- The keeper's records. Every table has an owner. Nothing is deleted: an entry taken out names the act that did it, a
-- value that was replaced stays in the table of corrections. Ids are made by the application. Stamps are ISO-8601
-- instants in UTC, days are ISO-8601; yes and no are 1 and 0; a cell that was not told is NULL, never empty text.

-- One thing somebody did: all of its changes together, and undone together.
CREATE TABLE act (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  words TEXT NOT NULL,
  entries INTEGER NOT NULL,
  undoes TEXT REFERENCES act (id) DEFERRABLE INITIALLY DEFERRED,
  undone_by TEXT REFERENCES act (id) DEFERRABLE INITIALLY DEFERRED,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL
);
CREATE INDEX act_by_time ON act (owner, created_at);

-- A value that was replaced, and by what; without a column the entry was taken out. was_act is the act that had given the
-- entry its values until then.
CREATE TABLE correction (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  act TEXT NOT NULL REFERENCES act (id),
  was_act TEXT NOT NULL REFERENCES act (id),
  sheet TEXT NOT NULL,
  entry TEXT NOT NULL,
  column_name TEXT NOT NULL,
  was TEXT,
  became TEXT,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL
);
CREATE INDEX correction_by_entry ON correction (sheet, entry);
CREATE INDEX correction_by_act ON correction (act);

-- The bytes of pictures, each kept once.
CREATE TABLE picture (
  owner TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  content ${bytes} NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  PRIMARY KEY (owner, sha256)
);

-- Secret links to a calendar of jobs. Only the digest of a secret is kept; a link taken back stays listed.
CREATE TABLE feed (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  name TEXT NOT NULL CHECK (name <> ''),
  secret_sha256 TEXT NOT NULL UNIQUE,
  revoked_at TEXT,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL
);

-- A garden, allotment or orchard where bees are kept.
CREATE TABLE site (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  name TEXT NOT NULL CHECK (name <> ''),
  latitude_deg DOUBLE PRECISION NOT NULL CHECK (latitude_deg BETWEEN -90 AND 90),
  longitude_deg DOUBLE PRECISION NOT NULL CHECK (longitude_deg BETWEEN -180 AND 180),
  elevation_m DOUBLE PRECISION CHECK (elevation_m BETWEEN -430 AND 6000),
  zone TEXT NOT NULL CHECK (zone <> ''),
  region TEXT CHECK (region <> ''),
  weather_file TEXT CHECK (weather_file <> ''),
  note TEXT CHECK (note <> '')
);
CREATE UNIQUE INDEX site_named ON site (owner, name) WHERE removed_act IS NULL;

-- How high the skyline stands in one direction, seen from the bees' place.
CREATE TABLE horizon (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  azimuth_deg DOUBLE PRECISION NOT NULL CHECK (azimuth_deg BETWEEN 0 AND 360),
  height_deg DOUBLE PRECISION NOT NULL CHECK (height_deg BETWEEN 0 AND 90)
);
CREATE INDEX horizon_by_site ON horizon (site);

-- A shelter that holds nests.
CREATE TABLE house (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  name TEXT NOT NULL CHECK (name <> ''),
  faces_deg DOUBLE PRECISION CHECK (faces_deg BETWEEN 0 AND 360),
  height_cm DOUBLE PRECISION CHECK (height_cm BETWEEN 0 AND 1000),
  roof_out_cm DOUBLE PRECISION CHECK (roof_out_cm BETWEEN 0 AND 300),
  roof_above_cm DOUBLE PRECISION CHECK (roof_above_cm BETWEEN 0 AND 300),
  fixed INTEGER CHECK (fixed IN (0, 1)),
  guard INTEGER CHECK (guard IN (0, 1)),
  put_up_on TEXT CHECK (put_up_on <> ''),
  taken_down_on TEXT CHECK (taken_down_on <> ''),
  note TEXT CHECK (note <> '')
);
CREATE UNIQUE INDEX house_named ON house (owner, site, name) WHERE removed_act IS NULL;
CREATE INDEX house_by_site ON house (site);

-- A bundle or block of like tunnels in a house.
CREATE TABLE nest (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  house TEXT NOT NULL REFERENCES house (id),
  name TEXT NOT NULL CHECK (name <> ''),
  kind TEXT NOT NULL CHECK (kind IN ('tube', 'reed', 'tray', 'drilled block')),
  material TEXT CHECK (material <> ''),
  openable INTEGER NOT NULL CHECK (openable IN (0, 1)),
  hole_width_mm DOUBLE PRECISION NOT NULL CHECK (hole_width_mm BETWEEN 2 AND 25),
  length_mm DOUBLE PRECISION CHECK (length_mm BETWEEN 20 AND 500),
  tunnels INTEGER NOT NULL CHECK (tunnels BETWEEN 1 AND 100000),
  first_year INTEGER CHECK (first_year BETWEEN 1900 AND 2199),
  retired_on TEXT CHECK (retired_on <> ''),
  note TEXT CHECK (note <> '')
);
CREATE UNIQUE INDEX nest_named ON nest (owner, house, name) WHERE removed_act IS NULL;
CREATE INDEX nest_by_house ON nest (house);

-- Bees of one kind, origin and year kept together; the year is the one they fly in.
CREATE TABLE batch (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  name TEXT NOT NULL CHECK (name <> ''),
  species TEXT NOT NULL CHECK (species <> ''),
  year INTEGER NOT NULL CHECK (year BETWEEN 1900 AND 2199),
  origin TEXT NOT NULL CHECK (origin <> ''),
  subspecies TEXT CHECK (subspecies <> ''),
  came_by TEXT NOT NULL CHECK (came_by IN ('own nests', 'bought', 'gift', 'swap', 'joined from the wild')),
  cocoons INTEGER CHECK (cocoons BETWEEN 0 AND 1000000),
  females INTEGER CHECK (females BETWEEN 0 AND 1000000),
  males INTEGER CHECK (males BETWEEN 0 AND 1000000),
  wintered TEXT CHECK (wintered IN ('fridge', 'shed', 'outdoors', 'unopened')),
  cold_from TEXT CHECK (cold_from <> ''),
  cold_c DOUBLE PRECISION CHECK (cold_c BETWEEN -30 AND 20),
  quarantine_until TEXT CHECK (quarantine_until <> ''),
  note TEXT CHECK (note <> '')
);
CREATE UNIQUE INDEX batch_named ON batch (owner, name) WHERE removed_act IS NULL;
CREATE INDEX batch_by_site ON batch (site);

-- A batch whose bees built the nests that another batch came out of.
CREATE TABLE parent (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  batch TEXT NOT NULL REFERENCES batch (id),
  from_batch TEXT NOT NULL REFERENCES batch (id)
);
CREATE INDEX parent_by_batch ON parent (batch);
CREATE INDEX parent_by_from_batch ON parent (from_batch);

-- A picture of a site, house or nest.
CREATE TABLE photo (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  house TEXT REFERENCES house (id),
  nest TEXT REFERENCES nest (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  file_name TEXT NOT NULL CHECK (file_name <> ''),
  media_type TEXT NOT NULL CHECK (media_type IN ('image/jpeg', 'image/png', 'image/webp')),
  sha256 TEXT NOT NULL CHECK (sha256 <> ''),
  caption TEXT CHECK (caption <> '')
);
CREATE INDEX photo_by_site ON photo (site, on_date);
CREATE INDEX photo_by_house ON photo (house, on_date);
CREATE INDEX photo_by_nest ON photo (nest, on_date);

-- A count of females and males in a batch, and how it was made.
CREATE TABLE sexing (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  batch TEXT NOT NULL REFERENCES batch (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  method TEXT NOT NULL CHECK (method IN ('weight', 'width', 'sieve', 'candling', 'opened', 'by eye')),
  females INTEGER NOT NULL CHECK (females BETWEEN 0 AND 1000000),
  males INTEGER NOT NULL CHECK (males BETWEEN 0 AND 1000000),
  cannot_tell INTEGER CHECK (cannot_tell BETWEEN 0 AND 1000000),
  note TEXT CHECK (note <> '')
);
CREATE INDEX sexing_by_batch ON sexing (batch, on_date);

-- One cocoon weighed or measured.
CREATE TABLE measurement (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  batch TEXT NOT NULL REFERENCES batch (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  weight_mg DOUBLE PRECISION CHECK (weight_mg BETWEEN 1 AND 1000),
  width_mm DOUBLE PRECISION CHECK (width_mm BETWEEN 1 AND 25),
  length_mm DOUBLE PRECISION CHECK (length_mm BETWEEN 1 AND 40),
  sex TEXT CHECK (sex IN ('female', 'male'))
);
CREATE INDEX measurement_by_batch ON measurement (batch, on_date);
CREATE INDEX measurement_in_order ON measurement (owner, removed_act, on_date, created_at, id);

-- Bees of a batch put out on one day.
CREATE TABLE release (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  batch TEXT NOT NULL REFERENCES batch (id),
  site TEXT NOT NULL REFERENCES site (id),
  house TEXT REFERENCES house (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  cocoons INTEGER CHECK (cocoons BETWEEN 0 AND 1000000),
  females INTEGER CHECK (females BETWEEN 0 AND 1000000),
  males INTEGER CHECK (males BETWEEN 0 AND 1000000),
  note TEXT CHECK (note <> '')
);
CREATE INDEX release_by_batch ON release (batch, on_date);
CREATE INDEX release_by_site ON release (site, on_date);
CREATE INDEX release_by_house ON release (house, on_date);

-- Bees of a batch kept cold on purpose when others were put out.
CREATE TABLE hold_back (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  batch TEXT NOT NULL REFERENCES batch (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  cocoons INTEGER NOT NULL CHECK (cocoons BETWEEN 0 AND 1000000),
  until_date TEXT CHECK (until_date <> ''),
  note TEXT CHECK (note <> '')
);
CREATE INDEX hold_back_by_batch ON hold_back (batch, on_date);

-- What was left in the release box after the flight: the winter's real score.
CREATE TABLE unemerged (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  batch TEXT NOT NULL REFERENCES batch (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  put_out INTEGER NOT NULL CHECK (put_out BETWEEN 0 AND 1000000),
  left_closed INTEGER NOT NULL CHECK (left_closed BETWEEN 0 AND 1000000),
  dead_inside INTEGER CHECK (dead_inside BETWEEN 0 AND 1000000),
  parasites_inside INTEGER CHECK (parasites_inside BETWEEN 0 AND 1000000),
  note TEXT CHECK (note <> '')
);
CREATE INDEX unemerged_by_batch ON unemerged (batch, on_date);

-- What was counted at a site or house on one day.
CREATE TABLE visit (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  house TEXT REFERENCES house (id),
  species TEXT CHECK (species <> ''),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  more_plugged INTEGER CHECK (more_plugged BETWEEN 0 AND 1000000),
  all_plugged INTEGER CHECK (all_plugged BETWEEN 0 AND 1000000),
  torch_count INTEGER CHECK (torch_count BETWEEN 0 AND 1000000),
  mud TEXT CHECK (mud IN ('wet', 'damp', 'dry', 'none')),
  note TEXT CHECK (note <> '')
);
CREATE INDEX visit_by_site ON visit (site, on_date);
CREATE INDEX visit_by_house ON visit (house, on_date);
CREATE INDEX visit_in_order ON visit (owner, removed_act, on_date, created_at, id);

-- Something seen: a first bee, the last, an enemy, a guest.
CREATE TABLE sighting (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  species TEXT CHECK (species <> ''),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  what TEXT NOT NULL CHECK (what IN ('first male', 'first female', 'first nesting', 'first plug', 'last bee', 'parasitoid wasp', 'cuckoo bee', 'bird', 'mouse', 'ants', 'earwigs', 'guest', 'dead bees', 'other')),
  number_seen INTEGER CHECK (number_seen BETWEEN 0 AND 1000000),
  note TEXT CHECK (note <> '')
);
CREATE INDEX sighting_by_site ON sighting (site, on_date);
CREATE INDEX sighting_in_order ON sighting (owner, removed_act, on_date, created_at, id);

-- A thermometer read by hand or by a logger; times are the site's local times.
CREATE TABLE reading (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  place TEXT NOT NULL CHECK (place IN ('fridge', 'warm room', 'incubator', 'shed', 'tunnel', 'outdoors')),
  read_at TEXT NOT NULL CHECK (read_at <> ''),
  temperature_c DOUBLE PRECISION NOT NULL CHECK (temperature_c BETWEEN -60 AND 90),
  humidity_percent DOUBLE PRECISION CHECK (humidity_percent BETWEEN 0 AND 100),
  logger TEXT CHECK (logger <> ''),
  batch TEXT REFERENCES batch (id)
);
CREATE INDEX reading_by_site ON reading (site, read_at);
CREATE INDEX reading_in_order ON reading (owner, removed_act, read_at, created_at, id);

-- Nests of one kind of bee opened at a site on one day.
CREATE TABLE opening (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  species TEXT NOT NULL CHECK (species <> ''),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  year INTEGER NOT NULL CHECK (year BETWEEN 1900 AND 2199),
  note TEXT CHECK (note <> '')
);
CREATE INDEX opening_by_site ON opening (site, on_date);

-- Cells of one sort found in opened nests: alive, or lost to one cause.
CREATE TABLE tally (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  opening TEXT NOT NULL REFERENCES opening (id),
  house TEXT REFERENCES house (id),
  nest TEXT REFERENCES nest (id),
  tunnel TEXT CHECK (tunnel <> ''),
  found TEXT NOT NULL CHECK (found <> ''),
  cells INTEGER NOT NULL CHECK (cells BETWEEN 0 AND 1000000)
);
CREATE INDEX tally_by_opening ON tally (opening);
CREATE INDEX tally_by_house ON tally (house);
CREATE INDEX tally_by_nest ON tally (nest);
CREATE INDEX tally_in_order ON tally (owner, removed_act, created_at, id);

-- A rinse of gear or cocoons.
CREATE TABLE rinse (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  batch TEXT REFERENCES batch (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  item TEXT NOT NULL CHECK (item IN ('gear', 'cocoon')),
  strength_ppm DOUBLE PRECISION CHECK (strength_ppm BETWEEN 0 AND 100000),
  minutes DOUBLE PRECISION CHECK (minutes BETWEEN 0 AND 1440),
  water_c DOUBLE PRECISION CHECK (water_c BETWEEN 0 AND 60),
  dried INTEGER CHECK (dried IN (0, 1)),
  note TEXT CHECK (note <> '')
);
CREATE INDEX rinse_by_site ON rinse (site, on_date);
CREATE INDEX rinse_by_batch ON rinse (batch, on_date);

-- Bees that came from or went to somebody else, with what their label says.
CREATE TABLE transfer (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  batch TEXT REFERENCES batch (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  direction TEXT NOT NULL CHECK (direction IN ('in', 'out')),
  manner TEXT NOT NULL CHECK (manner IN ('bought', 'gift', 'sold', 'swap')),
  species TEXT NOT NULL CHECK (species <> ''),
  cocoons INTEGER NOT NULL CHECK (cocoons BETWEEN 0 AND 1000000),
  females INTEGER CHECK (females BETWEEN 0 AND 1000000),
  males INTEGER CHECK (males BETWEEN 0 AND 1000000),
  from_place TEXT NOT NULL CHECK (from_place <> ''),
  to_place TEXT NOT NULL CHECK (to_place <> ''),
  harvest_year INTEGER CHECK (harvest_year BETWEEN 1900 AND 2199),
  health TEXT CHECK (health <> ''),
  use_by TEXT CHECK (use_by <> ''),
  quarantine_until TEXT CHECK (quarantine_until <> ''),
  permit TEXT CHECK (permit <> ''),
  note TEXT CHECK (note <> '')
);
CREATE INDEX transfer_by_site ON transfer (site, on_date);
CREATE INDEX transfer_by_batch ON transfer (batch, on_date);

-- A spray announced or seen within reach of the bees.
CREATE TABLE spray (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  what TEXT CHECK (what <> ''),
  where_to TEXT CHECK (where_to <> ''),
  told_by TEXT CHECK (told_by <> ''),
  note TEXT CHECK (note <> '')
);
CREATE INDEX spray_by_site ON spray (site, on_date);

-- A plant in reach of the bees.
CREATE TABLE plant (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  name TEXT NOT NULL CHECK (name <> ''),
  cover_m2 DOUBLE PRECISION NOT NULL CHECK (cover_m2 BETWEEN 0 AND 10000000),
  distance_m DOUBLE PRECISION CHECK (distance_m BETWEEN 0 AND 10000),
  target INTEGER CHECK (target IN (0, 1)),
  note TEXT CHECK (note <> '')
);
CREATE UNIQUE INDEX plant_named ON plant (owner, site, name) WHERE removed_act IS NULL;
CREATE INDEX plant_by_site ON plant (site);

-- A day of bloom as it was seen on a plant.
CREATE TABLE bloom (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  plant TEXT NOT NULL REFERENCES plant (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  stage TEXT NOT NULL CHECK (stage IN ('first', 'full', 'last')),
  note TEXT CHECK (note <> '')
);
CREATE INDEX bloom_by_plant ON bloom (plant, on_date);
CREATE INDEX bloom_in_order ON bloom (owner, removed_act, on_date, created_at, id);

-- Anything else worth keeping.
CREATE TABLE note (
  id TEXT PRIMARY KEY,
  owner TEXT NOT NULL,
  who TEXT NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  added_act TEXT NOT NULL REFERENCES act (id),
  act TEXT NOT NULL REFERENCES act (id),
  removed_act TEXT REFERENCES act (id),
  site TEXT NOT NULL REFERENCES site (id),
  on_date TEXT NOT NULL CHECK (on_date <> ''),
  note TEXT NOT NULL CHECK (note <> '')
);
CREATE INDEX note_by_site ON note (site, on_date);
CREATE INDEX note_in_order ON note (owner, removed_act, on_date, created_at, id);

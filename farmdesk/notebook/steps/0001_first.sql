CREATE TABLE block (
  code TEXT NOT NULL,
  name TEXT NOT NULL,
  area_ha REAL NOT NULL,
  low_m REAL NOT NULL,
  high_m REAL NOT NULL,
  variety TEXT NOT NULL,
  trees_n INTEGER NOT NULL,
  planted INTEGER,
  shade TEXT NOT NULL,
  organic TEXT NOT NULL,
  name_local TEXT NOT NULL,
  CONSTRAINT pk_block PRIMARY KEY (code)
) STRICT;

CREATE TABLE buyer (
  code TEXT NOT NULL,
  kind TEXT NOT NULL,
  CONSTRAINT pk_buyer PRIMARY KEY (code)
) STRICT;

CREATE TABLE entry (
  seq INTEGER NOT NULL PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL,
  kind TEXT NOT NULL,
  happened_utc_s INTEGER NOT NULL,
  written_utc_s INTEGER NOT NULL,
  who TEXT NOT NULL,
  instrument TEXT NOT NULL,
  mark TEXT NOT NULL,
  note TEXT NOT NULL,
  replaces TEXT NOT NULL,
  batch TEXT NOT NULL,
  computer TEXT NOT NULL,
  prev_hash TEXT NOT NULL,
  hash TEXT NOT NULL,
  CONSTRAINT uq_entry_id UNIQUE (id),
  CONSTRAINT ck_entry_id_not_empty CHECK (id <> ''),
  CONSTRAINT ck_entry_happened_utc_s_an_instant CHECK (happened_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT ck_entry_written_utc_s_an_instant CHECK (written_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT ck_entry_mark_known CHECK (mark IN ('measured', 'logger', 'computed', 'estimated', 'corrected'))
) STRICT;

CREATE TABLE farm (
  id INTEGER NOT NULL,
  name TEXT NOT NULL,
  season TEXT NOT NULL,
  zone TEXT NOT NULL,
  practice INTEGER NOT NULL,
  first_day TEXT NOT NULL,
  last_day TEXT NOT NULL,
  altitude_m REAL NOT NULL,
  language TEXT NOT NULL,
  day_starts_h INTEGER NOT NULL,
  yard_width_m REAL NOT NULL,
  yard_depth_m REAL NOT NULL,
  CONSTRAINT pk_farm PRIMARY KEY (id),
  CONSTRAINT ck_farm_one_row CHECK (id = 1),
  CONSTRAINT ck_farm_practice_yes_or_no CHECK (practice IN (0, 1))
) STRICT;

CREATE TABLE instrument (
  code TEXT NOT NULL,
  kind TEXT NOT NULL,
  quantity TEXT NOT NULL,
  sd REAL NOT NULL,
  step REAL NOT NULL,
  check_every_d INTEGER NOT NULL,
  clock_shift_s INTEGER NOT NULL,
  CONSTRAINT pk_instrument PRIMARY KEY (code)
) STRICT;

CREATE TABLE landmark (
  code TEXT NOT NULL,
  kind TEXT NOT NULL,
  x_m REAL NOT NULL,
  y_m REAL NOT NULL,
  width_m REAL NOT NULL,
  depth_m REAL NOT NULL,
  CONSTRAINT pk_landmark PRIMARY KEY (code)
) STRICT;

CREATE TABLE method (
  letter TEXT NOT NULL,
  version INTEGER NOT NULL,
  name TEXT NOT NULL,
  whole INTEGER NOT NULL,
  sealed INTEGER NOT NULL,
  hours_low_h REAL,
  hours_high_h REAL,
  ph_low REAL,
  ph_high REAL,
  ends_by TEXT NOT NULL,
  ph_target REAL,
  mass_max_c REAL,
  yeast_g_kg REAL,
  rinses_n INTEGER,
  loading_kg_m2 REAL NOT NULL,
  dry_days_max_d INTEGER NOT NULL,
  start_wb_frac REAL NOT NULL,
  start_wb_sd_frac REAL NOT NULL,
  store_low_wb_frac REAL NOT NULL,
  store_high_wb_frac REAL NOT NULL,
  rest_days_d INTEGER NOT NULL,
  CONSTRAINT pk_method PRIMARY KEY (letter, version),
  CONSTRAINT ck_method_whole_yes_or_no CHECK (whole IN (0, 1)),
  CONSTRAINT ck_method_sealed_yes_or_no CHECK (sealed IN (0, 1))
) STRICT;

CREATE TABLE origin (
  id INTEGER NOT NULL,
  file_id TEXT NOT NULL,
  made_utc_s INTEGER NOT NULL,
  CONSTRAINT pk_origin PRIMARY KEY (id),
  CONSTRAINT ck_origin_one_row CHECK (id = 1)
) STRICT;

CREATE TABLE person (
  code TEXT NOT NULL,
  role TEXT NOT NULL,
  pay TEXT NOT NULL,
  CONSTRAINT pk_person PRIMARY KEY (code)
) STRICT;

CREATE TABLE place (
  code TEXT NOT NULL,
  kind TEXT NOT NULL,
  x_m REAL NOT NULL,
  y_m REAL NOT NULL,
  width_m REAL NOT NULL,
  depth_m REAL NOT NULL,
  cover TEXT NOT NULL,
  cover_min REAL NOT NULL,
  CONSTRAINT pk_place PRIMARY KEY (code)
) STRICT;

CREATE TABLE setting (
  name TEXT NOT NULL,
  value TEXT NOT NULL,
  CONSTRAINT pk_setting PRIMARY KEY (name)
) STRICT;

CREATE TABLE tray (
  code TEXT NOT NULL,
  tare_g INTEGER NOT NULL,
  CONSTRAINT pk_tray PRIMARY KEY (code)
) STRICT;

CREATE TABLE vessel (
  code TEXT NOT NULL,
  kind TEXT NOT NULL,
  gross_l REAL NOT NULL,
  usable_l REAL NOT NULL,
  sealed INTEGER NOT NULL,
  CONSTRAINT pk_vessel PRIMARY KEY (code),
  CONSTRAINT ck_vessel_sealed_yes_or_no CHECK (sealed IN (0, 1))
) STRICT;

CREATE TABLE advance (
  entry INTEGER NOT NULL,
  picker TEXT NOT NULL,
  amount_cents INTEGER NOT NULL,
  text TEXT NOT NULL,
  CONSTRAINT pk_advance PRIMARY KEY (entry),
  CONSTRAINT fk_advance_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE birth (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  method TEXT NOT NULL,
  method_version INTEGER NOT NULL,
  alias TEXT NOT NULL,
  CONSTRAINT pk_birth PRIMARY KEY (entry),
  CONSTRAINT fk_birth_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE "check" (
  entry INTEGER NOT NULL,
  instrument TEXT NOT NULL,
  passed INTEGER NOT NULL,
  off REAL,
  text TEXT NOT NULL,
  CONSTRAINT pk_check PRIMARY KEY (entry),
  CONSTRAINT ck_check_passed_yes_or_no CHECK (passed IN (0, 1)),
  CONSTRAINT fk_check_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE correction (
  entry INTEGER NOT NULL,
  instrument TEXT NOT NULL,
  quantity TEXT NOT NULL,
  "add" REAL NOT NULL,
  from_utc_s INTEGER NOT NULL,
  until_utc_s INTEGER,
  CONSTRAINT pk_correction PRIMARY KEY (entry),
  CONSTRAINT ck_correction_from_utc_s_an_instant CHECK (from_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT ck_correction_until_utc_s_an_instant CHECK (until_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT fk_correction_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE cover (
  entry INTEGER NOT NULL,
  "on" INTEGER NOT NULL,
  text TEXT NOT NULL,
  CONSTRAINT pk_cover PRIMARY KEY (entry),
  CONSTRAINT ck_cover_on_yes_or_no CHECK ("on" IN (0, 1)),
  CONSTRAINT fk_cover_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE crop_count (
  entry INTEGER NOT NULL,
  block TEXT NOT NULL,
  trees_n INTEGER NOT NULL,
  mean_kg REAL NOT NULL,
  sd_kg REAL NOT NULL,
  loss_frac REAL NOT NULL,
  flowered TEXT NOT NULL,
  CONSTRAINT pk_crop_count PRIMARY KEY (entry),
  CONSTRAINT fk_crop_count_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE cup (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  score REAL NOT NULL,
  sittings_n INTEGER NOT NULL,
  words TEXT NOT NULL,
  CONSTRAINT pk_cup PRIMARY KEY (entry),
  CONSTRAINT fk_cup_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE day_work (
  entry INTEGER NOT NULL,
  picker TEXT NOT NULL,
  day TEXT NOT NULL,
  share_frac REAL NOT NULL,
  amount_cents INTEGER NOT NULL,
  task TEXT NOT NULL,
  CONSTRAINT pk_day_work PRIMARY KEY (entry),
  CONSTRAINT fk_day_work_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE defects (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  standard TEXT NOT NULL,
  sample_g INTEGER NOT NULL,
  full_n REAL,
  CONSTRAINT pk_defects PRIMARY KEY (entry),
  CONSTRAINT fk_defects_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE flow (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  act TEXT NOT NULL,
  CONSTRAINT pk_flow PRIMARY KEY (entry),
  CONSTRAINT fk_flow_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE hold (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  buyer TEXT NOT NULL,
  grams INTEGER NOT NULL,
  price_usd_kg REAL,
  until_utc_s INTEGER NOT NULL,
  CONSTRAINT pk_hold PRIMARY KEY (entry),
  CONSTRAINT ck_hold_until_utc_s_an_instant CHECK (until_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT fk_hold_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE hull_test (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  in_g REAL NOT NULL,
  green_g REAL NOT NULL,
  husk_g REAL NOT NULL,
  CONSTRAINT pk_hull_test PRIMARY KEY (entry),
  CONSTRAINT fk_hull_test_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE line (
  entry INTEGER NOT NULL,
  field TEXT NOT NULL,
  line INTEGER NOT NULL,
  name TEXT NOT NULL,
  value REAL NOT NULL,
  typed TEXT NOT NULL,
  CONSTRAINT pk_line PRIMARY KEY (entry, field, line),
  CONSTRAINT fk_line_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) WITHOUT ROWID, STRICT;

CREATE TABLE logger_file (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  logger TEXT NOT NULL,
  quantity TEXT NOT NULL,
  file_name TEXT NOT NULL,
  sha256 TEXT NOT NULL,
  rows_n INTEGER NOT NULL,
  first_utc_s INTEGER NOT NULL,
  last_utc_s INTEGER NOT NULL,
  clock_shift_s INTEGER NOT NULL,
  CONSTRAINT pk_logger_file PRIMARY KEY (entry),
  CONSTRAINT ck_logger_file_first_utc_s_an_instant CHECK (first_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT ck_logger_file_last_utc_s_an_instant CHECK (last_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT fk_logger_file_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE logger_row (
  entry_seq INTEGER NOT NULL,
  at_utc_s INTEGER NOT NULL,
  value REAL NOT NULL,
  CONSTRAINT pk_logger_row PRIMARY KEY (entry_seq, at_utc_s),
  CONSTRAINT fk_logger_row_entry_seq FOREIGN KEY(entry_seq) REFERENCES entry (seq)
) WITHOUT ROWID, STRICT;

CREATE TABLE outlook (
  entry INTEGER NOT NULL,
  day TEXT NOT NULL,
  words TEXT NOT NULL,
  CONSTRAINT pk_outlook PRIMARY KEY (entry),
  CONSTRAINT fk_outlook_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE paper_given (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  paper TEXT NOT NULL,
  version_n INTEGER NOT NULL,
  buyer TEXT NOT NULL,
  CONSTRAINT pk_paper_given PRIMARY KEY (entry),
  CONSTRAINT fk_paper_given_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE parcel (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  buyer TEXT NOT NULL,
  grams INTEGER NOT NULL,
  sample_kind TEXT NOT NULL,
  due_utc_s INTEGER,
  instead_of TEXT NOT NULL,
  CONSTRAINT pk_parcel PRIMARY KEY (entry),
  CONSTRAINT ck_parcel_due_utc_s_an_instant CHECK (due_utc_s BETWEEN 0 AND 253402214400),
  CONSTRAINT fk_parcel_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE parcel_news (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  parcel TEXT NOT NULL,
  news TEXT NOT NULL,
  text TEXT NOT NULL,
  CONSTRAINT pk_parcel_news PRIMARY KEY (entry),
  CONSTRAINT fk_parcel_news_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE pay_sheet (
  entry INTEGER NOT NULL,
  first_day TEXT NOT NULL,
  last_day TEXT NOT NULL,
  CONSTRAINT pk_pay_sheet PRIMARY KEY (entry),
  CONSTRAINT fk_pay_sheet_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE "plan" (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  method TEXT NOT NULL,
  block TEXT NOT NULL,
  day TEXT NOT NULL,
  grams INTEGER NOT NULL,
  CONSTRAINT pk_plan PRIMARY KEY (entry),
  CONSTRAINT fk_plan_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE platform (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  grams INTEGER NOT NULL,
  typed TEXT NOT NULL,
  CONSTRAINT pk_platform PRIMARY KEY (entry),
  CONSTRAINT fk_platform_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE posting (
  entry INTEGER NOT NULL,
  line INTEGER NOT NULL,
  lot TEXT NOT NULL,
  account TEXT NOT NULL,
  grams INTEGER NOT NULL,
  way INTEGER NOT NULL,
  typed TEXT NOT NULL,
  CONSTRAINT pk_posting PRIMARY KEY (entry, line),
  CONSTRAINT ck_posting_heap_named CHECK (lot <> '' AND account <> ''),
  CONSTRAINT ck_posting_way_known CHECK (way IN (0, 1, 2)),
  CONSTRAINT fk_posting_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) WITHOUT ROWID, STRICT;

CREATE TABLE reading (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  quantity TEXT NOT NULL,
  tray TEXT NOT NULL,
  product TEXT NOT NULL,
  bean_c REAL,
  CONSTRAINT pk_reading PRIMARY KEY (entry),
  CONSTRAINT fk_reading_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE remark (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  about TEXT NOT NULL,
  text TEXT NOT NULL,
  CONSTRAINT pk_remark PRIMARY KEY (entry),
  CONSTRAINT fk_remark_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE rinse (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  times_n INTEGER NOT NULL,
  litres_l REAL,
  CONSTRAINT pk_rinse PRIMARY KEY (entry),
  CONSTRAINT fk_rinse_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE ripe_look (
  entry INTEGER NOT NULL,
  block TEXT NOT NULL,
  ripe_n INTEGER NOT NULL,
  looked_n INTEGER NOT NULL,
  CONSTRAINT pk_ripe_look PRIMARY KEY (entry),
  CONSTRAINT fk_ripe_look_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE ripeness (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  block TEXT NOT NULL,
  half_day TEXT NOT NULL,
  green INTEGER NOT NULL,
  turning INTEGER NOT NULL,
  ripe INTEGER NOT NULL,
  over_ripe INTEGER NOT NULL,
  dried INTEGER NOT NULL,
  bored INTEGER NOT NULL,
  CONSTRAINT pk_ripeness PRIMARY KEY (entry),
  CONSTRAINT fk_ripeness_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE round (
  entry INTEGER NOT NULL,
  block TEXT NOT NULL,
  day TEXT NOT NULL,
  grams INTEGER NOT NULL,
  pinned INTEGER NOT NULL,
  CONSTRAINT pk_round PRIMARY KEY (entry),
  CONSTRAINT ck_round_pinned_yes_or_no CHECK (pinned IN (0, 1)),
  CONSTRAINT fk_round_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE sale (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  buyer TEXT NOT NULL,
  grams INTEGER NOT NULL,
  price_usd_kg REAL,
  approved INTEGER NOT NULL,
  account TEXT NOT NULL,
  CONSTRAINT pk_sale PRIMARY KEY (entry),
  CONSTRAINT ck_sale_approved_yes_or_no CHECK (approved IN (0, 1)),
  CONSTRAINT ck_sale_account_named CHECK (account != ''),
  CONSTRAINT fk_sale_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE screens (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  CONSTRAINT pk_screens PRIMARY KEY (entry),
  CONSTRAINT fk_screens_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE shelved (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  bags_n INTEGER NOT NULL,
  pallet TEXT NOT NULL,
  layer TEXT NOT NULL,
  CONSTRAINT pk_shelved PRIMARY KEY (entry),
  CONSTRAINT fk_shelved_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE skipped (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  quantity TEXT NOT NULL,
  day TEXT NOT NULL,
  CONSTRAINT pk_skipped PRIMARY KEY (entry),
  CONSTRAINT fk_skipped_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE strike (
  entry INTEGER NOT NULL,
  target TEXT NOT NULL,
  reason TEXT NOT NULL,
  CONSTRAINT pk_strike PRIMARY KEY (entry),
  CONSTRAINT fk_strike_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE vessel_step (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  step TEXT NOT NULL,
  text TEXT NOT NULL,
  CONSTRAINT pk_vessel_step PRIMARY KEY (entry),
  CONSTRAINT fk_vessel_step_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE weather (
  entry INTEGER NOT NULL,
  day TEXT NOT NULL,
  min_c REAL NOT NULL,
  max_c REAL NOT NULL,
  rh_frac REAL NOT NULL,
  rain_mm REAL NOT NULL,
  good_h REAL NOT NULL,
  CONSTRAINT pk_weather PRIMARY KEY (entry),
  CONSTRAINT fk_weather_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE weigh_in (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  block TEXT NOT NULL,
  picker TEXT NOT NULL,
  half_day TEXT NOT NULL,
  gross_g INTEGER NOT NULL,
  tare_g INTEGER NOT NULL,
  typed TEXT NOT NULL,
  CONSTRAINT pk_weigh_in PRIMARY KEY (entry),
  CONSTRAINT fk_weigh_in_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TABLE word (
  entry INTEGER NOT NULL,
  field TEXT NOT NULL,
  line INTEGER NOT NULL,
  text TEXT NOT NULL,
  CONSTRAINT pk_word PRIMARY KEY (entry, field, line),
  CONSTRAINT fk_word_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) WITHOUT ROWID, STRICT;

CREATE TABLE yeast (
  entry INTEGER NOT NULL,
  lot TEXT NOT NULL,
  place TEXT NOT NULL,
  yeast_g INTEGER NOT NULL,
  water_ml INTEGER,
  water_c REAL,
  product TEXT NOT NULL,
  CONSTRAINT pk_yeast PRIMARY KEY (entry),
  CONSTRAINT fk_yeast_entry FOREIGN KEY(entry) REFERENCES entry (seq)
) STRICT;

CREATE TRIGGER origin_no_update BEFORE UPDATE ON origin
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER origin_no_delete BEFORE DELETE ON origin
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER origin_no_replace BEFORE INSERT ON origin
WHEN EXISTS (SELECT 1 FROM origin WHERE id = NEW.id)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER entry_no_update BEFORE UPDATE ON entry
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER entry_no_delete BEFORE DELETE ON entry
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER entry_no_replace BEFORE INSERT ON entry
WHEN EXISTS (SELECT 1 FROM entry WHERE seq = NEW.seq OR id = NEW.id)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER birth_no_update BEFORE UPDATE ON birth
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER birth_no_delete BEFORE DELETE ON birth
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER birth_no_replace BEFORE INSERT ON birth
WHEN EXISTS (SELECT 1 FROM birth WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER weigh_in_no_update BEFORE UPDATE ON weigh_in
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER weigh_in_no_delete BEFORE DELETE ON weigh_in
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER weigh_in_no_replace BEFORE INSERT ON weigh_in
WHEN EXISTS (SELECT 1 FROM weigh_in WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER platform_no_update BEFORE UPDATE ON platform
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER platform_no_delete BEFORE DELETE ON platform
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER platform_no_replace BEFORE INSERT ON platform
WHEN EXISTS (SELECT 1 FROM platform WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER ripeness_no_update BEFORE UPDATE ON ripeness
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER ripeness_no_delete BEFORE DELETE ON ripeness
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER ripeness_no_replace BEFORE INSERT ON ripeness
WHEN EXISTS (SELECT 1 FROM ripeness WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER flow_no_update BEFORE UPDATE ON flow
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER flow_no_delete BEFORE DELETE ON flow
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER flow_no_replace BEFORE INSERT ON flow
WHEN EXISTS (SELECT 1 FROM flow WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER vessel_step_no_update BEFORE UPDATE ON vessel_step
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER vessel_step_no_delete BEFORE DELETE ON vessel_step
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER vessel_step_no_replace BEFORE INSERT ON vessel_step
WHEN EXISTS (SELECT 1 FROM vessel_step WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER yeast_no_update BEFORE UPDATE ON yeast
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER yeast_no_delete BEFORE DELETE ON yeast
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER yeast_no_replace BEFORE INSERT ON yeast
WHEN EXISTS (SELECT 1 FROM yeast WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER rinse_no_update BEFORE UPDATE ON rinse
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER rinse_no_delete BEFORE DELETE ON rinse
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER rinse_no_replace BEFORE INSERT ON rinse
WHEN EXISTS (SELECT 1 FROM rinse WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER reading_no_update BEFORE UPDATE ON reading
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER reading_no_delete BEFORE DELETE ON reading
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER reading_no_replace BEFORE INSERT ON reading
WHEN EXISTS (SELECT 1 FROM reading WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER logger_file_no_update BEFORE UPDATE ON logger_file
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER logger_file_no_delete BEFORE DELETE ON logger_file
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER logger_file_no_replace BEFORE INSERT ON logger_file
WHEN EXISTS (SELECT 1 FROM logger_file WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER cover_no_update BEFORE UPDATE ON cover
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER cover_no_delete BEFORE DELETE ON cover
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER cover_no_replace BEFORE INSERT ON cover
WHEN EXISTS (SELECT 1 FROM cover WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER weather_no_update BEFORE UPDATE ON weather
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER weather_no_delete BEFORE DELETE ON weather
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER weather_no_replace BEFORE INSERT ON weather
WHEN EXISTS (SELECT 1 FROM weather WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER outlook_no_update BEFORE UPDATE ON outlook
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER outlook_no_delete BEFORE DELETE ON outlook
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER outlook_no_replace BEFORE INSERT ON outlook
WHEN EXISTS (SELECT 1 FROM outlook WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER shelved_no_update BEFORE UPDATE ON shelved
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER shelved_no_delete BEFORE DELETE ON shelved
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER shelved_no_replace BEFORE INSERT ON shelved
WHEN EXISTS (SELECT 1 FROM shelved WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER hull_test_no_update BEFORE UPDATE ON hull_test
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER hull_test_no_delete BEFORE DELETE ON hull_test
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER hull_test_no_replace BEFORE INSERT ON hull_test
WHEN EXISTS (SELECT 1 FROM hull_test WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER screens_no_update BEFORE UPDATE ON screens
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER screens_no_delete BEFORE DELETE ON screens
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER screens_no_replace BEFORE INSERT ON screens
WHEN EXISTS (SELECT 1 FROM screens WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER defects_no_update BEFORE UPDATE ON defects
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER defects_no_delete BEFORE DELETE ON defects
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER defects_no_replace BEFORE INSERT ON defects
WHEN EXISTS (SELECT 1 FROM defects WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER cup_no_update BEFORE UPDATE ON cup
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER cup_no_delete BEFORE DELETE ON cup
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER cup_no_replace BEFORE INSERT ON cup
WHEN EXISTS (SELECT 1 FROM cup WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER check_no_update BEFORE UPDATE ON "check"
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER check_no_delete BEFORE DELETE ON "check"
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER check_no_replace BEFORE INSERT ON "check"
WHEN EXISTS (SELECT 1 FROM "check" WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER correction_no_update BEFORE UPDATE ON correction
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER correction_no_delete BEFORE DELETE ON correction
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER correction_no_replace BEFORE INSERT ON correction
WHEN EXISTS (SELECT 1 FROM correction WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER parcel_no_update BEFORE UPDATE ON parcel
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER parcel_no_delete BEFORE DELETE ON parcel
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER parcel_no_replace BEFORE INSERT ON parcel
WHEN EXISTS (SELECT 1 FROM parcel WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER parcel_news_no_update BEFORE UPDATE ON parcel_news
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER parcel_news_no_delete BEFORE DELETE ON parcel_news
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER parcel_news_no_replace BEFORE INSERT ON parcel_news
WHEN EXISTS (SELECT 1 FROM parcel_news WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER hold_no_update BEFORE UPDATE ON hold
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER hold_no_delete BEFORE DELETE ON hold
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER hold_no_replace BEFORE INSERT ON hold
WHEN EXISTS (SELECT 1 FROM hold WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER sale_no_update BEFORE UPDATE ON sale
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER sale_no_delete BEFORE DELETE ON sale
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER sale_no_replace BEFORE INSERT ON sale
WHEN EXISTS (SELECT 1 FROM sale WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER remark_no_update BEFORE UPDATE ON remark
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER remark_no_delete BEFORE DELETE ON remark
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER remark_no_replace BEFORE INSERT ON remark
WHEN EXISTS (SELECT 1 FROM remark WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER plan_no_update BEFORE UPDATE ON "plan"
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER plan_no_delete BEFORE DELETE ON "plan"
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER plan_no_replace BEFORE INSERT ON "plan"
WHEN EXISTS (SELECT 1 FROM "plan" WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER skipped_no_update BEFORE UPDATE ON skipped
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER skipped_no_delete BEFORE DELETE ON skipped
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER skipped_no_replace BEFORE INSERT ON skipped
WHEN EXISTS (SELECT 1 FROM skipped WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER paper_given_no_update BEFORE UPDATE ON paper_given
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER paper_given_no_delete BEFORE DELETE ON paper_given
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER paper_given_no_replace BEFORE INSERT ON paper_given
WHEN EXISTS (SELECT 1 FROM paper_given WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER crop_count_no_update BEFORE UPDATE ON crop_count
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER crop_count_no_delete BEFORE DELETE ON crop_count
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER crop_count_no_replace BEFORE INSERT ON crop_count
WHEN EXISTS (SELECT 1 FROM crop_count WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER ripe_look_no_update BEFORE UPDATE ON ripe_look
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER ripe_look_no_delete BEFORE DELETE ON ripe_look
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER ripe_look_no_replace BEFORE INSERT ON ripe_look
WHEN EXISTS (SELECT 1 FROM ripe_look WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER round_no_update BEFORE UPDATE ON round
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER round_no_delete BEFORE DELETE ON round
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER round_no_replace BEFORE INSERT ON round
WHEN EXISTS (SELECT 1 FROM round WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER advance_no_update BEFORE UPDATE ON advance
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER advance_no_delete BEFORE DELETE ON advance
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER advance_no_replace BEFORE INSERT ON advance
WHEN EXISTS (SELECT 1 FROM advance WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER day_work_no_update BEFORE UPDATE ON day_work
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER day_work_no_delete BEFORE DELETE ON day_work
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER day_work_no_replace BEFORE INSERT ON day_work
WHEN EXISTS (SELECT 1 FROM day_work WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER pay_sheet_no_update BEFORE UPDATE ON pay_sheet
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER pay_sheet_no_delete BEFORE DELETE ON pay_sheet
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER pay_sheet_no_replace BEFORE INSERT ON pay_sheet
WHEN EXISTS (SELECT 1 FROM pay_sheet WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER strike_no_update BEFORE UPDATE ON strike
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER strike_no_delete BEFORE DELETE ON strike
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER strike_no_replace BEFORE INSERT ON strike
WHEN EXISTS (SELECT 1 FROM strike WHERE entry = NEW.entry)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER posting_no_update BEFORE UPDATE ON posting
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER posting_no_delete BEFORE DELETE ON posting
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER posting_no_replace BEFORE INSERT ON posting
WHEN EXISTS (SELECT 1 FROM posting WHERE entry = NEW.entry AND line = NEW.line)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER line_no_update BEFORE UPDATE ON line
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER line_no_delete BEFORE DELETE ON line
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER line_no_replace BEFORE INSERT ON line
WHEN EXISTS (SELECT 1 FROM line WHERE entry = NEW.entry AND field = NEW.field AND line = NEW.line)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER word_no_update BEFORE UPDATE ON word
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER word_no_delete BEFORE DELETE ON word
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER word_no_replace BEFORE INSERT ON word
WHEN EXISTS (SELECT 1 FROM word WHERE entry = NEW.entry AND field = NEW.field AND line = NEW.line)
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER logger_row_no_update BEFORE UPDATE ON logger_row
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER logger_row_no_delete BEFORE DELETE ON logger_row
BEGIN
  SELECT RAISE(ABORT, 'What happened stays written: strike it with a new entry instead of changing it.');
END;

CREATE TRIGGER method_no_update BEFORE UPDATE ON method
BEGIN
  SELECT RAISE(ABORT, 'A method''s version stays as it is: make a new version instead.');
END;

CREATE TRIGGER method_no_delete BEFORE DELETE ON method
BEGIN
  SELECT RAISE(ABORT, 'A method''s version stays as it is: make a new version instead.');
END;

CREATE TRIGGER method_no_replace BEFORE INSERT ON method
WHEN EXISTS (SELECT 1 FROM method WHERE letter = NEW.letter AND version = NEW.version)
BEGIN
  SELECT RAISE(ABORT, 'A method''s version stays as it is: make a new version instead.');
END;

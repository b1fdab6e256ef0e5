#!/usr/bin/env python3
"""Writes the invented account of the demo: three years of three invented gardens, as CSV tables of the records.

Everything here is made up, with a fixed seed; only the weather table the sites point to is real. Run it from the
repository's root; the tables go to app/src/main/resources/demo/records.
"""
import csv
import datetime as dt
import os
import random

OUT = "app/src/main/resources/demo/records"
R = random.Random(20130401)
MASON, LEAF = "Osmia lignaria", "Megachile rotundata"
TANSY, BRAMBLE, NINE = "Tansy Lane orchard", "Bramble End", "Number Nine"
tables = {}


def row(table, **cells):
    tables.setdefault(table, []).append(cells)


def day(year, month, date, after=0):
    return (dt.date(year, month, date) + dt.timedelta(days=after)).isoformat()


for name, lat, lon, note in [
    (TANSY, 40.780, -73.970, "Invented: a community orchard. The weather is real."),
    (BRAMBLE, 40.790, -73.960, "Invented: a neighbour's garden, two streets away."),
    (NINE, 40.770, -73.980, "Invented: a neighbour's yard with a wall that faces east."),
]:
    row("site", name=name, latitude_deg=lat, longitude_deg=lon, elevation_m=40, zone="America/New_York",
        region="eastern-north-america", weather_file="weather/tansy-lane-weather.csv", note=note)
for site, points in {TANSY: [(60, 12), (120, 5), (200, 20)], BRAMBLE: [(80, 18), (150, 9)], NINE: [(95, 4), (180, 25)]}.items():
    for azimuth, height in points:
        row("horizon", site=site, azimuth_deg=azimuth, height_deg=height)

HOUSES = {TANSY: [("Pear tree", 135), ("Shed wall", 120)], BRAMBLE: [("Fence", 150)], NINE: [("Yard wall", 95)]}
for site, houses in HOUSES.items():
    for name, faces in houses:
        row("house", site=site, name=name, faces_deg=faces, height_cm=170, roof_out_cm=12, roof_above_cm=18,
            fixed="yes", guard="yes", put_up_on="2013-03-02")
        full = f"{site} / {name}"
        row("nest", house=full, name="Tubes", kind="tube", material="paper in card", openable="yes", hole_width_mm=8,
            length_mm=150, tunnels=60, first_year=2013)
        row("nest", house=full, name="Tray", kind="tray", material="poplar", openable="yes", hole_width_mm=8,
            length_mm=150, tunnels=24, first_year=2014)
row("nest", house=f"{TANSY} / Shed wall", name="Narrow tubes", kind="tube", material="paper in card", openable="yes",
    hole_width_mm=6, length_mm=100, tunnels=60, first_year=2013)

PLANTS = {TANSY: [("apple", 90, 20, "yes"), ("dandelion", 60, 40, "no"), ("white clover", 120, 30, "no"), ("alfalfa", 200, 80, "no")],
          BRAMBLE: [("pear", 30, 10, "yes"), ("bramble", 25, 30, "no")],
          NINE: [("cherry", 24, 15, "yes"), ("white clover", 60, 50, "no")]}
for site, plants in PLANTS.items():
    for name, cover, far, target in plants:
        row("plant", site=site, name=name, cover_m2=cover, distance_m=far, target=target)
# Later in the cold springs of these years than in 2012; invented, in step with the real weather.
BLOOM = {("apple", TANSY): {2013: (4, 26), 2014: (5, 1), 2015: (4, 30)},
         ("pear", BRAMBLE): {2013: (4, 20), 2014: (4, 25), 2015: (4, 24)},
         ("cherry", NINE): {2013: (4, 21), 2014: (4, 24), 2015: (4, 25)}}
for (plant, site), years in BLOOM.items():
    for year, (month, date) in years.items():
        full = f"{site} / {plant}"
        row("bloom", plant=full, on_date=day(year, month, date), stage="first")
        row("bloom", plant=full, on_date=day(year, month, date, 5), stage="full")
        row("bloom", plant=full, on_date=day(year, month, date, 14), stage="last")

CAUSES = ["chalkbrood", "mites", "wasps", "pollen_balls", "dead_young", "dead_adults"]
SHARES = {TANSY: [0.02, 0.03, 0.03, 0.05, 0.05, 0.02], BRAMBLE: [0.01, 0.06, 0.02, 0.06, 0.05, 0.02],
          NINE: [0.09, 0.02, 0.05, 0.05, 0.06, 0.02]}
RELEASED = {2013: (4, 16), 2014: (4, 20), 2015: (4, 17)}
START = {TANSY: (40, 66), BRAMBLE: (20, 34), NINE: (15, 24)}
made = {}


def batch(site, species, year, came, females, males, **more):
    name = f"{site} {year} " + ("mason" if species == MASON else "leafcutter")
    row("batch", site=site, name=name, species=species, year=year, origin="local", came_by=came,
        cocoons=females + males, females=females, males=males, **more)
    return name


def open_nests(site, species, year, tunnels, month, date):
    opened = day(year, month, date)
    row("opening", site=site, species=species, on_date=opened, year=year,
        note="Outdoors, with a dust mask. Invented.")
    full = f"{site} / {opened} {species}"
    houses = HOUSES[site] if species == MASON else [("Shed wall", 120)]
    alive = lost = 0
    for number in range(tunnels):
        house = f"{site} / {houses[number % len(houses)][0]}"
        nest = house + (" / Tubes" if species == MASON else " / Narrow tubes")
        cells = R.randint(3, 8)
        found = {"alive": cells}
        ill = R.random() < 0.45
        for cause, share in zip(CAUSES, SHARES[site]):
            if species == LEAF and cause == "mites":
                continue
            here = sum(1 for _ in range(cells) if ill and R.random() < share * 2)
            here = min(here, found["alive"])
            if here:
                found[cause] = here
                found["alive"] -= here
        for what, count in found.items():
            row("tally", opening=full, house=house, nest=nest, tunnel=f"t{number + 1}", found=what, cells=count)
        alive += found["alive"]
        lost += cells - found["alive"]
    return alive, lost


for site, (females, males) in START.items():
    came = "bought" if site == TANSY else "gift"
    stock = (females, males)
    parent = None
    for year in (2013, 2014, 2015):
        females, males = stock
        name = batch(site, MASON, year, came if year == 2013 else "own nests", females, males, wintered="fridge",
                     cold_from=day(year - 1, 11, 20), cold_c=3)
        if parent:
            row("parent", batch=name, from_batch=parent)
            row("sexing", batch=name, on_date=day(year - 1, 11, 10), method="width", females=females, males=males,
                cannot_tell=R.randint(0, 6))
        else:
            row("transfer", site=site, batch=name, on_date=day(year, 2, 20), direction="in",
                manner="bought" if came == "bought" else "gift", species=MASON, cocoons=females + males,
                females=females, males=males, from_place="the next county (invented)", to_place=site,
                harvest_year=2012, health="no chalkbrood seen", quarantine_until=day(year, 7, 1))
        out = day(year, *RELEASED[year])
        house = f"{site} / {HOUSES[site][0][0]}"
        back = 0 if females < 30 else round(females * 0.25)
        row("release", batch=name, site=site, house=house, on_date=out, females=females - back,
            males=males - round(back * 1.2))
        if back:
            row("hold_back", batch=name, on_date=out, cocoons=back + round(back * 1.2), until_date=day(year, *RELEASED[year], 9))
            row("release", batch=name, site=site, house=house, on_date=day(year, *RELEASED[year], 9), females=back,
                males=round(back * 1.2))
        shut = R.randint(2, 5) + (females + males) // 25
        row("unemerged", batch=name, on_date=day(year, *RELEASED[year], 30), put_out=females + males, left_closed=shut,
            dead_inside=shut - 1, parasites_inside=1)
        first = R.randint(3, 6)
        row("sighting", site=site, species=MASON, on_date=day(year, *RELEASED[year], first), what="first male")
        row("sighting", site=site, species=MASON, on_date=day(year, *RELEASED[year], first + R.randint(3, 6)), what="first female")
        row("sighting", site=site, species=MASON, on_date=day(year, *RELEASED[year], first + R.randint(9, 12)), what="first nesting")
        nesting = max(3, round(females * 0.35))
        tunnels = round(nesting * 1.9)
        left = tunnels
        houses = HOUSES[site]
        for week in range(1, 8):
            for number, (each, _) in enumerate(houses):
                share = [0.02, 0.1, 0.2, 0.25, 0.2, 0.15, 0.08][week - 1]
                more = round(tunnels * share / len(houses))
                left -= more
                row("visit", site=site, house=f"{site} / {each}", species=MASON, on_date=day(year, *RELEASED[year], 7 + 7 * week),
                    more_plugged=more, **({"torch_count": max(1, round(nesting / len(houses) * 0.7))} if week == 3 else {}),
                    mud=R.choice(["wet", "damp", "damp", "dry"]))
        row("sighting", site=site, species=MASON, on_date=day(year, *RELEASED[year], 62), what="last bee")
        alive, lost = open_nests(site, MASON, year, tunnels, 10, 18)
        row("rinse", site=site, batch=name, on_date=day(year, 10, 19), item="cocoon", strength_ppm=0, minutes=10,
            water_c=12, dried="yes", note="Cool water only.")
        parent = name
        daughters = round(alive * 0.39)
        stock = (daughters, alive - daughters)
        if site == TANSY and year == 2014:
            gift = 20
            stock = (stock[0] - gift, stock[1] - 30)
            row("transfer", site=site, on_date=day(year, 11, 22), direction="out", manner="gift", species=MASON,
                cocoons=gift + 30, females=gift, males=30, from_place=site, to_place="a school garden (invented)",
                harvest_year=2014, health="chalkbrood in a few cells", use_by=day(year + 1, 5, 1))
    last = batch(site, MASON, 2016, "own nests", *stock, wintered="fridge", cold_from=day(2015, 11, 21), cold_c=3)
    row("parent", batch=last, from_batch=parent)
    made[site] = last

stock = (60, 110)
parent = None
for year in (2013, 2014, 2015):
    name = batch(TANSY, LEAF, year, "bought" if year == 2013 else "own nests", *stock, wintered="fridge",
                 cold_from=day(year - 1, 11, 1), cold_c=4)
    if parent:
        row("parent", batch=name, from_batch=parent)
    row("release", batch=name, site=TANSY, house=f"{TANSY} / Shed wall", on_date=day(year, 6, 18), cocoons=sum(stock),
        females=stock[0], males=stock[1])
    row("sighting", site=TANSY, species=LEAF, on_date=day(year, 6, 24), what="first male")
    row("sighting", site=TANSY, species=LEAF, on_date=day(year, 6, 28), what="first female")
    tunnels = round(stock[0] * 0.6)
    for week in range(1, 6):
        row("visit", site=TANSY, house=f"{TANSY} / Shed wall", species=LEAF, on_date=day(year, 6, 28, 7 * week),
            more_plugged=round(tunnels * [0.15, 0.3, 0.3, 0.15, 0.1][week - 1]))
    alive, lost = open_nests(TANSY, LEAF, year, tunnels, 10, 25)
    parent = name
    stock = (round(alive * 0.36), alive - round(alive * 0.36))
last = batch(TANSY, LEAF, 2016, "own nests", *stock, wintered="fridge", cold_from=day(2015, 11, 1), cold_c=4)
row("parent", batch=last, from_batch=parent)

for winter in (2012, 2013, 2014):
    for week in range(20):
        date = dt.date(winter, 11, 22) + dt.timedelta(days=7 * week)
        row("reading", site=TANSY, place="fridge", read_at=f"{date.isoformat()}T08:00:00",
            temperature_c=round(3 + R.uniform(-0.9, 0.9), 1), humidity_percent=round(62 + R.uniform(-8, 8)))
for hour in range(24 * 7):
    at = dt.datetime(2015, 4, 20) + dt.timedelta(hours=hour)
    swing = 8 * max(0, 1 - abs(at.hour - 13) / 7)
    row("reading", site=TANSY, place="tunnel", read_at=at.isoformat(), temperature_c=round(9 + swing + R.uniform(-1, 1), 1),
        logger="Pear tree, invented")
for i in range(60):
    female = R.random() < 0.4
    row("measurement", batch=made[TANSY], on_date="2015-11-08",
        weight_mg=round(R.gauss(118, 14) if female else R.gauss(74, 9), 1), width_mm=round(R.gauss(6.9, 0.3) if female else R.gauss(5.9, 0.3), 1))
row("spray", site=TANSY, on_date="2014-05-15", what="fungicide, the orchard across the lane (invented)", told_by="the neighbour",
    note="In the evening, after petal fall.")
row("sighting", site=NINE, species=MASON, on_date="2014-05-20", what="parasitoid wasp", number_seen=4)
row("sighting", site=BRAMBLE, on_date="2013-05-11", what="bird", number_seen=1, note="At the guard; nothing taken.")
row("note", site=TANSY, on_date="2015-06-30", note="The mud tray dried out twice in June. Fill it on Mondays and Thursdays next year.")
row("note", site=NINE, on_date="2014-10-19", note="Chalkbrood in more nests than last year: new tubes for the yard wall.")

os.makedirs(OUT, exist_ok=True)
for name, rows in tables.items():
    header = []
    for cells in rows:
        header += [column for column in cells if column not in header]
    with open(f"{OUT}/{name}.csv", "w", newline="", encoding="utf-8") as file:
        writer = csv.writer(file)
        writer.writerow(header)
        writer.writerows([[cells.get(column, "") for column in header] for cells in rows])

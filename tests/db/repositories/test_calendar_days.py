"""The bookings of some days: in turn, without the cancelled, in as many queries as for one."""

from dataclasses import replace
from datetime import date, timedelta

from sqlalchemy import event

from db.store import Store
from db.unit_of_work import Work
from shared.curing.recipe import Ingredient, Recipe
from shared.cutting.order import Amount, Choice
from shared.shop.lots import Lot
from shared.shop.people import SignedOn
from tests.db.examples import KILL_DAY, line, lot_of_halves, lot_of_one, order_of, settled


def test_what_stands_is_told_and_what_was_cancelled_is_not(work: Work) -> None:
    lot = lot_of_one(work, "Carla Olsen")
    gone = lot_of_one(work, "Dora Lind")
    lot_of_one(work, "Ellen Quist", KILL_DAY + timedelta(1))
    assert isinstance(work.lots.cancel(gone.id, "sick", version=gone.version), Lot)
    (there,) = work.calendar.lots(KILL_DAY, KILL_DAY)
    assert (there.id, there.producer, there.head) == (lot.id, "Carla Olsen", 1)
    assert (there.over, there.unknown_age) == (False, 1)


def test_what_asks_for_an_allergen_comes_after_what_does_not(work: Work) -> None:
    """Wheat in the links of the first, none in the chops of the second; deer last of all."""
    for finish, allergen, known in (("links", "wheat", True), ("bulk", "", True)):
        flour = (Ingredient("flour", None, allergen),)
        recipe = Recipe(0, finish, finish, "", "en", flour, known)
        assert isinstance(work.recipes.save(recipe), Recipe)
    first, second, deer = (lot_of_one(work, species=it) for it in ("pork", "pork", "deer"))
    sausage = Choice(0, 0, "sausage", Amount("rest"), finishes=("links",))
    line(work, order_of(work, first), sausage)
    line(work, order_of(work, second), replace(sausage, finishes=("bulk",)))
    found = work.calendar.lots(KILL_DAY, KILL_DAY)
    assert [(one.id, one.allergens) for one in found] == [
        (second.id, False),
        (first.id, True),
        (deer.id, False),
    ]


def test_a_seasoning_nobody_looked_into_counts_as_an_allergen(work: Work) -> None:
    unknown = Recipe(0, "Old Farm", "old_farm", "", "en", (Ingredient("spice"),), False)
    assert isinstance(work.recipes.save(unknown), Recipe)
    lot = lot_of_one(work)
    ground = Choice(0, 0, "sausage", Amount("rest"), seasoning="Old Farm")
    line(work, order_of(work, lot), ground)
    assert work.calendar.lots(KILL_DAY, KILL_DAY)[0].allergens


def test_the_last_sheet_of_each_lot(work: Work) -> None:
    lot, other = lot_of_halves(work), lot_of_one(work)
    order = settled(work, lot.shares[0].order_id).id
    for pdf in (b"%PDF-1", b"%PDF-2"):
        work.orders.release(lot.id, [order], snapshot="{}", pdf=pdf)
    assert work.calendar.sheets([lot.id, other.id]) == {lot.id: b"%PDF-2"}


def test_a_month_takes_five_queries_in_a_shop_of_40_000_animals(
    store: Store, signed: SignedOn
) -> None:
    with store.work(signed.person, signed.station) as work:
        lot = lot_of_one(work)
        run = work._connection.exec_driver_sql  # pyright: ignore[reportPrivateUsage]
        copied = ", ".join(
            one for one in columns(work, "lots") if one not in ("id", "number", "day")
        )
        run(
            "WITH RECURSIVE n(i) AS (SELECT 2 UNION ALL SELECT i + 1 FROM n WHERE i < 40000) "
            f"INSERT INTO lots (id, number, day, {copied}) "
            f"SELECT i + 1000, i + 1000, date('2020-01-01', (i / 16) || ' days'), {copied} "
            f"FROM n, lots WHERE lots.id = {lot.id}"
        )
        animal = ", ".join(one for one in columns(work, "animals") if one not in ("id", "lot_id"))
        run(
            f"INSERT INTO animals (lot_id, {animal}) SELECT lots.id, one.* FROM lots, "
            f"(SELECT {animal} FROM animals WHERE lot_id = {lot.id}) one WHERE lots.id > 1000"
        )
        work.commit()
    asked: list[str] = []
    with store.read() as work:
        connection = work._connection  # pyright: ignore[reportPrivateUsage]
        event.listen(
            connection,
            "before_cursor_execute",
            lambda _c, _cursor, statement, *_: asked.append(str(statement)),
        )
        start, end = date(2023, 2, 27), date(2023, 4, 2)
        filled, lots = work.calendar.filled(start, end), work.calendar.lots(start, end)
    assert len(asked) == 5
    assert len(lots) == 35 * 16
    assert sum(one.head for one in filled.bookings) == (35 + 14) * 16 * lots[0].head
    assert len(filled.bookings) == 35 + 14


def columns(work: Work, table: str) -> list[str]:
    run = work._connection.exec_driver_sql  # pyright: ignore[reportPrivateUsage]
    return [row.name for row in run(f"PRAGMA table_info({table})")]

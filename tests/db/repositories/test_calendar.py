"""The kill calendar in the store: the week, other days, what is booked, and overruling."""

from dataclasses import replace
from datetime import timedelta

import pytest
from sqlalchemy import event, text
from sqlalchemy.exc import DatabaseError

from db.store import Store
from db.unit_of_work import Work
from shared.cutting.order import Amount, Choice
from shared.shop.calendar import Booking, Full, OtherDay, Plan, minutes_on, why_full
from shared.shop.holdings import half, quarter, split_quarter
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.problems import Refused
from tests.db.examples import KILL_DAY, booked, customer, line, lot_of_halves, order_of

PLAN = Plan(
    {KILL_DAY.weekday(): {"pork": 2}}, hooks=40, hang={"beef": 21}, minutes_a_side={"pork": 25}
)


def test_the_last_week_saved_is_the_one_that_counts(work: Work) -> None:
    assert work.calendar.plan() == Plan()
    work.calendar.save_plan(Plan({0: {"beef": 9}}))
    work.calendar.save_plan(PLAN)
    assert work.calendar.plan() == PLAN


def test_block_minutes_are_of_the_lines_or_else_of_the_usual(work: Work) -> None:
    """The usual of a hog is counted by hand in its own test; here steaks at 10, tying at 3.

    Anna's side: chops 10, and a tied roast 3 (roasts aren't entered): 13. Bert hasn't answered:
    the usual has one line of chops and a sliced bacon, 10 + 3 = 13. The hog: 26; a line of
    his own then counts in the usual's place: 13 + 10 = 23.
    """
    work.calendar.save_plan(replace(PLAN, minutes_a_cut={"pork": {"steaks": 10, "finishes": 3}}))
    lot = lot_of_halves(work)
    first = order_of(work, lot, 1)
    line(work, first, Choice(0, 1, "centre_chop", Amount("rest"), note='no "tied" ends'))
    line(work, first, Choice(0, 1, "loin_roast", Amount("pieces", 1), finishes=("tied", "fresh")))
    assert work.calendar.needed_by(lot.id) == 26
    line(work, order_of(work, lot, 2), Choice(0, 2, "rib_chop", Amount("rest")))
    assert work.calendar.needed_by(lot.id) == 23
    there = work.calendar.filled(KILL_DAY, KILL_DAY)
    assert (there.usual, there.counted) == ({"pork": 13}, True)
    assert there.bookings == (Booking(KILL_DAY, "pork", 1, 23),)
    assert minutes_on(there, KILL_DAY + timedelta(1)) == 2 * 25 + 23
    quick = work.calendar.filled(KILL_DAY, KILL_DAY, count_lines=False)
    assert not quick.counted
    work.calendar.save_plan(PLAN)
    assert work.calendar.needed_by(lot.id) is None
    assert work.calendar.filled(KILL_DAY, KILL_DAY).bookings == (Booking(KILL_DAY, "pork", 1),)


def test_who_follows_another_counts_once_and_a_quarter_is_half_a_side(work: Work) -> None:
    """Nobody answered, the usual has one line of chops at 10: side 1, 10; two quarters, 5 + 5.

    Bert's line then counts for side 2, which Cora has cut as he says: 10 + 10 all the same. With
    a second line of his: 10 + 20.
    """
    work.calendar.save_plan(replace(PLAN, minutes_a_cut={"pork": {"steaks": 10}}))
    people = [customer(work, name) for name in ("Anna Berg", "Bert Iversen", "Cora Lind")]
    anna, bert, cora = (one.id for one in people)
    shares = (
        LotShare(1, anna, holdings=half(0, 1)),
        LotShare(2, bert, holdings=quarter(0, 2, "fore")),
        LotShare(3, cora, holdings=quarter(0, 2, "hind"), leader=2),
    )
    lot = booked(work, NewLot("pork", 1, KILL_DAY, anna, shares))
    assert work.calendar.needed_by(lot.id) == 10 + 5 + 5
    for cut, minutes in (("blade_chop", 20), ("rib_chop", 30)):
        line(work, order_of(work, lot, 2), Choice(0, 2, cut, Amount("rest")))
        assert work.calendar.needed_by(lot.id) == minutes


def test_owners_of_one_side_who_each_answer_make_one_sides_work(work: Work) -> None:
    """Steaks at 6, the usual of a hog's side one line of chops: 6.

    Side 1 is Anna's and Bert's by halves, side 2 Cora's half and Dan's, who is cut as she says.
    Nobody answered: 6 + 6. Anna's two lines: 1/2 * 12 + 1/2 * 6 + 6 = 15. Bert's one:
    1/2 * 12 + 1/2 * 6 + 6 = 15. Cora's three hold for the whole side: 9 + 18 = 27, where lines
    counted in full for each owner came to 12 + 6 + 18 = 36.
    """
    work.calendar.save_plan(replace(PLAN, minutes_a_cut={"pork": {"steaks": 6}}))
    people = [customer(work, name) for name in ("Anna Berg", "Bert Iversen", "Cora Lind", "Dan Ek")]
    shares = [
        LotShare(number, one.id, holdings=split_quarter(0, 1 + (number > 2)))
        for number, one in enumerate(people, start=1)
    ]
    shares[3] = replace(shares[3], leader=3)
    lot = booked(work, NewLot("pork", 1, KILL_DAY, people[0].id, tuple(shares)))
    assert work.calendar.needed_by(lot.id) == 12
    for share, cuts, minutes in (
        (1, ("rib_chop", "blade_chop"), 15),
        (2, ("rib_chop",), 15),
        (3, ("rib_chop", "blade_chop", "centre_chop"), 27),
    ):
        for cut in cuts:
            line(work, order_of(work, lot, share), Choice(0, share, cut, Amount("rest")))
        assert work.calendar.needed_by(lot.id) == minutes


def test_half_minutes_are_rounded_up_once_a_day(work: Work) -> None:
    """Steaks at 7: Anna's two lines on half a side, Bert's half of the usual's one, Cora's side.

    1/2 * 14 + 1/2 * 7 + 7 = 17 1/2, so 18; two such hogs 35.
    """
    work.calendar.save_plan(replace(PLAN, minutes_a_cut={"pork": {"steaks": 7}}))
    anna, bert, cora = (customer(work, one) for one in ("Anna Berg", "Bert Iversen", "Cora Lind"))
    shares = (
        LotShare(1, anna.id, holdings=split_quarter(0, 1)),
        LotShare(2, bert.id, holdings=split_quarter(0, 1)),
        LotShare(3, cora.id, holdings=half(0, 2)),
    )
    for _ in range(2):
        lot = booked(work, NewLot("pork", 1, KILL_DAY, anna.id, shares))
        for cut in ("rib_chop", "blade_chop"):
            line(work, order_of(work, lot, 1), Choice(0, 1, cut, Amount("rest")))
        assert work.calendar.needed_by(lot.id) == 18
    (both,) = work.calendar.filled(KILL_DAY, KILL_DAY).bookings
    assert both.cut_minutes == 35


def test_what_is_booked_takes_its_place_and_cancelling_frees_it(work: Work) -> None:
    work.calendar.save_plan(PLAN)
    lot = lot_of_halves(work)
    asked = Booking(KILL_DAY, "pork", 2)
    there = work.calendar.filled(KILL_DAY, KILL_DAY)
    assert there.bookings == (Booking(KILL_DAY, "pork", 1),)
    assert why_full(there, asked) == (Full("places", KILL_DAY, 2, 1, 2),)
    assert work.calendar.filled(KILL_DAY, KILL_DAY, without=lot.id).bookings == ()
    assert isinstance(work.lots.cancel(lot.id, "sick", version=lot.version), Lot)
    assert why_full(work.calendar.filled(KILL_DAY, KILL_DAY), asked) == ()


def test_what_still_hangs_is_told_and_what_left_the_cooler_is_not(work: Work) -> None:
    work.calendar.save_plan(PLAN)
    lot_of_halves(work)
    longest = 21
    for days, count in ((longest, 1), (longest + 1, 0)):
        day = KILL_DAY + timedelta(days)
        assert len(work.calendar.filled(day, day).bookings) == count


def test_another_day_is_set_set_anew_and_dropped(work: Work) -> None:
    closed = OtherDay(KILL_DAY, True, "holiday")
    short = OtherDay(KILL_DAY, False, "short day", {"pork": 1})
    for other in (closed, short):
        work.calendar.set_other(other)
        assert work.calendar.filled(KILL_DAY, KILL_DAY).others == {KILL_DAY: other}
    work.calendar.as_weekday(KILL_DAY)
    assert work.calendar.filled(KILL_DAY, KILL_DAY).others == {}


def test_overruling_needs_a_reason_and_is_kept(work: Work) -> None:
    lot = lot_of_halves(work)
    full = (Full("places", KILL_DAY, 2, 2, 1),)
    assert work.calendar.overrule(lot.id, full, " ") == Refused("reason_missing")
    assert work.calendar.overrule(lot.id, full, "hurt animal") is None
    run = work._connection.execute  # pyright: ignore[reportPrivateUsage]
    kept = run(text("SELECT lot_id, codes, reason, person_id FROM overrules")).all()
    assert [tuple(row) for row in kept] == [(lot.id, "places", "hurt animal", work.person.id)]
    with pytest.raises(DatabaseError, match="locked"):
        run(text("UPDATE overrules SET reason = 'other'"))


def test_a_month_takes_three_queries_however_much_is_booked(store: Store, work: Work) -> None:
    work.calendar.save_plan(PLAN)
    work.calendar.set_other(replace(OtherDay(KILL_DAY, True), note="holiday"))
    for _ in range(20):
        lot_of_halves(work)
    work.commit()
    asked: list[str] = []
    with store.read() as reading:
        connection = reading._connection  # pyright: ignore[reportPrivateUsage]
        event.listen(connection, "before_cursor_execute", lambda *args: asked.append(str(args[2])))
        found = reading.calendar.filled(KILL_DAY, KILL_DAY + timedelta(31))
    assert [one.head for one in found.bookings] == [20]  # a day's bookings of a species together
    assert len(asked) == 3

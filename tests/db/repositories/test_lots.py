"""Booking: shares that add up, owners fixed before the kill, and the question to the planner."""

from datetime import date, timedelta
from fractions import Fraction

import pytest
from sqlalchemy import event

from db.store import Store
from db.unit_of_work import Work
from shared.carcass.carcass import Gone, Holding, Measured, Share, SideWeights
from shared.cutting.order import Settings
from shared.shop.animals import Animal, Weighing
from shared.shop.details import ShopDetails
from shared.shop.holdings import ShareFault, half, quarter, split_quarter, whole
from shared.shop.lots import Lot, LotShare, NewLot
from shared.shop.people import SignedOn
from shared.shop.problems import Refused, StaleEdit
from shared.units import Weight
from tests.db.examples import (
    GROUND,
    HAM,
    KILL_DAY,
    arrived,
    booked,
    customer,
    line,
    lot_of_halves,
    lot_of_one,
    order_of,
    weighed,
)
from tests.store_fixture import Clock


def four_owners(work: Work, head: int = 1, lines: int = 3) -> Lot:
    """Each animal: side 1 as two quarters, side 2 split in two; every owner in every animal."""
    owners = [customer(work, name) for name in ("Ada", "Ben", "Cleo", "Dan")]
    held: list[list[Holding]] = [[], [], [], []]
    for carcass in range(head):
        held[0] += quarter(carcass, 1, "fore")
        held[1] += quarter(carcass, 1, "hind")
        held[2] += split_quarter(carcass, 2)
        held[3] += split_quarter(carcass, 2)
    shares = tuple(
        LotShare(n, owner.id, holdings=tuple(mine))
        for n, (owner, mine) in enumerate(zip(owners, held, strict=True), start=1)
    )
    lot = booked(work, NewLot("beef", head, KILL_DAY, owners[0].id, shares))
    for order in work.orders.of_lot(lot.id):
        for _ in range(lines):
            line(work, order)
    return lot


def test_a_lot_comes_back_as_booked(work: Work) -> None:
    lot = lot_of_halves(work)
    assert work.lots.get(lot.id) == lot
    assert (lot.number, lot.species, lot.head, lot.day) == (1, "pork", 1, KILL_DAY)
    assert lot.booked == Weight(185, "lb")
    assert lot.producer == "Anna Berg"
    assert [(s.number, s.owner, s.holdings, s.deposit_asked) for s in lot.shares] == [
        (1, "Anna Berg", half(0, 1), 5000),
        (2, "Bert Iversen", half(0, 2), 0),
    ]
    assert [one.state for one in lot.animals] == ["booked"]
    assert [(one.share, one.state) for one in work.orders.of_lot(lot.id)] == [
        (1, "open"),
        (2, "open"),
    ]
    assert work.lots.get(99) is None


def test_shares_that_do_not_add_up_are_not_booked(work: Work) -> None:
    anna = customer(work)
    new = NewLot("pork", 1, KILL_DAY, anna.id, (LotShare(1, anna.id, holdings=half(0, 1)),))
    assert work.lots.book(new) == (
        ShareFault("under", 0, 2, "fore", Fraction(0)),
        ShareFault("under", 0, 2, "hind", Fraction(0)),
    )
    assert work.lots.list() == ()


@pytest.mark.parametrize(
    ("head", "species", "producer", "code"),
    [(0, "pork", 1, "no_head"), (1, "", 1, "no_species"), (1, "pork", 0, "no_producer")],
)
def test_what_is_missing_is_said(
    work: Work, head: int, species: str, producer: int, code: str
) -> None:
    assert work.lots.book(NewLot(species, head, KILL_DAY, producer, ())) == Refused(code)


def test_a_share_may_be_named_until_the_kill(work: Work) -> None:
    anna = customer(work)
    shares = (LotShare(1, anna.id, holdings=half(0, 1)), LotShare(2, None, holdings=half(0, 2)))
    lot = booked(work, NewLot("pork", 1, KILL_DAY, anna.id, shares))
    assert lot.shares[1].owner == ""
    assert order_of(work, lot, 2).customer_id is None
    bert = customer(work, "Bert Iversen")
    named = work.lots.name_share(lot.id, 2, bert.id, version=lot.version)
    assert isinstance(named, Lot)
    assert named.shares[1].owner == "Bert Iversen"
    stale = work.lots.name_share(lot.id, 2, anna.id, version=lot.version)
    assert isinstance(stale, StaleEdit)
    weighed(work, arrived(work, lot), "185")
    late = work.lots.name_share(lot.id, 2, anna.id, version=named.version)
    assert late == Refused("already_killed")


def test_an_inspected_lot_may_be_named_after_the_kill(work: Work) -> None:
    anna = customer(work)
    shares = (LotShare(1, None, holdings=whole(0)),)
    lot = booked(work, NewLot("pork", 1, KILL_DAY, anna.id, shares, regime="inspected"))
    weighed(work, arrived(work, lot), "185")
    named = work.lots.name_share(lot.id, 1, anna.id, version=lot.version)
    assert isinstance(named, Lot)


def test_sharing_out_anew(work: Work) -> None:
    lot = lot_of_halves(work)
    cleo = customer(work, "Cleo")
    shares = (
        lot.shares[0],
        LotShare(3, cleo.id, holdings=quarter(0, 2, "fore")),
        LotShare(4, None, holdings=quarter(0, 2, "hind")),
    )
    made = work.lots.set_shares(lot.id, shares, version=lot.version)
    assert isinstance(made, Lot)
    assert [(one.number, one.owner) for one in made.shares] == [
        (1, "Anna Berg"),
        (3, "Cleo"),
        (4, ""),
    ]
    assert [one.number for one in work.orders.of_lot(lot.id)] == [1, 3, 4]
    wrong = work.lots.set_shares(lot.id, shares[:2], version=made.version)
    assert wrong == (ShareFault("under", 0, 2, "hind", Fraction(0)),)


def test_a_share_with_an_order_does_not_vanish(work: Work) -> None:
    lot = lot_of_halves(work)
    line(work, order_of(work, lot, 2))
    shares = (LotShare(1, lot.producer_id, holdings=whole(0)),)
    assert work.lots.set_shares(lot.id, shares, version=lot.version) == Refused("has_lines")


def test_details_change_and_go_to_the_animals(work: Work) -> None:
    lot = lot_of_halves(work)
    later = KILL_DAY + timedelta(days=7)
    saved = work.lots.save_details(
        Lot(
            lot.id, 0, "", 0, later, lot.producer_id, "", "scalded", "inspected", None, "hide",
            "gate code 4", (), (), version=lot.version,
        )
    )  # fmt: skip
    assert isinstance(saved, Lot)
    assert (saved.day, saved.skin, saved.keeps, saved.note) == (
        later,
        "scalded",
        "hide",
        "gate code 4",
    )
    assert saved.booked is None
    assert [(one.skin, one.regime) for one in saved.animals] == [("scalded", "inspected")]
    assert isinstance(work.lots.save_details(lot), StaleEdit)


def test_a_lot_is_cancelled_with_a_reason_while_nothing_has_come(work: Work) -> None:
    lot = lot_of_halves(work)
    assert work.lots.cancel(lot.id, " ", version=lot.version) == Refused("reason_missing")
    gone = work.lots.cancel(lot.id, "sold at auction", version=lot.version)
    assert isinstance(gone, Lot)
    assert gone.cancelled == "sold at auction"
    assert work.lots.list() == ()
    assert [one.id for one in work.lots.list(cancelled=True)] == [lot.id]
    assert work.animals.list() == ()
    assert work.orders.list() == ()
    other = lot_of_halves(work)
    arrived(work, other)
    assert work.lots.cancel(other.id, "late", version=other.version) == Refused("has_arrived")


def test_the_question_says_what_was_off_before_the_chilled_weight(
    store: Store, signed: SignedOn, clock: Clock
) -> None:
    """A loss told by the first chilled weight; one told at the block is of what was chilled."""
    with store.work(signed.person, signed.station) as work:
        lot = lot_of_halves(work)
        animal = arrived(work, lot)
        weighed(work, animal, "150", 1)
        weighed(work, animal, "150", 2)
        work.animals.record_loss(animal.id, Gone("jowl", 1, Weight(1, "lb"), "abscess"))
        before = Gone("jowl", 2, Weight(1, "lb"), "abscess", before_scale=True)
        work.animals.record_loss(animal.id, before)
        question = work.lots.question(lot.id, at_block=True)
        assert not any(one.before_chilled for one in question.carcasses[0].gone)
        work.commit()
    clock.pass_by(hours=20)
    with store.work(signed.person, signed.station) as work:
        chilled = work.weighings.record(animal.id, "chilled", Weight(149, "lb"), side=1)
        assert isinstance(chilled, Weighing)
        work.commit()
    clock.pass_by(hours=20)
    with store.work(signed.person, signed.station) as work:
        work.animals.record_loss(animal.id, Gone("ham_centre", 1, Weight(2, "lb"), "bruise"))
        work.weighings.correct(chilled.id, Weight(146, "lb"), "digits turned")
        gone = work.lots.question(lot.id, at_block=True).carcasses[0].gone
    assert [(one.before_scale, one.before_chilled) for one in gone] == [
        (False, True),
        (True, False),
        (False, False),
    ]


def test_the_question_holds_all_that_is_known(work: Work) -> None:
    lot = lot_of_halves(work)
    animal = arrived(work, lot)
    work.weighings.record(animal.id, "live", Weight(250, "lb"))
    weighed(work, animal, "92.5", 1)
    wrong = weighed(work, animal, "39", 2)
    work.weighings.correct(wrong.id, Weight(935, "lb", -1), "digits turned")
    kept = Gone("ham_centre", 1, Weight(2, "lb"), "bruise", before_scale=True)
    work.animals.record_loss(animal.id, kept)
    void = work.animals.record_loss(animal.id, Gone("liver", 0, None, "spots"))
    assert not isinstance(void, Refused)
    work.animals.void_loss(void.id, "wrong animal")
    work.animals.measure(animal.id, Measured("rib", 1, 100))
    work.animals.measure(animal.id, Measured("rib", 1, 200))
    work.animals.measure(animal.id, Measured("rib", 2, 300))
    first, second = line(work, order_of(work, lot, 2), GROUND), line(work, order_of(work, lot, 1))
    question = work.lots.question(lot.id, at_block=True)
    (carcass,) = question.carcasses
    assert (carcass.species, carcass.tag) == ("pork", "114")
    assert carcass.live == Weight(250, "lb")
    assert carcass.hot == (
        SideWeights(Weight(925, "lb", -1)),
        SideWeights(Weight(935, "lb", -1)),
    )
    assert carcass.hot_whole is None
    assert carcass.booked == Weight(185, "lb")
    assert carcass.gone == (kept,)
    assert carcass.measured == (Measured("rib", 1, 200), Measured("rib", 2, 300))
    assert question.shares == (
        Share(1, "Anna Berg", half(0, 1)),
        Share(2, "Bert Iversen", half(0, 2)),
    )
    assert question.choices == (first, second)
    assert (first.line, first.share, second.line, second.share) == (1, 2, 2, 1)
    assert question.settings == Settings(at_block=True)


def test_nothing_of_a_condemned_or_refused_animal_is_planned(work: Work) -> None:
    lot = lot_of_one(work)
    assert [one.condemned for one in work.lots.question(lot.id).carcasses] == [False]
    animal = arrived(work, lot)
    moved = work.animals.move(animal.id, "refused", reason="down", version=animal.version)
    assert isinstance(moved, Animal)
    assert [one.condemned for one in work.lots.question(lot.id).carcasses] == [True]


def test_a_whole_chilled_weight_is_halved_the_odd_nanogram_to_side_1(work: Work) -> None:
    animal = arrived(work, lot_of_one(work))
    work.weighings.record(animal.id, "chilled", Weight(1, "lb", -4))
    (carcass,) = work.lots.question(animal.lot_id).carcasses
    first, second = (one.nanograms for one in carcass.chilled)
    assert (first, second) == (22_679_619, 22_679_618)


def test_the_shops_own_figures_reach_the_planner(work: Work) -> None:
    shop = work.shop.details()
    saved = work.shop.save(
        ShopDetails(
            name="Oakfield Meats",
            kerf_saw=25_400,
            own_lengths=(("beef", "rib", 1), ("pork", "rib", 2_743_200)),
            version=shop.version,
        )
    )
    assert isinstance(saved, ShopDetails)
    settings = work.lots.question(lot_of_one(work).id).settings
    assert settings == Settings(25_400, None, False, (("rib", 2_743_200),))


@pytest.mark.parametrize("size", [1, 6])
def test_the_question_takes_as_many_queries_for_one_animal_as_for_six(
    store: Store, signed: SignedOn, size: int
) -> None:
    with store.work(signed.person, signed.station) as work:
        lot = four_owners(work, head=size, lines=size)
        for index in range(size):
            weighed(work, arrived(work, lot, f"T{index}", index), "700")
        work.commit()
    statements: list[str] = []

    def count(connection: object, cursor: object, statement: str, *_: object) -> None:
        statements.append(statement)

    event.listen(store._engine, "before_cursor_execute", count)
    with store.read() as reading:
        statements.clear()
        question = reading.lots.question(lot.id)
    assert len(question.carcasses) == size
    assert len(question.choices) == 4 * size
    assert len([one for one in statements if one.startswith("SELECT")]) == 12


def test_line_numbers_are_the_lots_own_and_never_return(work: Work) -> None:
    lot = lot_of_halves(work)
    anna, bert = order_of(work, lot, 1), order_of(work, lot, 2)
    assert [line(work, one).line for one in (anna, bert, anna)] == [1, 2, 3]
    work.orders.remove_line(anna.id, 3)
    assert line(work, bert, HAM).line == 4


def test_lists_are_sorted_and_filtered(work: Work) -> None:
    days = (date(2026, 3, 12), date(2026, 3, 10), date(2026, 3, 11))
    first, second, third = (
        lot_of_one(work, name, day) for name, day in zip(("Cleo", "Ada", "Ben"), days, strict=True)
    )
    ids = {"day": [second, third, first], "number": [first, second, third]}
    assert [one.id for one in work.lots.list()] == [one.id for one in ids["day"]]
    assert [one.id for one in work.lots.list(sort="number")] == [one.id for one in ids["number"]]
    by_name = work.lots.list(sort="producer", descending=True)
    assert [one.producer for one in by_name] == ["Cleo", "Ben", "Ada"]
    assert [one.id for one in work.lots.list(start=days[2])] == [third.id, first.id]
    assert [one.id for one in work.lots.list(end=days[1])] == [second.id]
    assert [one.id for one in work.lots.list(text="ben")] == [third.id]
    assert [one.id for one in work.lots.list(limit=1, offset=1)] == [third.id]
    assert work.lots.list(species="beef") == ()
    arrived(work, third, "T-7")
    (row,) = work.lots.list(text="t-7")
    assert (row.animals_state, row.orders_open, row.owners) == ("arrived", 1, "Ben")

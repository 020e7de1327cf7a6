"""Everything done to an order is taken back and done again: lines, many at once, and the note."""

from datetime import date

from desktop.bench import Bench
from desktop.counter.history_dialog import history
from desktop.counter.order_desk import OrderDesk
from shared.cutting.order import Amount, Choice
from shared.shop.people import SignedOn
from shared.shop.problems import UndoRefused
from tests.desktop.counter.test_order_view import halves

HAM = Choice(0, 1, "whole_ham", Amount("pieces", 1))


def desk(bench: Bench) -> OrderDesk:
    lot = halves(bench)
    return OrderDesk(bench, lot.id, lot.shares[0].order_id)


def test_lines_and_the_note_are_taken_back_in_their_order(bench: Bench) -> None:
    at = desk(bench)
    at.add([HAM])
    assert at.save_note("Keep the hocks", date(2026, 3, 12)) is None
    at.fill_usual()
    filled = at.order.choices
    assert at.undo() is None
    assert [one.cut for one in at.order.choices] == ["whole_ham"]
    assert at.undo() is None
    assert (at.order.note, at.order.due) == ("", None)
    assert at.undo() is None
    assert at.order.choices == ()
    assert isinstance(at.undo(), UndoRefused)
    for _ in range(3):
        assert at.redo() is None
    assert at.order.choices == filled
    assert (at.order.note, at.order.due) == ("Keep the hocks", date(2026, 3, 12))


def test_a_note_that_another_wrote_since_is_not_taken_back(bench: Bench) -> None:
    at = desk(bench)
    at.save_note("Mine", None)
    other = bench.store.sign_on("Olga", "Rail")
    with bench.store.work(other.person, other.station) as work:
        order = work.orders.get(at.order.id)
        assert order is not None
        work.orders.save_note(order.id, "Hers", None, version=order.version)
        work.commit()
    at.load()
    assert at.undo() == UndoRefused("changed_by_another", "Olga")
    assert at.order.note == "Hers"


def test_every_change_is_told_with_who_and_when(bench: Bench, signed: SignedOn) -> None:
    at = desk(bench)
    at.add([HAM])
    at.save_note("Keep the hocks", None)
    at.undo()
    at.undo()
    told = history(bench, at)
    assert {one.person for one in told} == {signed.person.name}
    assert {one.station for one in told} == {signed.station.name}
    assert {one.at for one in told} == {bench.now()}
    by_note = [(one.was, one.became) for one in told if one.what == "note"]
    assert by_note == [("Keep the hocks", ""), ("", "Keep the hocks")]
    by_line = [one.what for one in told if "ham" in one.was + one.became]
    assert by_line == ["taken back", "put on"]

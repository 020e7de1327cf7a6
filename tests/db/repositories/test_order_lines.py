"""Lines change by rows that are only ever added, and mine can be taken back."""

from dataclasses import replace

import pytest

from db.store import Store
from db.unit_of_work import Work
from shared.cutting.order import Amount, Choice
from shared.shop.orders import OrderChange
from shared.shop.people import SignedOn
from shared.shop.problems import Refused, UndoRefused
from tests.db.examples import GROUND, HAM, line, lot_of_halves, order_of, settled


def choices(work: Work, order_id: int) -> tuple[Choice, ...]:
    order = work.orders.get(order_id)
    assert order is not None
    return order.choices


def test_every_change_is_kept_with_before_and_after(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham = line(work, order)
    two = work.orders.change_line(order.id, replace(ham, amount=Amount("pieces", 2)))
    assert isinstance(two, Choice)
    work.orders.remove_line(order.id, ham.line)
    assert choices(work, order.id) == ()
    found = [(one.kind, one.before, one.after) for one in work.orders.changes(order.id)]
    assert found == [("add", None, ham), ("change", ham, two), ("remove", two, None)]
    assert {one.person for one in work.orders.changes(order.id)} == {"Test"}


def test_a_change_that_changes_nothing_is_none(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham = line(work, order)
    assert work.orders.change_line(order.id, ham) == ham
    assert len(work.orders.changes(order.id)) == 1


def test_a_line_that_is_not_there_is_said(work: Work) -> None:
    lot = lot_of_halves(work)
    anna, bert = order_of(work, lot, 1), order_of(work, lot, 2)
    ham = line(work, anna)
    missing = Refused("no_such_line", {"line": "1"})
    assert work.orders.change_line(bert.id, ham) == missing
    assert work.orders.remove_line(bert.id, 1) == missing
    assert work.orders.mark_made(bert.id, 1) == missing


def test_undo_and_redo_walk_my_changes(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham, ground = line(work, order), line(work, order, GROUND)
    two = work.orders.change_line(order.id, replace(ham, amount=Amount("pieces", 2)))
    assert isinstance(two, Choice)
    steps = [(two, ground), (ham, ground), (ham,), ()]
    for expected in steps[1:]:
        assert isinstance(work.orders.undo(order.id, 0), OrderChange)
        assert choices(work, order.id) == expected
    assert work.orders.undo(order.id, 0) == UndoRefused("nothing")
    for expected in reversed(steps[:-1]):
        assert isinstance(work.orders.redo(order.id, 0), OrderChange)
        assert choices(work, order.id) == expected
    assert work.orders.redo(order.id, 0) == UndoRefused("nothing")


def test_a_new_change_ends_what_could_be_done_again(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    line(work, order)
    work.orders.undo(order.id, 0)
    line(work, order, GROUND)
    assert work.orders.redo(order.id, 0) == UndoRefused("nothing")


def test_only_what_was_done_since_opening_is_undone(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    line(work, order)
    opened = work.orders.get(order.id)
    assert opened is not None
    assert work.orders.undo(order.id, opened.last_change) == UndoRefused("nothing")
    line(work, order, GROUND)
    undone = work.orders.undo(order.id, opened.last_change)
    assert isinstance(undone, OrderChange)
    assert undone.line == 2


def test_what_another_has_changed_is_not_undone(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        order = order_of(work, lot_of_halves(work))
        ham, ground = line(work, order), line(work, order, GROUND)
        work.commit()
    olga = store.sign_on("Olga", "Office")
    with store.work(olga.person, olga.station) as work:
        work.orders.change_line(order.id, replace(ground, note="hot"))
        line(work, order, HAM)
        work.commit()
    with store.work(signed.person, signed.station) as work:
        assert work.orders.undo(order.id, 0) == UndoRefused("changed_by_another", "Olga")
        work.orders.remove_line(order.id, ham.line)
        work.orders.undo(order.id, 0)
        assert [one.line for one in choices(work, order.id)] == [1, 2, 3]


def test_another_does_not_undo_mine(store: Store, signed: SignedOn) -> None:
    with store.work(signed.person, signed.station) as work:
        order = order_of(work, lot_of_halves(work))
        line(work, order)
        work.commit()
    olga = store.sign_on("Olga", "Office")
    with store.work(olga.person, olga.station) as work:
        assert work.orders.undo(order.id, 0) == UndoRefused("nothing")


def test_after_release_nothing_is_undone_but_lines_may_change(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    ham = line(work, order)
    settled(work, order.id)
    work.orders.release(lot.id, [order.id], snapshot="{}", pdf=b"%PDF")
    assert work.orders.undo(order.id, 0) == UndoRefused("released")
    changed = work.orders.change_line(order.id, replace(ham, note="short shank"))
    assert isinstance(changed, Choice)


def test_what_is_ticked_as_cut_is_not_changed(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    ham = line(work, order)
    made = work.orders.mark_made(order.id, ham.line)
    assert made == replace(ham, made=True)
    refused = Refused("closed_to_change", {"state": "open"})
    assert work.orders.change_line(order.id, replace(ham, note="x")) == refused
    assert work.orders.remove_line(order.id, ham.line) == refused
    assert work.orders.mark_made(order.id, ham.line, False) == ham


@pytest.mark.parametrize("state", ["cut", "ready"])
def test_lines_are_closed_once_the_order_is_cut(work: Work, state: str) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot)
    ham = line(work, order)
    settled(work, order.id)
    work.orders.release(lot.id, [order.id], snapshot="{}", pdf=b"%PDF")
    for to in ("cut", "ready"):
        there = work.orders.get(order.id)
        assert there is not None
        work.orders.move(order.id, to, version=there.version)
        if to == state:
            break
    refused = Refused("closed_to_change", {"state": state})
    assert work.orders.add_lines(order.id, [HAM]) == refused
    assert work.orders.add_line(order.id, HAM) == refused
    assert work.orders.change_line(order.id, replace(ham, note="x")) == refused


def test_the_lines_as_they_stand_are_what_the_changes_say(work: Work) -> None:
    """Played through from the first change, the changes give the lines."""
    order = order_of(work, lot_of_halves(work))
    first = line(work, order)
    line(work, order, GROUND)
    work.orders.change_line(order.id, replace(first, note="x"))
    work.orders.undo(order.id, 0)
    work.orders.redo(order.id, 0)
    work.orders.remove_line(order.id, 2)
    work.orders.undo(order.id, 0)
    standing: dict[int, Choice] = {}
    for change in work.orders.changes(order.id):
        assert standing.get(change.line) == change.before
        if change.after is None:
            del standing[change.line]
        else:
            standing[change.line] = change.after
    assert tuple(standing[at] for at in sorted(standing)) == choices(work, order.id)


def test_many_lines_are_put_on_and_taken_back_together(work: Work) -> None:
    order = order_of(work, lot_of_halves(work))
    first = line(work, order)
    added = work.orders.add_lines(order.id, [HAM, GROUND])
    assert isinstance(added, tuple)
    assert [one.line for one in added] == [first.line + 1, first.line + 2]
    assert {one.share for one in added} == {order.share}
    assert choices(work, order.id) == (first, *added)
    kinds = [(one.kind, one.line) for one in work.orders.changes(order.id)]
    assert kinds == [("add", first.line), ("add", first.line + 1), ("add", first.line + 2)]
    newest = work.orders.get(order.id)
    assert newest is not None
    assert newest.last_change == work.orders.changes(order.id)[-1].id
    assert isinstance(work.orders.undo(order.id, 0, 2), OrderChange)
    assert choices(work, order.id) == (first,)
    assert isinstance(work.orders.redo(order.id, 0, 2), OrderChange)
    assert choices(work, order.id) == (first, *added)
    assert isinstance(work.orders.undo(order.id, 0, 3), OrderChange)
    assert choices(work, order.id) == ()

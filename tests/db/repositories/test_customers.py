"""Customers: kept, found by any part, noticed twice, joined without losing history."""

from dataclasses import replace
from datetime import date

import pytest

from db.unit_of_work import Work
from shared.shop.customers import Customer, HeldBy
from shared.shop.problems import Refused
from tests.db.examples import customer, lot_of_one, order_of


def names(work: Work, text: str) -> list[str]:
    return [one.name for one in work.customers.find(text)]


def test_a_customer_comes_back_as_written(work: Work) -> None:
    new = Customer(
        name="Jørgen & Łucja <O'Neil>",
        phone="(555) 010-0123",
        email="j@example.org",
        address="1 Mill Road\nOakfield",
        notes="Rings after six.\nTwo dogs.",
        group="farm",
        language="es",
    )
    made = work.customers.add(new)
    assert isinstance(made, Customer)
    assert made == Customer(
        made.id, new.name, new.phone, new.email, new.address, new.notes, "farm", "es", None, 1
    )
    (row,) = work.customers.find("")
    assert (row.town, row.open_orders) == ("Oakfield", 0)


def test_a_name_is_needed(work: Work) -> None:
    assert work.customers.add(Customer(name="  ")) == Refused("name_missing")
    made = customer(work)
    blank = Customer(made.id, " ", version=made.version)
    assert work.customers.save(blank) == Refused("name_missing")


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("jorgen", ["Jørgen & Łucja <O'Neil>"]),
        ("ŁUCJA", ["Jørgen & Łucja <O'Neil>"]),
        ("o'n", ["Jørgen & Łucja <O'Neil>"]),
        ("berg", ["Anna Berg"]),
        ("010-01", ["Anna Berg", "Jørgen & Łucja <O'Neil>"]),
        ("5550100199", ["Jørgen & Łucja <O'Neil>"]),
        ("", ["Anna Berg", "Jørgen & Łucja <O'Neil>"]),
        ("%", []),
        ("_", []),
        ("zz", []),
    ],
)
def test_any_part_of_name_or_phone_finds(work: Work, text: str, found: list[str]) -> None:
    customer(work)
    customer(work, "Jørgen & Łucja <O'Neil>", "(555) 010-0199")
    assert names(work, text) == found


def test_pages_follow_one_another(work: Work) -> None:
    for letter in "CABD":
        customer(work, letter)
    assert [one.name for one in work.customers.find("", limit=2)] == ["A", "B"]
    assert [one.name for one in work.customers.find("", limit=2, offset=2)] == ["C", "D"]


def test_one_who_may_be_known_already_is_noticed(work: Work) -> None:
    customer(work)
    assert [one.name for one in work.customers.alike("ANNA  berg", "")] == ["Anna Berg"]
    assert [one.name for one in work.customers.alike("A. Holm", "555 010 0123")] == ["Anna Berg"]
    assert work.customers.alike("Bert", "555 010 9999") == ()
    assert work.customers.alike("", "0123") == ()


def test_joining_two_keeps_the_orders_of_both(work: Work) -> None:
    first = order_of(work, lot_of_one(work, "Anna Berg"))
    second = order_of(work, lot_of_one(work, "A. Berg"))
    assert first.customer_id is not None
    assert second.customer_id is not None
    joined = work.customers.join(second.customer_id, first.customer_id)
    assert isinstance(joined, Customer)
    assert joined.id == first.customer_id
    (row,) = work.customers.find("berg")
    assert (row.id, row.open_orders) == (first.customer_id, 2)
    found = work.customers.orders(first.customer_id)
    assert sorted(one.id for one in found) == [first.id, second.id]
    assert {one.owner for one in found} == {"Anna Berg"}
    share = work._connection.exec_driver_sql(
        "SELECT customer_id FROM shares WHERE lot_id = ?", (second.lot_id,)
    ).scalar()
    assert share == second.customer_id, "no row of the past is rewritten"


def test_a_chain_of_joins_ends_at_one(work: Work) -> None:
    one, two, three = (customer(work, name) for name in ("One", "Two", "Three"))
    work.customers.join(one.id, two.id)
    work.customers.join(two.id, three.id)
    found = [work.customers.get(each.id) for each in (one, two, three)]
    assert [each.joined_into for each in found if each is not None] == [three.id, three.id, None]
    assert work.customers.join(three.id, one.id) == Refused("same_customer")
    assert work.customers.join(three.id, 99) == Refused("no_such_customer")


def test_what_goes_along_is_counted_before_two_are_joined(work: Work) -> None:
    lot = lot_of_one(work, "A. Berg")
    order = order_of(work, lot)
    assert order.customer_id is not None
    work.waiting.add(order.customer_id, "beef", 1, date(2026, 3, 2))
    taken = work.payments.take(order.id, "deposit", "cash", 5_000)
    assert not isinstance(taken, Refused)
    assert work.customers.held_by(order.customer_id) == HeldBy(
        orders=1, open_orders=1, bookings=1, payments=1, waiting=1
    )
    other = customer(work, "Anna Berg II")
    assert work.customers.held_by(other.id) == HeldBy()
    assert work.customers.held_by(other.id).nothing()
    work.customers.join(order.customer_id, other.id)
    assert work.customers.held_by(other.id).orders == 1, "of those joined into it, too"


def test_two_that_were_joined_are_taken_apart_with_what_was_theirs(work: Work) -> None:
    first = order_of(work, lot_of_one(work, "Anna Berg"))
    second = order_of(work, lot_of_one(work, "A. Berg"))
    assert first.customer_id is not None
    assert second.customer_id is not None
    work.customers.join(second.customer_id, first.customer_id)
    (row,) = work.customers.joined()
    assert (row.name, row.into_name) == ("A. Berg", "Anna Berg")
    assert row.by
    assert row.at is not None
    apart = work.customers.take_apart(second.customer_id)
    assert isinstance(apart, Customer)
    assert apart.joined_into is None
    assert [one.id for one in work.customers.orders(first.customer_id)] == [first.id]
    assert [one.id for one in work.customers.orders(second.customer_id)] == [second.id]
    assert work.customers.joined() == ()
    said = [one.what for one in work.changes.of("customer", second.customer_id)]
    assert sorted(said) == ["added", "joined", "parted"]
    assert work.customers.take_apart(second.customer_id) == Refused("not_joined")
    assert work.customers.take_apart(99) == Refused("no_such_customer")


def test_what_the_one_that_stays_lacked_goes_over_and_back(work: Work) -> None:
    bare = work.customers.add(Customer(name="Ole Berg", email="own@example.org"))
    full = work.customers.add(
        Customer(name="O. Berg", phone="(555) 010-0177", email="o@example.org", address="1 Mill Rd")
    )
    assert isinstance(bare, Customer)
    assert isinstance(full, Customer)
    joined = work.customers.join(full.id, bare.id)
    assert isinstance(joined, Customer)
    assert (joined.phone, joined.email, joined.address) == (
        "(555) 010-0177",
        "own@example.org",
        "1 Mill Rd",
    )
    assert names(work, "0100177") == ["Ole Berg"]
    moved = work.customers.save(replace(joined, address="2 Mill Rd"))
    assert isinstance(moved, Customer)
    work.customers.take_apart(full.id)
    there = work.customers.get(bare.id)
    assert there is not None
    assert (there.phone, there.email) == ("", "own@example.org")
    assert there.address == "2 Mill Rd", "what was changed since is his own"
    assert names(work, "0100177") == ["O. Berg"]


def test_out_of_a_chain_one_takes_along_who_was_joined_into_him(work: Work) -> None:
    one, two, three, four = (customer(work, name) for name in ("One", "Two", "Three", "Four"))
    work.customers.join(one.id, two.id)
    work.customers.join(two.id, three.id)
    work.customers.join(four.id, three.id)
    work.customers.take_apart(two.id)
    found = [work.customers.get(each.id) for each in (one, two, three, four)]
    assert [each.joined_into for each in found if each is not None] == [
        two.id,
        None,
        None,
        three.id,
    ]
    work.customers.take_apart(one.id)
    found = [work.customers.get(each.id) for each in (one, two, three, four)]
    assert [each.joined_into for each in found if each is not None] == [None, None, None, three.id]

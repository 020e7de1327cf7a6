"""One search for whatever is known: a name, a few digits, a tag, a number."""

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from db.store import open_store
from db.unit_of_work import Work
from shared.marking.gs1 import FNC1, ElementString, package_elements
from shared.marking.serial import box_serial, package_serial
from shared.shop.customers import Customer
from tests.db.examples import (
    arrived,
    customer,
    line,
    lot_of_halves,
    lot_of_one,
    order_of,
    package,
)


def kinds(work: Work, text: str) -> list[tuple[str, str]]:
    return [(one.kind, one.title) for one in work.search.find(text)]


def test_everything_people_ask_for_is_found(work: Work) -> None:
    lot = lot_of_halves(work)
    arrived(work, lot, "T-114")
    assert kinds(work, "2") == [("order", "2")]
    assert kinds(work, "#1") == [("order", "1"), ("lot", "1")]
    assert kinds(work, "114") == [("animal", "T-114")]
    assert kinds(work, "iver") == [("customer", "Bert Iversen")]
    assert kinds(work, "0100456") == [("customer", "Bert Iversen")]
    assert kinds(work, "zz") == []
    assert kinds(work, "  ") == []


def test_the_exact_tag_comes_first(work: Work) -> None:
    for tag in ("1145", "114", "2114"):
        arrived(work, lot_of_one(work), tag)
    found = [title for kind, title in kinds(work, "114") if kind == "animal"]
    assert found == ["114", "2114", "1145"]


def test_a_hit_says_whose_it_is_and_how_to_open_it(work: Work) -> None:
    lot = lot_of_halves(work)
    order = order_of(work, lot, 2)
    (hit,) = work.search.find("2")
    assert (hit.id, hit.lot_id, hit.detail) == (order.id, lot.id, "Bert Iversen")


def test_the_code_of_a_label_is_its_order(work: Work) -> None:
    lot = lot_of_halves(work)
    order_of(work, lot, 1)
    order = order_of(work, lot, 2)
    made = package(work, order, line(work, order))
    serial = f"{order.number}-{made.label_number}"
    gs1 = package_elements(
        "98898765432106", made.net, date(2026, 3, 2), lot=str(lot.number), serial=serial
    )
    assert isinstance(gs1, ElementString)
    for text in (
        package_serial(order.number, made.label_number),
        box_serial(order.number, "3"),
        f"]C1{gs1.raw}",
        gs1.raw.replace(FNC1, ""),
        gs1.human,
    ):
        (hit,) = work.search.find(text)
        assert (hit.kind, hit.id, hit.lot_id) == ("order", order.id, lot.id), text
    assert work.search.find(package_serial(order.number, made.label_number + 1)) == ()


def test_no_more_than_asked_for(work: Work) -> None:
    for number in range(5):
        lot_of_one(work, f"Berg {number}")
    assert len(work.search.find("berg", limit=3)) == 3


def test_any_part_of_any_word_finds_and_signs_of_the_index_mean_themselves(work: Work) -> None:
    customer(work, 'Ana "Bear" O\'Neill-Þórsdóttir')
    for typed in ("ana", "eill", "O'N", '"bear"', "bear thors", "a", "il-t", "dottir ana"):
        assert len(kinds(work, typed)) == (typed != "il-t"), typed
    for typed in ("* OR ana", "name_key:ana", "ana NOT", "%", "_", '""'):
        found = kinds(work, typed)
        assert found == [] or typed == '""', typed


def test_what_is_renamed_is_found_by_its_new_name_only(work: Work) -> None:
    first = customer(work, "Osvaldo Quick")
    saved = work.customers.save(replace(first, name="Osvaldo Slow", phone="555 010 7788"))
    assert isinstance(saved, Customer)
    assert kinds(work, "quick") == []
    assert kinds(work, "slow") == kinds(work, "1077") == [("customer", "Osvaldo Slow")]


def test_who_was_joined_is_found_by_his_old_name_as_the_one_he_is(work: Work) -> None:
    lot, new = lot_of_one(work, "Jon Smyth"), customer(work, "John Smith")
    work.customers.join(lot.producer_id, new.id)
    assert ("customer", "John Smith") in kinds(work, "smyth")
    assert [row.owner for row in work.orders.list(text="smyth")] == ["John Smith"]
    assert work.orders.list(text="smith") == work.orders.list(text="smyth")


def test_the_start_of_an_order_number_finds(work: Work) -> None:
    for number in range(12):
        lot_of_one(work, f"Owner {number}")
    assert [title for kind, title in kinds(work, "1") if kind == "order"] == ["1", "10", "11", "12"]


@pytest.mark.parametrize("text", ["0", "#0", "0000"])
def test_noughts_alone_are_the_start_of_no_number(work: Work, text: str) -> None:
    """They found the first four orders and lots, and Enter opened one of them."""
    lot_of_halves(work)
    assert [one for one in work.search.find(text) if one.kind in ("order", "lot")] == []


def test_names_written_nearly_so_come_last_and_say_so(work: Work) -> None:
    for name in ("Anna Johnson", "Jørgen Bérg", "Bert Iversen", "Karl Johns"):
        customer(work, name)

    def near(text: str) -> list[tuple[str, bool]]:
        return [(one.title, one.near) for one in work.search.find(text)]

    assert near("jonson") == [("Anna Johnson", True)]
    assert near("anna jonson") == [("Anna Johnson", True)]
    assert near("ana jonson") == [], "three letters must be there as they are"
    assert near("breg") == [("Jørgen Bérg", True)]
    assert near("jorgen brg") == []
    assert near("bert ivresen") == [("Bert Iversen", True)]
    assert near("johns") == [("Anna Johnson", False), ("Karl Johns", False)]
    assert near("iversen") == [("Bert Iversen", False)]
    assert near("wxyz") == []


def test_a_long_word_may_have_two_edits_and_changed_names_are_followed(work: Work) -> None:
    anna, vera = customer(work, "Anna Gunderson"), customer(work, "Vera Ostergaard")

    def near(text: str) -> list[str]:
        return [one.title for one in work.search.find(text) if one.near]

    assert near("gundarsin") == ["Anna Gunderson"]
    assert near("ana gundarsin") == [], "three letters must be there as they are"
    assert near("ostregard vera") == ["Vera Ostergaard"]
    assert near("ivrsan") == []
    customer(work, "Bo Abendroth")
    assert near("abendorht") == ["Bo Abendroth"]
    work.customers.save(replace(vera, name="Vera Lindqvist"))
    assert near("ostregard") == []
    assert near("linkvist") == ["Vera Lindqvist"]
    bo = customer(work, "Bo Sand")
    work.customers.join(anna.id, bo.id)
    assert near("gundarsin") == ["Bo Sand"]
    customer(work, "Cora Gunterson")
    assert near("gundersonn") == ["Bo Sand", "Cora Gunterson"], "one edit before two"


def test_names_kept_in_memory_stay_with_their_store(tmp_path: Path) -> None:
    for name in ("Anna Gunderson", "Vera Ostergaard"):
        store = open_store(tmp_path / f"{name[:4]}.db", keep_copies=False)
        signed = store.sign_on("Bench", "Bench")
        with store.work(signed.person, signed.station) as work:
            customer(work, name)
            work.commit()
        with store.read() as read:
            found = [*read.search.find("gundarsin"), *read.search.find("ostregard")]
        assert [one.title for one in found] == [name]
        store.close()


def test_near_is_left_out_where_enough_is_found(work: Work) -> None:
    for number in range(4):
        customer(work, f"Jonson {number}")
    customer(work, "Johnson")
    assert [one.near for one in work.search.find("jonson")] == [False] * 4


def test_who_is_joined_is_near_as_the_one_he_is(work: Work) -> None:
    first, second = customer(work, "Anna Johnson"), customer(work, "Anna Sand")
    work.customers.join(first.id, second.id)
    assert [(one.id, one.title) for one in work.search.find("jonson")] == [(second.id, "Anna Sand")]


def test_a_new_customer_is_compared_with_names_written_nearly_so(work: Work) -> None:
    customer(work, "Anna Johnson")
    customer(work, "Anna Johnsonville")
    assert [one.name for one in work.customers.nearly("Anna Jonson")] == ["Anna Johnson"]
    assert work.customers.nearly("Anna Johnson") == ()
    assert work.customers.nearly("Al") == ()

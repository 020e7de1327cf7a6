"""The blank form: filled with an independent library (pypdf) it reads back as what was filled."""

from datetime import UTC, date, datetime
from io import BytesIO

import pytest
from pypdf import PdfReader, PdfWriter

from printing.order_form import FormFor, asked_for, order_form
from printing.order_form_reading import FilledForm, FormRefused, NotUnderstood, read_order_form
from printing.words import Words
from shared.carcass.anatomy import catalogue
from shared.cutting.order import Amount, Choice, Package
from shared.shop.details import ShopDetails
from shared.units import Weight
from tests.printing.pages import NAME

MADE = datetime(2026, 3, 2, 12, tzinfo=UTC)
WHOSE = FormFor(NAME, 12, 34, date(2026, 3, 9), date(2026, 3, 13))

ASKED = {
    "cut.centre_chop.want": "/Yes",
    "cut.centre_chop.amount": "14",
    "cut.centre_chop.thickness": "1 1/4 in",
    "cut.centre_chop.package": "4",
    "cut.whole_butt.want": "/Yes",
    "cut.butt_roast.amount": "the rest",
    "cut.butt_roast.weight": "3 lb",
    "cut.butt_roast.finish": "seasoned",
    "cut.ground_pork.amount": "10 lb",
    "cut.ground_pork.package": "2 lb",
    "usual.ham": "/Yes",
    "form.note": "Ring after six",
}


def blank(species: str = "pork", language: str = "en", paper: str = "letter") -> bytes:
    shop = ShopDetails(name="Mill Road Meats", paper="a4" if paper == "a4" else "letter")
    words = Words(language, strict=True)
    return order_form(catalogue(species), WHOSE, shop=shop, made=MADE, words=words)


def filled(fields: dict[str, str], pdf: bytes | None = None) -> bytes:
    writer = PdfWriter(clone_from=BytesIO(pdf or blank()))
    writer.update_page_form_field_values(None, fields, auto_regenerate=False)
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def read(pdf: bytes, order: int = 34) -> FilledForm:
    found = read_order_form(pdf, catalogue("pork"), 1, order_number=order)
    assert isinstance(found, FilledForm), found
    return found


def test_what_was_filled_in_comes_back() -> None:
    found = read(filled(ASKED))
    lb = Weight.from_pounds
    four, butt = Package(pieces=4), catalogue("pork").cuts["butt_roast"]
    rest = Package(butt.package_pieces, None if butt.package_pieces else butt.package_weight)
    expected = {
        "centre_chop": Choice(0, 1, "centre_chop", Amount("slices", 14), "", 254_000, package=four),
        "whole_butt": Choice(0, 1, "whole_butt", Amount("all")),
        "butt_roast": Choice(
            0,
            1,
            "butt_roast",
            Amount("rest"),
            piece_weight=lb("3"),
            package=rest,
            finishes=("seasoned",),
        ),
        "ground_pork": Choice(
            0, 1, "ground_pork", Amount("pounds", weight=lb("10")), package=Package(weight=lb("2"))
        ),
    }
    assert {one.cut: one for one in found.choices} == expected
    assert found.usual == ("ham",)
    assert (found.lot_number, found.order_number, found.species) == (12, 34, "pork")
    assert (found.note, found.not_understood) == ("Ring after six", ())


def test_nonsense_is_told_by_its_field_and_its_line_left_out() -> None:
    found = read(
        filled(
            {
                "cut.centre_chop.amount": "a few",
                "cut.butt_roast.want": "/Yes",
                "cut.butt_roast.weight": "as you like",
                "cut.butt_roast.finish": "gold",
                "cut.whole_butt.amount": "5 lb",
                "cut.ground_pork.package": "0",
            }
        )
    )
    assert not found.choices
    assert set(found.not_understood) == {
        NotUnderstood("centre_chop", "amount", "a few"),
        NotUnderstood("butt_roast", "weight", "as you like"),
        NotUnderstood("butt_roast", "finish", "gold"),
        NotUnderstood("whole_butt", "amount", "5 lb"),
        NotUnderstood("ground_pork", "package", "0"),
    }


def test_cuts_win_over_the_usual_of_the_same_primal_and_that_is_told() -> None:
    found = read(filled({"usual.loin": "/Yes", "cut.centre_chop.want": "/Yes"}))
    assert [one.cut for one in found.choices] == ["centre_chop"]
    assert (found.usual, found.not_understood) == ((), (NotUnderstood("", "usual", "loin"),))


def test_a_spanish_form_reads_in_spanish() -> None:
    pdf = blank(language="es")
    finish = Words("es").name("pork", "finish.seasoned")
    fields = {"cut.butt_roast.amount": "Lo demás", "cut.butt_roast.finish": finish}
    (one,) = read(filled(fields, pdf)).choices
    assert (one.amount, one.finishes) == (Amount("rest"), ("seasoned",))


def test_a_blank_form_asks_for_nothing() -> None:
    found = read(blank())
    assert (found.choices, found.usual, found.not_understood) == ((), (), ())


@pytest.mark.parametrize("species", ["beef", "bison", "deer", "goat", "lamb", "pork", "veal"])
@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_every_cut_of_every_species_has_its_field_on_the_page(species: str, paper: str) -> None:
    reader = PdfReader(BytesIO(blank(species, "es", paper)))
    fields = reader.get_fields() or {}
    assert {f"cut.{one.code}.want" for one in asked_for(catalogue(species))} <= set(fields)
    for page in reader.pages:
        wide, high = float(page.mediabox.width), float(page.mediabox.height)
        notes = page.annotations
        assert notes
        for note in notes:
            left, low, right, top = (float(one) for one in note.get_object()["/Rect"])
            assert 0 < left < right < wide
            assert 0 < low < top < high


def test_what_is_no_form_of_ours_is_refused() -> None:
    flat = PdfWriter()
    flat.add_blank_page(612, 792)
    out = BytesIO()
    flat.write(out)
    pork = catalogue("pork")
    assert read_order_form(b"nothing", pork, 1) == FormRefused("not_a_pdf")
    assert read_order_form(out.getvalue(), pork, 1) == FormRefused("no_fields")
    assert read_order_form(blank("deer"), pork, 1) == FormRefused("another_species", "deer")
    other = read_order_form(blank(), pork, 1, order_number=35)
    assert other == FormRefused("another_order", "34")
    strange = filled({"form.version": "9"})
    assert read_order_form(strange, pork, 1) == FormRefused("another_version", "9")


def test_a_slice_as_thick_as_a_door_is_not_understood() -> None:
    thick = {"cut.centre_chop.want": "/Yes", "cut.centre_chop.thickness": "400 in"}
    found = read(filled(thick))
    assert not found.choices
    told = [(one.cut, one.what, one.found) for one in found.not_understood]
    assert ("centre_chop", "thickness", "400 in") in told

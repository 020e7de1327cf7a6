"""A filled order form read back: the choices it holds, and everything that wasn't understood."""

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from io import BytesIO
from typing import Any, Literal

from printing.order_form import FORM_VERSION, asked_for
from printing.words import LANGUAGES, Words
from shared.carcass.catalogue import Catalogue, Cut
from shared.cutting.order import Amount, AmountKind, Choice, Package
from shared.reading import Unread, read_number
from shared.shop.customers import name_key
from shared.units import LENGTH_UNITS_PER_INCH, Weight, read_length, read_weight

RefusedCode = Literal[
    "not_a_pdf", "no_fields", "another_form", "another_version", "another_species", "another_order"
]
ASKED = ("amount", "thickness", "weight", "package", "finish")
MOST_FIELDS = 5000
THICKEST = 6 * LENGTH_UNITS_PER_INCH  # no slice is thicker: common practice, no source


@dataclass(frozen=True, slots=True)
class FormRefused:
    """The file isn't a form of ours that can be read; `found` is what it says instead."""

    code: RefusedCode
    found: str = ""


@dataclass(frozen=True, slots=True)
class NotUnderstood:
    """One answer that couldn't be taken: of which cut, what was asked, and what stands there."""

    cut: str
    what: str
    found: str


@dataclass(frozen=True, slots=True)
class FilledForm:
    """What a form says. `usual` are the primals to be cut as the house usually does.

    `choices` carry line 0 and the share told to `read_order_form`; one with an answer that
    wasn't understood is left out whole, so that nothing half meant is cut.
    """

    species: str
    lot_number: int
    order_number: int
    catalogue_version: int
    choices: tuple[Choice, ...]
    usual: tuple[str, ...]
    note: str
    not_understood: tuple[NotUnderstood, ...]


def read_order_form(
    pdf: bytes, known: Catalogue, share: int, *, order_number: int = 0
) -> FilledForm | FormRefused:
    """Read a filled form of this species; with `order_number` only that order's, or a blank's."""
    fields = _fields(pdf)
    if isinstance(fields, FormRefused):
        return fields
    refused = _refused(fields, known, order_number)
    if refused is not None:
        return refused
    reading = _Reading(known, share, fields)
    for cut in asked_for(known):
        reading.line(cut)
    cut_here = {known.cuts[one.cut].primal for one in reading.choices}
    usual = tuple(one for one in known.primals if fields.get(f"usual.{one}"))
    both = [one for one in usual if one in cut_here]
    reading.unread += [NotUnderstood("", "usual", one) for one in both]
    return FilledForm(
        species=fields["form.species"],
        lot_number=_whole(fields.get("form.lot", "")),
        order_number=_whole(fields.get("form.order", "")),
        catalogue_version=_whole(fields.get("form.catalogue", "")),
        choices=tuple(reading.choices),
        usual=tuple(one for one in usual if one not in both),
        note=fields.get("form.note", ""),
        not_understood=tuple(reading.unread),
    )


def _refused(fields: Mapping[str, str], known: Catalogue, order: int) -> FormRefused | None:
    if "form.version" not in fields or "form.species" not in fields:
        return FormRefused("another_form")
    if fields["form.version"] != FORM_VERSION:
        return FormRefused("another_version", fields["form.version"])
    if fields["form.species"] != known.species:
        return FormRefused("another_species", fields["form.species"])
    written = _whole(fields.get("form.order", ""))
    if order and written and written != order:
        return FormRefused("another_order", str(written))
    return None


def _fields(pdf: bytes) -> dict[str, str] | FormRefused:
    """Every field's text by its name; a tick is "yes", an empty one ""."""
    from pypdf import PdfReader
    from pypdf.errors import PyPdfError

    try:
        found: Mapping[str, Any] = PdfReader(BytesIO(pdf)).get_fields() or {}
    except (PyPdfError, ValueError, KeyError, TypeError, AttributeError, RecursionError, OSError):
        return FormRefused("not_a_pdf")
    if not found or len(found) > MOST_FIELDS:
        return FormRefused("no_fields")
    return {str(name): _value(field) for name, field in found.items()}


def _value(field: Mapping[str, Any]) -> str:
    value = str(field.get("/V", "") or "").strip()
    if field.get("/FT") == "/Btn":
        return "" if value in ("", "/Off") else "yes"
    return " ".join(value.split())


def _whole(text: str) -> int:
    return int(text) if text.isascii() and text.isdigit() and len(text) < 10 else 0


class _Reading:
    """The lines of a form as they are read, one cut at a time."""

    def __init__(self, known: Catalogue, share: int, fields: Mapping[str, str]) -> None:
        self._known = known
        self._share = share
        self._fields = fields
        self._languages = tuple(Words(one) for one in LANGUAGES)
        self.choices: list[Choice] = []
        self.unread: list[NotUnderstood] = []

    def line(self, cut: Cut) -> None:
        """One row: taken where it is ticked or anything is written in it, and all of it is read."""
        asked = {what: self._fields.get(f"cut.{cut.code}.{what}", "") for what in ASKED}
        if not self._fields.get(f"cut.{cut.code}.want") and not any(asked.values()):
            return
        before = len(self.unread)
        amount = self._amount(cut, asked["amount"])
        thickness = self._thickness(cut, asked["thickness"])
        weight = self._weight(cut, asked["weight"])
        package = self._package(cut, asked["package"])
        finishes = self._finishes(cut, asked["finish"])
        if len(self.unread) == before:
            self.choices.append(
                Choice(
                    line=0,
                    share=self._share,
                    cut=cut.code,
                    amount=amount,
                    thickness=thickness,
                    piece_weight=weight,
                    package=package,
                    finishes=finishes,
                )
            )

    def _miss(self, cut: Cut, what: str, found: str) -> None:
        self.unread.append(NotUnderstood(cut.code, what, found))

    def _thickness(self, cut: Cut, text: str) -> int | None:
        found = read_length(text) if text else cut.thickness
        wrong = isinstance(found, Unread)
        if wrong or (found is not None and not (cut.least_thickness or 1) <= found <= THICKEST):
            self._miss(cut, "thickness", text)
            return None
        return found

    def _weight(self, cut: Cut, text: str) -> Weight | None:
        found = read_weight(text) if text else cut.piece_weight
        if isinstance(found, Unread) or (found is not None and found.nanograms <= 0):
            self._miss(cut, "weight", text)
            return None
        return found

    def _amount(self, cut: Cut, text: str) -> Amount:
        found = _usual_amount(cut) if not text else self._written_amount(cut, text)
        if found is None or found.kind not in cut.amounts:
            self._miss(cut, "amount", text)
            return Amount("rest")
        return found

    def _written_amount(self, cut: Cut, text: str) -> Amount | None:
        for kind in ("all", "rest"):
            said = {name_key(one) for words in self._languages for one in _ways_to_say(words, kind)}
            if name_key(text) in said:
                return Amount(kind)
        number = read_number(text)
        if isinstance(number, Unread):
            weight = read_weight(text, None)
            return None if isinstance(weight, Unread) else Amount("pounds", weight=weight)
        counted: AmountKind = "slices" if "slices" in cut.amounts else "pieces"
        if number.value.denominator == 1 and 0 < number.value < 10_000:
            return Amount(counted, int(number.value))
        if 0 < number.value < 1:
            return Amount("fraction", fraction=Fraction(number.value))
        return None

    def _package(self, cut: Cut, text: str) -> Package:
        if not text:
            return Package(cut.package_pieces, None if cut.package_pieces else cut.package_weight)
        number = read_number(text)
        if not isinstance(number, Unread):
            if number.value.denominator == 1 and 0 < number.value < 1000:
                return Package(pieces=int(number.value))
        else:
            weight = read_weight(text, None)
            if isinstance(weight, Weight) and weight.nanograms > 0:
                return Package(weight=weight)
        self._miss(cut, "package", text)
        return Package()

    def _finishes(self, cut: Cut, text: str) -> tuple[str, ...]:
        if not text:
            return ()
        names = {
            name_key(words.name(self._known.species, f"finish.{code}")): code
            for words in self._languages
            for code in cut.finishes
        }
        if name_key(text) in names:
            return (names[name_key(text)],)
        found = [names.get(name_key(part), "") for part in text.split(",")]
        if all(found):
            return tuple(dict.fromkeys(found))
        self._miss(cut, "finish", text)
        return ()


def _ways_to_say(words: Words, kind: str) -> list[str]:
    return words.say(f"forms.said_{kind}").split("|")


def _usual_amount(cut: Cut) -> Amount:
    """A tick alone asks for what the counter offers first."""
    if cut.default_amount in ("all", "rest"):
        return Amount("all" if cut.default_amount == "all" else "rest")
    kind: AmountKind = "slices" if cut.default_amount == "slices" else "pieces"
    return Amount(kind, cut.pieces_default)

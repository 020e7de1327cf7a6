"""One charge of a rate card with all it can have: basis, steps, minimum, tax, payer and limits."""

from collections.abc import Callable, Collection, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING, Literal, get_args

from PySide6.QtCore import Qt
from PySide6.QtGui import QKeySequence, QShortcut
from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, FormDialog, MoneyField, RateField, TextField
from desktop.look.space import GROUP, row
from desktop.office.charge_cuts import CutOffered, cuts_offered, holds_for, never_billed
from desktop.office.cuts_dialog import CutsDialog
from desktop.office.money_words import charge_words, complaint
from desktop.office.percent_field import PercentField
from desktop.office.steps_field import StepsField
from desktop.office.usual_charges import (
    CURED,
    ages_words,
    cut_words,
    finish_words,
    kind_words,
)
from desktop.panels.buttons import button
from desktop.panels.heading import Words
from printing.written import number_text
from shared.billing.problems import BillingProblem
from shared.billing.rates import CHARGE_CODES, AppliesTo, Basis, Charge, RateCard, check_card
from shared.carcass.anatomy import species
from shared.carcass.carcass import Age
from shared.reading import Unread, read_number

if TYPE_CHECKING:
    from typing import Any

    from desktop.bench import Bench
    from desktop.fields.field import Field

Payer = Literal["owner", "producer"]
Billed = Literal["always", "asked", "credit"]
FINISHES: tuple[tuple[str, ...], ...] = (
    (),
    CURED,
    ("smoked",),
    ("sliced",),
    ("seasoned",),
    ("links",),
    ("patties",),
    ("tenderized", "cubed"),
)

KINDS: tuple[tuple[str, ...], ...] = (
    *((),),
    *(("steaks",), ("roast",), ("ribs",), ("whole",), ("pool",), ("offal",), ("bones",), ("fat",)),
)
AGES: tuple[tuple[Age, ...], ...] = (
    (),
    ("under_30",),
    ("30_and_over",),
    ("30_and_over", "unknown"),
)


class ChargeDialog(FormDialog):
    """Begun from `start`, or a new one; `keep` gets it. `taken` are the codes of the others.

    `animals` are the species of the card, whose cuts it can be limited to; none means all.
    """

    def __init__(
        self,
        bench: "Bench",
        start: Charge | None,
        taken: Collection[str],
        keep: Callable[[Charge], object],
        parent: QWidget | None = None,
        animals: Sequence[str] = (),
    ) -> None:
        super().__init__(parent, columns=3)
        self.setMinimumWidth(960)
        self.bench = bench
        self._start, self._taken, self._keep = start, taken, keep
        self._animals = tuple(animals) or species()
        self._offered: tuple[CutOffered, ...] | None = None
        self.chosen_cuts: tuple[str, ...] = start.applies_to.cuts if start is not None else ()
        self.code: ChoiceField[str] = ChoiceField(self, required=True, free=True)
        self.basis: ChoiceField[Basis] = ChoiceField(self, required=True)
        self.rate = RateField(self, required=True)
        self.minimum = MoneyField(self)
        self.least_of: ChoiceField[bool] = ChoiceField(self, required=True)
        self.steps = StepsField(self)
        self.tax = PercentField(self)
        self.payer: ChoiceField[Payer] = ChoiceField(self, required=True)
        self.billed: ChoiceField[Billed] = ChoiceField(self, required=True)
        self.finishes: ChoiceField[tuple[str, ...]] = ChoiceField(self, required=True)
        self.kinds: ChoiceField[tuple[str, ...]] = ChoiceField(self, required=True)
        self.cuts = TextField(self, most=10_000)
        self.cuts.set_read_only(True)
        self.age: ChoiceField[tuple[Age, ...]] = ChoiceField(self, required=True)
        self.shrink = PercentField(self)
        self.hot_from = TextField(self)
        self.hot_below = TextField(self)
        for field in self._fields():
            self.grid.add(field, 3 if field is self.cuts else 1)
        self._build_cuts()
        self.retranslate()
        self._begin(start or Charge("", "per_head", Fraction(0)))
        self._read_cuts()

    def _read_cuts(self) -> None:
        animals, words, held = self._animals, self.bench.words, self.chosen_cuts
        self.bench.work.run(
            lambda: cuts_offered(animals, words, held), then=self._cuts_read, owner=self
        )

    def _build_cuts(self) -> None:
        """The button that asks for single cuts, beside what the charge holds for."""
        below = QWidget(self)
        across = row(below, gap=GROUP)
        self.holds = Words("body", parent=below).wrapped()
        self.pick = button(below)
        self.pick.setAutoDefault(False)
        across.addWidget(self.holds, 1)
        across.addWidget(self.pick, 0, Qt.AlignmentFlag.AlignTop)
        self.add_below(below)
        self.pick.clicked.connect(self.pick_cuts)
        QShortcut(QKeySequence("F4"), self).activated.connect(self.pick_cuts)
        for field in (self.basis, self.finishes, self.kinds):
            field.changed.connect(self._say_holds)

    def _cuts_read(self, found: tuple[CutOffered, ...]) -> None:
        self._offered = found

    def pick_cuts(self) -> None:
        """Ask for the single cuts the charge is limited to."""
        offered = self._offered
        if offered is None:
            offered = cuts_offered(self._animals, self.bench.words, self.chosen_cuts)
        self.cuts_dialog = CutsDialog(
            self.bench, offered, self.chosen_cuts, self._holds, self._set_cuts, self
        )
        self.cuts_dialog.open()

    def _set_cuts(self, codes: tuple[str, ...]) -> None:
        self.chosen_cuts = codes
        words, animals = self.bench.words, self._animals
        self.cuts.set_value("; ".join(cut_words(one, words, animals) for one in codes))
        self.kinds.set_value(self.kinds.value())  # what it complained of may be mended
        self._say_holds()

    def _holds(self, codes: tuple[str, ...]) -> str:
        limits = AppliesTo(codes, self.kinds.value() or (), self.finishes.value() or ())
        return holds_for(limits, self.basis.value() or "per_head", self.bench.words, self._animals)

    def _say_holds(self) -> None:
        self.holds.setText(self._holds(self.chosen_cuts))

    def _fields(self) -> "tuple[Field[Any], ...]":
        return (
            self.code,
            self.basis,
            self.rate,
            self.minimum,
            self.least_of,
            self.steps,
            self.tax,
            self.payer,
            self.billed,
            self.finishes,
            self.kinds,
            self.age,
            self.shrink,
            self.hot_from,
            self.hot_below,
            self.cuts,
        )

    def _begin(self, charge: Charge) -> None:
        limits = charge.applies_to
        if charge.code:
            self.code.set_text(charge_words(charge.code, self.bench.words, charge.name))
        self.basis.set_value(charge.basis)
        self.rate.set_value(charge.rate if charge.rate or charge.steps else None)
        self.minimum.set_value(charge.minimum or None)
        self.least_of.set_value(charge.per_share_minimum)
        self.steps.set_value(charge.steps or None)
        self.tax.set_value(charge.tax_rate or None)
        self.payer.set_value(charge.falls_to)
        self.billed.set_value("credit" if charge.credit else "asked" if charge.asked else "always")
        self.finishes.set_value(limits.finishes)
        self.kinds.set_value(limits.kinds)
        self.age.set_value(limits.ages)
        self.shrink.set_value(charge.shrink or None)
        for field, pounds in (
            (self.hot_from, limits.hot_from),
            (self.hot_below, limits.hot_below),
        ):
            field.set_value("" if pounds is None else number_text(pounds))
        self._set_cuts(self.chosen_cuts)

    def retranslate(self) -> None:
        words = self.bench.words
        self.set_words(
            self.tr("Charge"),
            self.tr("Steps: above so much another rate holds, as in 5: $5; 10: $7.50."),
            self.tr("&Keep"),
            self.tr("&Leave it"),
        )
        self.code.set_label(self.tr("&What for"))
        self.code.set_choices([(one, charge_words(one, words)) for one in CHARGE_CODES])
        self.basis.set_label(self.tr("&Charged"))
        self.basis.set_choices([(one, words.say(f"bills.basis_{one}")) for one in get_args(Basis)])
        self.rate.set_label(self.tr("&Rate"))
        self.minimum.set_label(self.tr("&Minimum"))
        self.steps.set_label(self.tr("&Steps"))
        self.tax.set_label(self.tr("&Tax, %"))
        self.shrink.set_label(self.tr("S&hrink off the hot weight, %"))
        self.hot_from.set_label(self.tr("Animals &from, lb hot"))
        self.hot_below.set_label(self.tr("Animals &below, lb hot"))
        self._set_choices()

    def _set_choices(self) -> None:
        words = self.bench.words
        self.least_of.set_label(self.tr("M&inimum holds for"))
        self.least_of.set_choices([(False, self.tr("each animal")), (True, self.tr("each share"))])
        self.payer.set_label(self.tr("&Paid by"))
        self.payer.set_choices(
            [("owner", self.tr("the owner")), ("producer", self.tr("the producer"))]
        )
        self.billed.set_label(self.tr("&On a bill"))
        self.billed.set_choices(
            [
                ("always", self.tr("always")),
                ("asked", self.tr("only where asked for")),
                ("credit", self.tr("taken off")),
            ]
        )
        held = self._start.applies_to if self._start is not None else AppliesTo()
        self.finishes.set_label(self.tr("O&nly cuts that are"))
        self.finishes.set_choices(
            [
                (one, ", ".join(finish_words(each, words) for each in one) or self.tr("any"))
                for one in dict.fromkeys((*FINISHES, held.finishes))
            ]
        )
        self.kinds.set_label(self.tr("Kin&d of cut"))
        self.kinds.set_choices(
            [
                (one, ", ".join(kind_words(each) for each in one) or self.tr("any"))
                for one in dict.fromkeys((*KINDS, held.kinds))
            ]
        )
        self.cuts.set_label(self.tr("Only these cuts"))
        self.cuts.hint(self.tr("every cut"))
        self.pick.setText(self.tr("Choose c&uts… (F4)"))
        self.age.set_label(self.tr("&Age of the animal"))
        self.age.set_choices(
            [(one, ages_words(one) or self.tr("any")) for one in dict.fromkeys((*AGES, held.ages))]
        )

    def attempt(self) -> str:
        limits = self._limits()
        if limits is None:
            return ""
        if never_billed(limits, self._offered or ()):
            self.kinds.complain(
                self.tr("None of the cuts chosen is of this kind; it would never be billed.")
            )
            return ""
        charge = self._charge(limits)
        if charge.code in self._taken:
            self.code.complain(self.tr("The card has this charge already."))
            return ""
        card = RateCard("one", "one", self.bench.today(), charges=(charge,))
        problems = check_card(card)
        for problem in problems:
            self._field_of(problem).complain(complaint(problem))
        if not problems:
            self._keep(charge)
        return ""

    def _charge(self, limits: AppliesTo) -> Charge:
        code, name = self._coded()
        billed = self.billed.value()
        start = self._start or Charge(code, "per_head", Fraction(0))
        return replace(
            start,
            code=code,
            name=name,
            basis=self.basis.value() or start.basis,
            rate=self.rate.value() or Fraction(0),
            minimum=self.minimum.value() or 0,
            per_share_minimum=bool(self.least_of.value()) and bool(self.minimum.value()),
            steps=self.steps.value() or (),
            tax_rate=self.tax.value() or Fraction(0),
            falls_to=self.payer.value() or "owner",
            applies_to=limits,
            shrink=self.shrink.value() or Fraction(0),
            credit=billed == "credit",
            asked=billed == "asked",
        )

    def _coded(self) -> tuple[str, str]:
        """The charge's code and the shop's own words for it."""
        start = self._start
        if start is not None and self.code.text().strip() == charge_words(
            start.code, self.bench.words, start.name
        ):
            return start.code, start.name
        chosen = self.code.value()
        if chosen is not None:
            return chosen, ""
        name = self.code.text().strip()
        return name.casefold().replace(" ", "_").replace(":", "_"), name

    def _limits(self) -> AppliesTo | None:
        start = self._start.applies_to if self._start is not None else AppliesTo()
        pounds: list[Fraction | None] = []
        for field in (self.hot_from, self.hot_below):
            typed = field.text().strip().removesuffix("lb").strip()
            found = read_number(typed) if typed else None
            if isinstance(found, Unread):
                field.complain(self.tr("Say the pounds as a number, as in 600."))
                return None
            pounds.append(None if found is None else found.value)
        return replace(
            start,
            cuts=self.chosen_cuts,
            finishes=self.finishes.value() or (),
            kinds=self.kinds.value() or (),
            ages=self.age.value() or (),
            hot_from=pounds[0],
            hot_below=pounds[1],
        )

    def _field_of(self, problem: BillingProblem) -> "Field[Any]":
        fields: dict[str, Field[Any]] = {
            "bad_code": self.code,
            "minimum_negative": self.minimum,
            "minimum_per_share": self.minimum,
            "tax_negative": self.tax,
            "tax_absurd": self.tax,
            "steps_not_rising": self.steps,
            "shrink_missing": self.shrink,
            "shrink_absurd": self.shrink,
            "weights_crossed": self.hot_below,
        }
        return fields.get(problem.code, self.rate)

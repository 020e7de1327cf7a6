"""A new rate card: its name, the day it holds from, and a rate for each usual charge."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from fractions import Fraction
from typing import TYPE_CHECKING, Literal, cast

from PySide6.QtWidgets import QWidget

from desktop.fields import ChoiceField, DateField, FormDialog, MoneyField, RateField, TextField
from desktop.office.money_words import charge_words, complaint
from shared.billing.rates import AppliesTo, Basis, Charge, RateCard, check_card
from shared.carcass.anatomy import species

if TYPE_CHECKING:
    from desktop.bench import Bench


@dataclass(frozen=True, slots=True)
class Usual:
    """A charge the form has a field for; `finishes` are the finishes it is charged on."""

    code: str
    basis: Basis
    finishes: tuple[str, ...] = ()
    asked: bool = False


USUAL = (
    Usual("kill", "per_head"),
    Usual("cut_and_wrap", "per_lb_hot"),
    Usual("cure_and_smoke", "per_lb_finished", ("cured_smoked", "fully_cooked", "cured")),
    Usual("smoke", "per_lb_finished", ("smoked",)),
    Usual("slice", "per_lb_finished", ("sliced",)),
    Usual("sausage", "per_lb_finished", ("seasoned",)),
    Usual("links", "per_lb_finished", ("links",)),
    Usual("patties", "per_lb_finished", ("patties",)),
    Usual("tenderize", "per_lb_finished", ("tenderized", "cubed")),
    Usual("package", "per_package"),
    Usual("disposal", "per_head"),
    Usual("delivery", "flat", asked=True),
)
HANGING: tuple[Basis, ...] = ("per_lb_hot", "per_lb_chilled")


class RateCardDialog(FormDialog):
    """Asks for a card, begun from `start`; `keep` stores it. A field left empty is no charge."""

    def __init__(
        self,
        bench: "Bench",
        start: RateCard | None,
        keep: Callable[[RateCard], None],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent, columns=3)
        self.bench = bench
        self._keep = keep
        self._start = start
        self.name = TextField(self, required=True)
        self.holds_from = DateField(bench.today, self, required=True)
        self.species: ChoiceField[str] = ChoiceField(self, required=True)
        self.kill_falls_to: ChoiceField[str] = ChoiceField(self, required=True)
        self.cut_basis: ChoiceField[Basis] = ChoiceField(self, required=True)
        self.cut_minimum = MoneyField(self)
        self.rates = {usual.code: RateField(self) for usual in USUAL}
        for field in (self.name, self.holds_from, self.species):
            self.grid.add(field)
        for field in (self.kill_falls_to, self.cut_basis, self.cut_minimum):
            self.grid.add(field)
        for field in self.rates.values():
            self.grid.add(field)
        self.retranslate()
        self._begin()

    def _begin(self) -> None:
        """What the chosen card says, to be typed over."""
        self.holds_from.set_value(self.bench.today())
        self.kill_falls_to.set_value("owner")
        self.cut_basis.set_value("per_lb_hot")
        self.species.set_value("")
        card = self._start
        if card is None:
            return
        self.name.set_value(card.name)
        if len(card.species) == 1:
            self.species.set_value(card.species[0])
        for charge in card.charges:
            if charge.code in self.rates:
                self.rates[charge.code].set_value(charge.rate)
            if charge.code == "kill":
                self.kill_falls_to.set_value(charge.falls_to)
            if charge.code == "cut_and_wrap":
                self.cut_basis.set_value(charge.basis if charge.basis in HANGING else HANGING[0])
                self.cut_minimum.set_value(charge.minimum or None)

    def retranslate(self) -> None:
        words = self.bench.words
        self.set_words(
            self.tr("New rate card"),
            self.tr("Leave empty what the shop doesn't charge."),
            self.tr("&Keep card"),
            self.tr("&Leave it"),
        )
        self.name.set_label(self.tr("&Name"))
        self.holds_from.set_label(self.tr("&Holds from"))
        self.species.set_label(self.tr("&For"))
        every = [(one, words.name(one, f"species.{one}")) for one in species()]
        self.species.set_choices([("", self.tr("all animals")), *every])
        self.kill_falls_to.set_label(self.tr("Kill is &paid by"))
        self.kill_falls_to.set_choices(
            [("owner", self.tr("the owner")), ("producer", self.tr("the producer"))]
        )
        self.cut_basis.set_label(self.tr("&Cut and wrap goes by"))
        self.cut_basis.set_choices([(one, words.say(f"bills.basis_{one}")) for one in HANGING])
        self.cut_minimum.set_label(self.tr("Cut and wrap, lea&st an animal"))
        for usual in USUAL:
            name = charge_words(usual.code, words)
            basis = words.say(f"bills.basis_{usual.basis}")
            if usual.code == "cut_and_wrap":
                basis = self.tr("per lb hanging")
            self.rates[usual.code].set_label(f"{name}, {basis}")

    def attempt(self) -> str:
        name, day = self.name.value(), self.holds_from.value()
        if name is None or day is None:
            return self.tr("Say the card's name and day.")
        chosen = self.species.value()
        card = RateCard(
            code=name.casefold().replace(" ", "-"),
            name=name,
            holds_from=day,
            species=(chosen,) if chosen else (),
            charges=(*self._charges(), *self._others()),
        )
        if not card.charges:
            return self.tr("Say at least one rate.")
        problems = check_card(card)
        for problem in problems:
            field = self.rates.get(problem.data.get("charge", ""))
            if field is None:
                return complaint(problem)
            field.complain(complaint(problem))
        if not problems:
            self._keep(card)
        return ""

    def _charges(self) -> list[Charge]:
        found: list[Charge] = []
        for usual in USUAL:
            rate = self.rates[usual.code].value()
            if rate is not None:
                found.append(self._charge(usual, rate))
        return found

    def _charge(self, usual: Usual, rate: Fraction) -> Charge:
        """The charge as the card it began from has it, else the usual one, at the new rate."""
        before = next(
            (one for one in self._start.charges if one.code == usual.code)
            if self._start is not None
            else iter(()),
            Charge(
                usual.code,
                usual.basis,
                rate,
                applies_to=AppliesTo(finishes=usual.finishes),
                asked=usual.asked,
            ),
        )
        found = replace(before, rate=rate)
        if usual.code == "kill":
            payer = self.kill_falls_to.value() or "owner"
            found = replace(found, falls_to=cast("Literal['owner', 'producer']", payer))
        if usual.code == "cut_and_wrap":
            found = replace(found, minimum=self.cut_minimum.value() or 0)
            if found.basis in HANGING:
                found = replace(found, basis=self.cut_basis.value() or found.basis)
        return found

    def _others(self) -> tuple[Charge, ...]:
        """Charges of the card it began from that the form has no field for: they stay."""
        card = self._start
        if card is None:
            return ()
        return tuple(one for one in card.charges if one.code not in self.rates)

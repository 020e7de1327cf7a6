"""The charges a new rate card begins with, and what is particular about a charge, in words."""

from fractions import Fraction
from typing import TYPE_CHECKING

from PySide6.QtCore import QCoreApplication

from printing.written import number_text
from shared.billing.journal import percent_text
from shared.billing.rates import AppliesTo, Basis, Charge
from shared.carcass.anatomy import species
from shared.money import money_text, rate_text

if TYPE_CHECKING:
    from collections.abc import Sequence

    from printing.words import Words

NOTHING = Fraction(0)
CURED = ("cured_smoked", "fully_cooked", "cured", "corned")


def _made(code: str, *finishes: str) -> Charge:
    return Charge(code, "per_lb_finished", NOTHING, applies_to=AppliesTo(finishes=finishes))


def _plain(code: str, basis: Basis, *, asked: bool = False, credit: bool = False) -> Charge:
    return Charge(code, basis, NOTHING, asked=asked, credit=credit)


def usual_charges() -> tuple[Charge, ...]:
    """In the order of a bill, all at rate nothing: those left at nothing aren't charged."""
    return (
        _plain("kill", "per_head"),
        _plain("cut_and_wrap", "per_lb_hot"),
        _made("cure_and_smoke", *CURED),
        _made("smoke", "smoked"),
        _made("slice", "sliced"),
        _made("sausage", "seasoned"),
        _made("links", "links"),
        _made("patties", "patties"),
        _made("tenderize", "tenderized", "cubed"),
        _plain("vacuum", "per_package"),
        _plain("package", "per_package"),
        _plain("disposal", "per_head"),
        _plain("over_30_months", "per_head"),
        _plain("offal", "per_head", asked=True),
        _plain("storage", "per_day", asked=True),
        _plain("delivery", "flat", asked=True),
        _plain("delivery_miles", "per_mile", asked=True),
        _plain("hide_credit", "per_head", credit=True),
    )


def rate_shown(rate: Fraction) -> str:
    """A rate in dollars; "" where it has no end as a decimal."""
    try:
        return rate_text(rate)
    except ValueError:
        return ""


def particulars(charge: Charge, words: "Words") -> str:
    """What a charge has beside basis and rate: minimum, steps, tax, and its limits."""
    return "; ".join([*_of_amount(charge), *_of_limits(charge, words)])


def _percent(rate: Fraction) -> str:
    """A rate with its sign: 29/400 is "7.25 %"; in a list "tax 6.5" could be dollars."""
    return f"{percent_text(rate)}\u00a0%"


def _of_amount(charge: Charge) -> list[str]:
    translate, said = QCoreApplication.translate, list[str]()
    if charge.credit:
        said.append(translate("Charges", "taken off"))
    if charge.minimum:
        least = (
            translate("Charges", "at least {amount} a share")
            if charge.per_share_minimum
            else translate("Charges", "at least {amount} an animal")
        )
        said.append(least.format(amount=money_text(charge.minimum)))
    for step in charge.steps:
        above = number_text(step.above)
        said.append(
            translate("Charges", "{rate} above {above}").format(
                rate=rate_shown(step.rate), above=above
            )
        )
    if charge.shrink:
        said.append(translate("Charges", "less {part} shrink").format(part=_percent(charge.shrink)))
    if charge.tax_rate:
        said.append(translate("Charges", "tax {part}").format(part=_percent(charge.tax_rate)))
    if charge.asked:
        said.append(translate("Charges", "where asked"))
    return said


def _of_limits(charge: Charge, words: "Words") -> list[str]:
    translate, said = QCoreApplication.translate, list[str]()
    limits = charge.applies_to
    if limits.finishes:
        said.append(", ".join(finish_words(one, words) for one in limits.finishes))
    if limits.kinds:
        said.append(", ".join(kind_words(one) for one in limits.kinds))
    if limits.cuts:
        either = translate("Charges", " or ")  # names have commas of their own
        said.append(either.join(cut_words(one, words) for one in limits.cuts))
    if limits.ages:
        said.append(ages_words(limits.ages))
    if limits.hot_from is not None:
        said.append(
            translate("Charges", "from {pounds} lb hot").format(pounds=number_text(limits.hot_from))
        )
    if limits.hot_below is not None:
        below = number_text(limits.hot_below)
        said.append(translate("Charges", "below {pounds} lb hot").format(pounds=below))
    return said


def finish_words(code: str, words: "Words") -> str:
    """What a finish is called, of whichever species has it."""
    key = f"finish.{code}"
    return words.say(key) if words.has(key) else code.replace("_", " ")


def kind_words(code: str) -> str:
    """What a kind of cut is called, in the plural."""
    translate = QCoreApplication.translate
    match code:
        case "roast":
            return translate("Charges", "roasts")
        case "steaks":
            return translate("Charges", "steaks and chops")
        case "ribs":
            return translate("Charges", "ribs")
        case "whole":
            return translate("Charges", "cuts left whole")
        case "pool":
            return translate("Charges", "ground, stew and sausage")
        case "offal":
            return translate("Charges", "offal")
        case "bones":
            return translate("Charges", "bones")
        case "fat":
            return translate("Charges", "fat")
        case "to_trim":
            return translate("Charges", "what goes to the grind")
        case _:
            return code.replace("_", " ")


def cut_words(code: str, words: "Words", animals: "Sequence[str]" = ()) -> str:
    """What a cut is called in these animals, else in whichever species has it."""
    key = f"cut.{code}"
    has_it = next((one for one in (*animals, *species()) if words.has(key, one)), "")
    return words.name(has_it, key) if has_it else code.replace("_", " ")


def ages_words(ages: "Sequence[str]") -> str:
    """The ages a charge is limited to."""
    translate = QCoreApplication.translate
    said = {
        "under_30": translate("Charges", "under 30 months"),
        "30_and_over": translate("Charges", "30 months and over"),
        "unknown": translate("Charges", "age not known"),
    }
    return ", ".join(said.get(one, one) for one in ages)
